package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Balloon;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.Drawing.Tone;
import storyrod.layout.LayoutJob.Area;
import storyrod.layout.LayoutPlan.SawCut;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.KeptBoard;
import storyrod.piece.Piece;
import storyrod.stock.StockPlan.Placed;
import storyrod.stock.StockPlan.SheetLayout;
import storyrod.words.Words;

/** A sheet to scale with the parts that are sawn from it, its numbered cuts, offcuts and waste. */
final class LayoutDrawing {
  private static final double TIER = 10;
  private static final double LEFT = TIER + 3.5;
  private static final double TOP = TIER + 3.5;
  private static final double EDGE = 5;

  private final SheetLayout sheet;
  private final Piece piece;
  private final LengthFormat format;
  private final Words words = Words.ENGLISH;
  private final double factor;
  private final double beside;
  private final CutNumbers numbers;
  private final Paper paper = new Paper();
  private final List<Placed> unlabelled = new ArrayList<>();

  private LayoutDrawing(SheetLayout sheet, Piece piece, Scale scale, Size area) {
    this.sheet = sheet;
    this.piece = piece;
    this.format = piece.description().format();
    this.factor = scale.factor();
    double right = mm(sheet.length()) + EDGE;
    this.beside = Math.max(0, (area.widthMm() - LEFT - right) / 2);
    this.numbers =
        new CutNumbers(paper, new Bounds(0, 0, right + beside, mm(sheet.width()) + EDGE));
  }

  /** The largest drawing of a sheet that an area holds; it is as high as it needs to be. */
  public static Drawing draw(SheetLayout sheet, Piece piece, Size area) {
    List<Scale> scales = Scales.forLayouts(piece.description().format().unit());
    Scale scale =
        scales.stream()
            .filter(each -> fits(sheet, each, area))
            .findFirst()
            .orElse(scales.getLast());
    return new LayoutDrawing(sheet, piece, scale, area).drawn(scale, area);
  }

  private static boolean fits(SheetLayout sheet, Scale scale, Size area) {
    return sheet.length().toMm() * scale.factor() + LEFT + EDGE <= area.widthMm()
        && sheet.width().toMm() * scale.factor() + TOP + EDGE <= area.heightMm();
  }

  private Drawing drawn(Scale scale, Size area) {
    double width = mm(sheet.length());
    double height = mm(sheet.width());
    add(new Drawing.Area(Tone.HATCH, waste()));
    sheet.offcuts().forEach(this::addOffcut);
    sheet.placed().forEach(this::addPart);
    outline(new Area(Length.ZERO, Length.ZERO, sheet.length(), sheet.width()), Role.VISIBLE)
        .forEach(this::add);
    addOverall(new At(width, height));
    sheet.cuts().forEach(this::addCut);
    unlabelled.forEach(this::addBalloon);
    double dx = LEFT + beside;
    List<Element> moved = paper.elements().stream().map(each -> Moved.by(each, dx, TOP)).toList();
    return new Drawing(
        "layout",
        Math.max(area.widthMm(), width + LEFT + EDGE),
        height + TOP + EDGE,
        Optional.of(scale),
        moved);
  }

  private void add(Element element) {
    paper.add(element);
  }

  private double mm(Length length) {
    return length.toMm() * factor;
  }

  private List<At> ring(Area area) {
    double left = mm(area.x());
    double top = mm(area.y());
    double right = mm(area.x().plus(area.length()));
    double bottom = mm(area.y().plus(area.width()));
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
    sheet.placed().forEach(placed -> rings.add(ring(placed.area())));
    sheet.offcuts().forEach(offcut -> rings.add(ring(offcut)));
    sheet.cuts().forEach(cut -> rings.add(ring(kerf(cut))));
    return rings;
  }

  private Area kerf(SawCut cut) {
    Length kerf = piece.description().shop().kerf();
    Length run = cut.to().minus(cut.from());
    return cut.alongLength()
        ? new Area(cut.from(), cut.at(), run, kerf)
        : new Area(cut.at(), cut.from(), kerf, run);
  }

  private void addOffcut(Area offcut) {
    add(new Drawing.Area(Tone.WHITE, List.of(ring(offcut))));
    outline(offcut, Role.THIN).forEach(this::add);
    String size =
        words.say("layout.size", format.format(offcut.length()), format.format(offcut.width()));
    List<Label> labels =
        List.of(
            Label.of(TextStyle.SMALL, words.say("layout.offcut", size)),
            Label.of(TextStyle.SMALL, words.say("layout.offcut-word")).and(TextStyle.SMALL, size),
            Label.of(TextStyle.SMALL, size));
    Label.place(labels, bounds(offcut), Optional.empty()).forEach(this::add);
  }

  private Bounds bounds(Area area) {
    Bounds bounds = Bounds.NONE;
    for (At at : ring(area)) {
      bounds = bounds.with(at);
    }
    return bounds;
  }

  private void addPart(Placed placed) {
    List<Element> elements = new ArrayList<>();
    elements.add(new Drawing.Area(Tone.PALE, List.of(ring(placed.area()))));
    elements.addAll(outline(placed.area(), Role.THIN));
    boolean grained = piece.part(placed.part()).stock().grained();
    Optional<Boolean> grain = grained ? Optional.of(!placed.turned()) : Optional.empty();
    List<Element> label = Label.place(labels(placed), bounds(placed.area()), grain);
    elements.addAll(label);
    if (label.isEmpty()) {
      unlabelled.add(placed);
    }
    add(new Group(placed.part(), piece.mark(placed.mark()).title(), elements));
  }

  /** What may be written on a part, fullest first. */
  private List<Label> labels(Placed placed) {
    String title = title(placed);
    Area area = placed.area();
    Length length = placed.turned() ? area.width() : area.length();
    Length width = placed.turned() ? area.length() : area.width();
    String size = words.say("layout.size", format.format(length), format.format(width));
    Label mark = Label.of(TextStyle.TITLE, placed.mark());
    return List.of(
        mark.and(TextStyle.NOTE, title).and(TextStyle.SMALL, size),
        mark.and(TextStyle.SMALL, size),
        mark,
        Label.of(TextStyle.MARK, placed.mark()),
        Label.of(TextStyle.SMALL, placed.mark()));
  }

  /** The part's title, with the marks of what is cut out of its blank. */
  private String title(Placed placed) {
    String title = piece.mark(placed.mark()).title();
    return piece
        .keptBoard(placed.part())
        .map(board -> words.say("layout.with", title, marks(board)))
        .orElse(title);
  }

  private String marks(KeptBoard board) {
    return board.kept().stream()
        .map(part -> piece.part(part).mark())
        .distinct()
        .collect(Collectors.joining(", "));
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
    double middle = mm(cut.at()) + mm(piece.description().shop().kerf()) / 2;
    double run = mm(cut.to().minus(cut.from()));
    At start = cut.alongLength() ? new At(mm(kerf.x()), middle) : new At(middle, mm(kerf.y()));
    At end = cut.alongLength() ? start.plus(run, 0) : start.plus(0, run);
    boolean leavesSheet = cut.to().equals(cut.alongLength() ? sheet.length() : sheet.width());
    numbers.place(cut.number(), new Paper.Stretch(start, end), leavesSheet);
  }

  /** A part too small for its mark gets a balloon near by, off the other parts if it can be. */
  private void addBalloon(Placed placed) {
    Bounds part = bounds(placed.area());
    At tip = new At((part.left() + part.right()) / 2, (part.top() + part.bottom()) / 2);
    double radius = Lowering.BALLOON_RADIUS;
    At best = tip;
    double least = Double.POSITIVE_INFINITY;
    for (double y = radius; y < mm(sheet.width()) - radius; y += 2) {
      for (double x = radius; x < mm(sheet.length()) - radius; x += 2) {
        At centre = new At(x, y);
        double cost = centre.distance(tip) + (liesOnPart(centre) ? 30 : 0);
        if (cost < least && centre.distance(tip) > 2 * radius && numbers.isFree(centre, radius)) {
          least = cost;
          best = centre;
        }
      }
    }
    numbers.keepClearOf(best);
    add(new Balloon(best, tip, placed.mark()));
  }

  private boolean liesOnPart(At centre) {
    double radius = Lowering.BALLOON_RADIUS;
    return sheet.placed().stream()
        .map(placed -> bounds(placed.area()))
        .anyMatch(
            part ->
                centre.x() + radius > part.left()
                    && centre.x() - radius < part.right()
                    && centre.y() + radius > part.top()
                    && centre.y() - radius < part.bottom());
  }
}
