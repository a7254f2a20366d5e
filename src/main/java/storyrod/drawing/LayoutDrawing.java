package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.Drawing.Tone;
import storyrod.drawing.SawnPiece.Laid;
import storyrod.geometry.Range;
import storyrod.layout.LayoutJob.Area;
import storyrod.layout.LayoutPlan.SawCut;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.words.Words;

/**
 * A piece of stock to scale with the parts that are sawn from it, its numbered cuts, offcuts and
 * waste. A bar, of which only lengths matter, is as broad as its texts need. A sheet on which parts
 * are too small for their sizes is broken off where much is left over, if that makes it larger.
 */
public final class LayoutDrawing {
  private static final double TIER = 10;
  private static final double LEFT = TIER + 3.5;
  private static final double TOP = TIER + 3.5;
  private static final double EDGE = 5;

  /** How far beside a sheet its edges are wiped out between the lines of a break. */
  private static final double BESIDE_BREAK = 0.4;

  private static final double BAR = 9;
  private static final double BAR_SIDE = 3;

  private final SawnPiece sheet;
  private final LengthFormat format;
  private final Words words;
  private final double factor;
  private final Ruler across;
  private final double beside;
  private final CutNumbers numbers;
  private final LaidLabels labels;
  private final Paper paper = new Paper();

  private final List<Laid> unlabelled = new ArrayList<>();

  private LayoutDrawing(SawnPiece sheet, Notation notation, Plot plot) {
    this.sheet = sheet;
    this.format = notation.format();
    this.words = notation.words();
    this.factor = plot.factor;
    this.across = plot.across;
    this.beside = plot.beside;
    this.labels = new LaidLabels(sheet.lengthsOnly(), format, words);
    double right = mm(sheet.length()) + EDGE;
    this.numbers =
        new CutNumbers(paper, new Bounds(0, 0, right + beside, down(sheet.width()) + EDGE));
  }

  /** How lengths along and across a piece become mm on paper, and what is left free beside it. */
  private record Plot(double factor, Ruler across, double beside) {}

  /** The largest drawing of a sheet that an area holds; it is as high as it needs to be. */
  public static Drawing draw(SawnPiece sheet, Notation notation, Size area) {
    List<Scale> scales = Scales.forLayouts(notation.format().unit());
    Scale whole =
        scales.stream()
            .filter(each -> fits(sheet, each, area))
            .findFirst()
            .orElse(scales.getLast());
    Sheet drawn = drawn(sheet, notation, new Room(whole, area), Ruler.unbroken(whole.factor()));
    return drawn.unlabelled == 0
        ? drawn.drawing
        : scales.subList(0, scales.indexOf(whole)).stream()
            .map(scale -> new Room(scale, area))
            .filter(room -> room.holdsLength(sheet))
            .flatMap(room -> broken(sheet, notation, room).stream())
            .filter(each -> each.unlabelled < drawn.unlabelled)
            .map(Sheet::drawing)
            .findFirst()
            .orElse(drawn.drawing);
  }

  /** A sheet as drawn, with the number of parts on which their sizes find no room. */
  private record Sheet(Drawing drawing, int unlabelled) {}

  /** An area for a drawing to a scale. */
  private record Room(Scale scale, Size area) {
    boolean holdsLength(SawnPiece sheet) {
      return sheet.length().toMm() * scale.factor() + LEFT + EDGE <= area.widthMm();
    }
  }

  private static Optional<Sheet> broken(SawnPiece sheet, Notation notation, Room room) {
    return new SheetBreak(sheet)
        .within(room.area.heightMm() - TOP - EDGE, room.scale.factor())
        .map(across -> drawn(sheet, notation, room, across));
  }

  private static Sheet drawn(SawnPiece sheet, Notation notation, Room room, Ruler across) {
    double factor = room.scale.factor();
    double right = sheet.length().toMm() * factor + EDGE;
    double beside = Math.max(0, (room.area.widthMm() - LEFT - right) / 2);
    LayoutDrawing drawing = new LayoutDrawing(sheet, notation, new Plot(factor, across, beside));
    return new Sheet(drawing.drawn(room.scale, room.area), drawing.unlabelled.size());
  }

  /**
   * A bar in a row of bars, all to one scale.
   *
   * @param longest the length that fills the width
   */
  public static Drawing bar(SawnPiece bar, Notation notation, Length longest, double widthMm) {
    double factor = (widthMm - 2 * BAR_SIDE) / longest.toMm();
    Plot plot = new Plot(factor, Ruler.unbroken(BAR / bar.width().toMm()), 0);
    LayoutDrawing drawing = new LayoutDrawing(bar, notation, plot);
    drawing.addAll();
    return drawing.moved(BAR_SIDE, 1, new Size(widthMm, BAR + EDGE + 1), Optional.empty());
  }

  private static boolean fits(SawnPiece sheet, Scale scale, Size area) {
    return sheet.length().toMm() * scale.factor() + LEFT + EDGE <= area.widthMm()
        && sheet.width().toMm() * scale.factor() + TOP + EDGE <= area.heightMm();
  }

  private Drawing drawn(Scale scale, Size area) {
    double width = mm(sheet.length());
    double height = down(sheet.width());
    addStock();
    addOverall(new At(width, height));
    addNumbers();
    Size size = new Size(Math.max(area.widthMm(), width + LEFT + EDGE), height + TOP + EDGE);
    return moved(LEFT + beside, TOP, size, Optional.of(scale));
  }

  private void addAll() {
    addStock();
    addNumbers();
  }

  private void addStock() {
    add(new Drawing.Area(Tone.HATCH, waste()));
    sheet.offcuts().forEach(this::addOffcut);
    sheet.parts().forEach(this::addPart);
    sheet.defects().forEach(this::addDefect);
    outline(new Area(Length.ZERO, Length.ZERO, sheet.length(), sheet.width()), Role.VISIBLE)
        .forEach(this::add);
    across.breaks().forEach(this::addBreak);
  }

  /** Wipes out what lies in a break, between its two lines. */
  private void addBreak(Range gap) {
    double left = -BESIDE_BREAK;
    double right = mm(sheet.length()) + BESIDE_BREAK;
    double top = down(gap.from());
    double bottom = down(gap.to());
    Bounds wiped = new Bounds(left, top, right, bottom);
    add(new Drawing.Area(Tone.WHITE, List.of(wiped.outline().subList(0, 4))));
    add(BreakLine.level(top, 0, mm(sheet.length())));
    add(BreakLine.level(bottom, 0, mm(sheet.length())));
  }

  /** The shortest cut first, for beside it there is the least room. */
  private void addNumbers() {
    sheet.cuts().stream()
        .sorted(Comparator.comparing((SawCut cut) -> cut.to().minus(cut.from())))
        .forEach(this::addCut);
    Bounds on = new Bounds(0, 0, mm(sheet.length()), down(sheet.width()));
    List<Bounds> parts = sheet.parts().stream().map(each -> bounds(each.area())).toList();
    new MarkBalloons(on, parts, numbers)
        .of(unlabelled, each -> bounds(each.area()))
        .forEach(this::add);
  }

  private Drawing moved(double dx, double dy, Size size, Optional<Scale> scale) {
    List<Element> moved = paper.elements().stream().map(each -> Moved.by(each, dx, dy)).toList();
    return new Drawing("layout", size.widthMm(), size.heightMm(), scale, moved);
  }

  private void add(Element element) {
    paper.add(element);
  }

  private double mm(Length length) {
    return length.toMm() * factor;
  }

  private double down(Length width) {
    return across.mm(width);
  }

  private List<At> ring(Area area) {
    double left = mm(area.x());
    double top = down(area.y());
    double right = mm(area.x().plus(area.length()));
    double bottom = down(area.y().plus(area.width()));
    return List.of(
        new At(left, top), new At(right, top), new At(right, bottom), new At(left, bottom));
  }

  private List<Element> outline(Area area, Role role) {
    List<At> points = new ArrayList<>(ring(area));
    points.add(points.getFirst());
    return List.of(new Line(role, points));
  }

  /** The sheet with everything that is used or sawn away left open. */
  private List<List<At>> waste() {
    List<List<At>> rings = new ArrayList<>();
    rings.add(ring(new Area(Length.ZERO, Length.ZERO, sheet.length(), sheet.width())));
    sheet.parts().forEach(placed -> rings.add(ring(placed.area())));
    sheet.offcuts().forEach(offcut -> rings.add(ring(offcut)));
    sheet.cuts().forEach(cut -> rings.add(ring(kerf(cut))));
    return rings;
  }

  private Area kerf(SawCut cut) {
    Length kerf = sheet.kerf();
    Length run = cut.to().minus(cut.from());
    return cut.alongLength()
        ? new Area(cut.from(), cut.at(), run, kerf)
        : new Area(cut.at(), cut.from(), kerf, run);
  }

  private void addOffcut(Area offcut) {
    add(new Drawing.Area(Tone.WHITE, List.of(ring(offcut))));
    outline(offcut, Role.THIN).forEach(this::add);
    String size =
        sheet.lengthsOnly()
            ? format.format(offcut.length())
            : words.say(
                "layout.size", format.format(offcut.length()), format.format(offcut.width()));
    List<Label> labels =
        List.of(
            Label.of(TextStyle.SMALL, words.say("layout.offcut", size)),
            Label.of(TextStyle.SMALL, words.say("layout.offcut-word")).and(TextStyle.SMALL, size),
            Label.of(TextStyle.SMALL, size));
    Label.place(labels, besideBreak(bounds(offcut)), Optional.empty()).forEach(this::add);
  }

  /** The lower part of what a break goes through: parts lie above it more often. */
  private Bounds besideBreak(Bounds bounds) {
    double top =
        across.breaks().stream()
            .map(gap -> down(gap.to()))
            .filter(bottom -> bounds.top() < bottom && bottom < bounds.bottom())
            .reduce(bounds.top(), Math::max);
    return new Bounds(bounds.left(), top, bounds.right(), bounds.bottom());
  }

  /** A bad place is crossed out. */
  private void addDefect(Area defect) {
    List<At> corners = ring(defect);
    outline(defect, Role.THIN).forEach(this::add);
    add(new Line(Role.THIN, List.of(corners.get(0), corners.get(2))));
    add(new Line(Role.THIN, List.of(corners.get(1), corners.get(3))));
  }

  private Bounds bounds(Area area) {
    Bounds bounds = Bounds.NONE;
    for (At at : ring(area)) {
      bounds = bounds.with(at);
    }
    return bounds;
  }

  private void addPart(Laid part) {
    List<Element> elements = new ArrayList<>();
    elements.add(new Drawing.Area(Tone.PALE, List.of(ring(part.area()))));
    elements.addAll(outline(part.area(), Role.THIN));
    Optional<Boolean> grain = part.grained() ? Optional.of(!part.turned()) : Optional.empty();
    List<Element> label = labels.place(part, bounds(part.area()), grain);
    elements.addAll(label);
    numbers.keepClearOf(label);
    if (label.isEmpty()) {
      unlabelled.add(part);
    }
    String id = "part-" + part.id().replace('.', '-').replace('#', '-');
    add(new Group(id, part.mark(), part.title(), elements));
  }

  private void addOverall(At corner) {
    add(
        new Dimension(
            new At(0, 0),
            new At(corner.x(), 0),
            true,
            -TIER,
            format.format(sheet.length()),
            sheet.length()));
    add(
        new Dimension(
            new At(0, corner.y()),
            new At(0, 0),
            false,
            -TIER,
            format.format(sheet.width()),
            sheet.width()));
  }

  /** A ringed number on the cut where the saw leaves it, or as near to there as there is room. */
  private void addCut(SawCut cut) {
    Area kerf = kerf(cut);
    double left = mm(kerf.x());
    double top = down(kerf.y());
    double bottom = down(kerf.y().plus(kerf.width()));
    At start =
        cut.alongLength()
            ? new At(left, (top + bottom) / 2)
            : new At(left + mm(kerf.length()) / 2, top);
    At end = cut.alongLength() ? start.plus(mm(kerf.length()), 0) : new At(start.x(), bottom);
    boolean leavesSheet = cut.to().equals(cut.alongLength() ? sheet.length() : sheet.width());
    numbers.place(cut.number(), new Paper.Stretch(start, end), leavesSheet);
  }
}
