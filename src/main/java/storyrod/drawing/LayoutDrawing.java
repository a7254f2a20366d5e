package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Balloon;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Ellipse;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.Drawing.Tone;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Piece;
import storyrod.stock.StockPlan.Area;
import storyrod.stock.StockPlan.Placed;
import storyrod.stock.StockPlan.SawCut;
import storyrod.stock.StockPlan.SheetLayout;
import storyrod.words.Words;

/** A sheet to scale with the parts that are sawn from it, its numbered cuts, offcuts and waste. */
public final class LayoutDrawing {
  private static final double TIER = 10;
  private static final double LEFT = TIER + 3.5;
  private static final double TOP = TIER + 3.5;
  private static final double EDGE = 5;
  private static final double RING = 1.9;
  private static final double DIGIT = 0.9;
  private static final int FARTHEST = 60;

  private final SheetLayout sheet;
  private final Piece piece;
  private final LengthFormat format;
  private final Words words = Words.ENGLISH;
  private final double factor;
  private double beside;
  private final Paper paper = new Paper();
  private final List<At> rings = new ArrayList<>();
  private final List<Placed> unlabelled = new ArrayList<>();

  private LayoutDrawing(SheetLayout sheet, Piece piece, Scale scale) {
    this.sheet = sheet;
    this.piece = piece;
    this.format = piece.description().format();
    this.factor = scale.factor();
  }

  /** The largest drawing of a sheet that an area holds; it is as high as it needs to be. */
  public static Drawing draw(SheetLayout sheet, Piece piece, Size area) {
    List<Scale> scales = Scales.forLayouts(piece.description().format().unit());
    Scale scale =
        scales.stream()
            .filter(each -> fits(sheet, each, area))
            .findFirst()
            .orElse(scales.getLast());
    return new LayoutDrawing(sheet, piece, scale).drawn(scale, area);
  }

  private static boolean fits(SheetLayout sheet, Scale scale, Size area) {
    return sheet.length().toMm() * scale.factor() + LEFT + EDGE <= area.widthMm()
        && sheet.width().toMm() * scale.factor() + TOP + EDGE <= area.heightMm();
  }

  private Drawing drawn(Scale scale, Size area) {
    double width = mm(sheet.length());
    double height = mm(sheet.width());
    beside = Math.max(0, (area.widthMm() - LEFT - EDGE - width) / 2);
    add(new Drawing.Area(Tone.HATCH, waste()));
    sheet.offcuts().forEach(this::addOffcut);
    sheet.placed().forEach(this::addPart);
    outline(new Area(Length.ZERO, Length.ZERO, sheet.length(), sheet.width()), Role.VISIBLE)
        .forEach(this::add);
    addOverall(new At(width, height));
    sheet.cuts().forEach(this::addCut);
    unlabelled.forEach(this::addBalloon);
    double dx = LEFT + beside;
    List<Element> moved =
        paper.elements().stream().map(each -> Moved.by(each, dx, TOP)).toList();
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
            Label.of(TextStyle.SMALL, words.say("layout.offcut-word"))
                .and(TextStyle.SMALL, size),
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
    String title = piece.mark(placed.mark()).title();
    var part = piece.part(placed.part());
    String size =
        words.say(
            "layout.size",
            format.format(part.finishedLength()),
            format.format(part.finishedWidth()));
    Label mark = Label.of(TextStyle.TITLE, placed.mark());
    return List.of(
        mark.and(TextStyle.NOTE, title).and(TextStyle.SMALL, size),
        mark.and(TextStyle.SMALL, size),
        mark,
        Label.of(TextStyle.MARK, placed.mark()),
        Label.of(TextStyle.SMALL, placed.mark()));
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
    At start = cut.alongLength() ? new At(mm(kerf.x()), middle) : new At(middle, mm(kerf.y()));
    double run = mm(cut.to().minus(cut.from()));
    boolean leavesSheet = cut.to().equals(cut.alongLength() ? sheet.length() : sheet.width());
    double furthest = leavesSheet ? run + RING + 0.6 : run - RING - 0.3;
    for (double along = furthest; along > RING; along -= 0.5) {
      At centre = cut.alongLength() ? start.plus(along, 0) : start.plus(0, along);
      if (isFree(centre, RING)) {
        number(centre, cut.number()).forEach(this::add);
        return;
      }
    }
    At middleOfRun = cut.alongLength() ? start.plus(run / 2, 0) : start.plus(0, run / 2);
    At end = cut.alongLength() ? start.plus(furthest, 0) : start.plus(0, furthest);
    addLed(cut.number(), List.of(end, middleOfRun, start));
  }

  /**
   * The number of a cut that has no room for it stands near by, with a leader to the cut; on the
   * cut itself, come what may, where there is no room anywhere.
   */
  private void addLed(int number, List<At> tips) {
    Optional<Led> led =
        Stream.of(true, false)
            .flatMap(clear -> around(tips).filter(each -> !clear || isClear(each.leader())))
            .findFirst();
    led.ifPresent(
        found -> {
          add(new Line(Role.DIMENSION, List.of(found.tip, found.rim())));
          add(Lowering.head(found.tip, found.rim(), Lowering.Head.LEADER));
        });
    number(led.map(Led::centre).orElse(tips.getFirst()), number).forEach(this::add);
  }

  /** Free places round some points, the nearest first. */
  private Stream<Led> around(List<At> tips) {
    return IntStream.range((int) (2 * RING), FARTHEST)
        .boxed()
        .flatMap(away -> tips.stream().flatMap(tip -> Led.at(tip, away)))
        .filter(led -> isOnPaper(led.centre) && isFree(led.centre, RING));
  }

  /** A ring off the cut, with the point of the cut to which its leader runs. */
  private record Led(At tip, At centre) {
    static Stream<Led> at(At tip, int away) {
      return IntStream.range(0, 24)
          .mapToDouble(step -> StrictMath.toRadians(step * 15))
          .mapToObj(
              angle -> tip.plus(away * StrictMath.cos(angle), away * StrictMath.sin(angle)))
          .map(centre -> new Led(tip, centre));
    }

    At rim() {
      double part = RING / centre.distance(tip);
      return centre.plus((tip.x() - centre.x()) * part, (tip.y() - centre.y()) * part);
    }

    Paper.Stretch leader() {
      return new Paper.Stretch(tip, rim());
    }
  }

  /** Anywhere on the sheet, or beside it where no dimension stands. */
  private boolean isOnPaper(At centre) {
    double room = RING + 0.3;
    return centre.x() > room
        && centre.y() > room
        && centre.x() < mm(sheet.length()) + beside + EDGE - room
        && centre.y() < mm(sheet.width()) + EDGE - room;
  }

  private boolean isClear(Paper.Stretch leader) {
    return paper.missesTexts(leader)
        && rings.stream()
            .noneMatch(
                ring ->
                    java.awt.geom.Line2D.ptSegDist(
                            leader.from().x(), leader.from().y(),
                            leader.to().x(), leader.to().y(),
                            ring.x(), ring.y())
                        < RING + 0.3);
  }

  private boolean isFree(At centre, double radius) {
    PlacedText room =
        new PlacedText(
            "",
            0,
            centre.x() - radius,
            centre.y() - radius,
            centre.x() + radius,
            centre.y() + radius);
    return paper.missesTexts(room)
        && rings.stream().noneMatch(other -> other.distance(centre) < radius + RING + 0.2);
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
        if (cost < least && centre.distance(tip) > 2 * radius && isFree(centre, radius)) {
          least = cost;
          best = centre;
        }
      }
    }
    rings.add(best);
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

  private List<Element> number(At centre, int number) {
    rings.add(centre);
    Optional<Tone> white = Optional.of(Tone.WHITE);
    return List.of(
        new Ellipse(Role.DIMENSION, centre, RING, RING, 0, white),
        new Text(TextStyle.SMALL, centre.plus(0, DIGIT), Anchor.MIDDLE, true, "" + number));
  }
}
