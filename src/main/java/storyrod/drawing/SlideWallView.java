package storyrod.drawing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import storyrod.build.Slides.Row;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.measure.Length;
import storyrod.piece.Part;

/**
 * A wall with its slides' lines at one scale: what of it has room on the paper, its heights left
 * and right, its set-backs below. Until it is finished the origin of the paper is the piece's.
 */
final class SlideWallView {
  private static final double FIRST_MM = 10;
  private static final double NEXT_MM = 8;

  /** What stands beyond the last dimension line: its figure, or the ends of extension lines. */
  private static final double FIGURE_MM = 3.2;

  private static final double PAST_MM = 2.2;
  private static final double MARGIN_MM = 1;

  /** What of a wall is drawn at least behind the front ends of its slides. */
  private static final double LEAST_BEHIND_MM = 5;

  /** How much of a wall is drawn above the drawers and below what they are measured from. */
  private static final double AROUND_MM = 4;

  private static final double LINE_MM = 3.6;

  /** How far before a member's end its line begins, and before the break a leader ends. */
  private static final double OVER_MM = 1.5;

  private static final double BEHIND_EDGE_MM = 3;

  /** What lies on the edge of what is drawn is drawn. */
  private static final double HAIR_MM = 1e-6;

  private final SlideWall shown;
  private final Part wall;
  private final List<Row> rows;
  private final List<Part> parts;
  private final Scale scale;
  private final Size area;
  private final Fit fit;
  private final Bounds window;
  private final Paper paper = new Paper();

  SlideWallView(SlideWall wall, Scale scale, Size area) {
    this.shown = wall;
    this.wall = wall.wall();
    this.rows = wall.rows();
    this.parts = wall.shown();
    this.scale = scale;
    this.area = area;
    this.fit = new Fit(scale.factor(), 0, 0);
    this.window = window();
  }

  private At at(Length y, Length z) {
    return fit.on(View.at(SlideWall.SEEN_FROM).project(new Point(Length.ZERO, y, z).toMm()));
  }

  private Bounds on(Part part) {
    Box box = part.box();
    return Bounds.of(at(box.y().from(), box.z().from()), at(box.y().to(), box.z().to()));
  }

  /** What of the wall is drawn: from its front as wide as there is room. */
  private Bounds window() {
    Bounds all = parts.stream().map(this::on).reduce(Bounds.NONE, Bounds::with);
    Bounds needed =
        rows.stream()
            .map(row -> on(row.side()).with(at(SlideWall.end(row), SlideWall.floor(row))))
            .reduce(
                rows.stream()
                    .flatMap(row -> row.floor().stream())
                    .map(this::on)
                    .reduce(Bounds.NONE, Bounds::with),
                Bounds::with);
    double left = FIRST_MM + (levels() - 1) * NEXT_MM + FIGURE_MM;
    double wide = area.widthMm() - 2 * MARGIN_MM - left - FIRST_MM - PAST_MM;
    return new Bounds(
        all.left(),
        Math.max(all.top(), needed.top() - AROUND_MM),
        Math.min(on(wall).right(), all.left() + wide),
        Math.min(all.bottom(), needed.bottom() + AROUND_MM));
  }

  private int levels() {
    return (int) rows.stream().map(SlideWall::line).distinct().count();
  }

  boolean hasRoom() {
    double ends = rows.stream().mapToDouble(row -> start(row).x()).max().orElseThrow();
    return window.right() - ends >= LEAST_BEHIND_MM && window.height() <= area.heightMm();
  }

  /** The front end of a member on its line. */
  private At start(Row row) {
    return at(SlideWall.end(row), SlideWall.line(row));
  }

  Optional<SlideWall.Laid> laid() {
    shown.view().elements(fit).forEach(each -> clipped(each).forEach(paper::add));
    new CutFaces(shown.section(), fit)
        .elements()
        .forEach(each -> clipped(each).forEach(paper::add));
    breaks();
    rows.forEach(this::addDrawerAndLine);
    boolean hasHeights = hasHeights();
    addSetBacks();
    return hasHeights && hasMarks()
        ? Optional.of(finished()).filter(laid -> laid.heightMm() <= area.heightMm())
        : Optional.empty();
  }

  private List<Element> clipped(Element element) {
    if (element instanceof Group group) {
      List<Element> inside =
          group.elements().stream().flatMap(each -> clipped(each).stream()).toList();
      return inside.isEmpty()
          ? List.of()
          : List.of(new Group(group.id(), group.mark(), group.name(), inside));
    }
    return Clipping.inside(element, window.widened(HAIR_MM));
  }

  /** Where what is drawn goes on. */
  private void breaks() {
    if (on(wall).right() > window.right() + HAIR_MM) {
      paper.add(BreakLine.of(window.right(), window.top(), window.bottom()));
    }
    cutOff(part -> on(part).top() < window.top() - HAIR_MM)
        .ifPresent(left -> paper.add(BreakLine.level(window.top(), left, window.right())));
    cutOff(part -> on(part).bottom() > window.bottom() + HAIR_MM)
        .ifPresent(left -> paper.add(BreakLine.level(window.bottom(), left, window.right())));
  }

  /** How far left what is cut off reaches; empty if nothing is. */
  private Optional<Double> cutOff(Predicate<Part> isCut) {
    return parts.stream().filter(isCut).map(part -> on(part).left()).min(Double::compare);
  }

  /** The outline of what runs before the wall, and the line itself. */
  private void addDrawerAndLine(Row row) {
    Line side = new Line(Role.PHANTOM, on(row.side()).outline());
    Clipping.inside(side, window).forEach(paper::add);
    At start = start(row).plus(-OVER_MM, 0);
    paper.add(new Line(Role.CENTRE, List.of(start, new At(window.right(), start.y()))));
  }

  /**
   * The height of each line, the lowest next to the wall; at the right those on the drawers, as far
   * as they have room.
   */
  private boolean hasHeights() {
    Set<Length> told = new LinkedHashSet<>();
    boolean hasAll = true;
    for (Row row : rows) {
      if (told.add(SlideWall.line(row))) {
        Length face = row.floor().orElse(wall).box().at(Face.FRONT).max(SlideWall.front(row));
        At to = start(row).plus(-OVER_MM, 0);
        double off = FIRST_MM + (told.size() - 1) * NEXT_MM;
        hasAll &= add(at(face, SlideWall.floor(row)), to, window.left() - off, row.onWall());
        At low = new At(window.right(), on(row.side()).bottom());
        add(low, new At(low.x(), to.y()), window.right() + FIRST_MM, row.onSide());
      }
    }
    return hasAll;
  }

  /** Adds a height whose figure, where it stands beyond an end, finds room at one of them. */
  private boolean add(At from, At to, double line, Length measure) {
    if (!measure.isPositive()) {
      return true;
    }
    Optional<Dimension> dimension =
        Stream.of(List.of(from, to), List.of(to, from))
            .map(ends -> height(ends.getFirst(), ends.getLast(), line, measure))
            .filter(paper::hasRoomFor)
            .findFirst();
    dimension.ifPresent(paper::add);
    return dimension.isPresent();
  }

  private Dimension height(At from, At to, double line, Length measure) {
    return new Dimension(from, to, false, line, format(measure), measure);
  }

  /** How far members lie behind what is before them, or stand before it. */
  private void addSetBacks() {
    Set<List<Length>> told = new LinkedHashSet<>();
    for (Row row : rows) {
      boolean isSetBack = shown.isSetBack() && !row.behind().isZero();
      if (isSetBack && told.add(List.of(SlideWall.front(row), SlideWall.end(row)))) {
        double line = window.bottom() + FIRST_MM + (told.size() - 1) * NEXT_MM;
        At from = new At(at(SlideWall.front(row), Length.ZERO).x(), on(row.front()).bottom());
        Length behind = row.behind().abs();
        At to = start(row);
        At low = new At(from.x(), Math.min(window.bottom(), from.y()));
        paper.add(new Dimension(low, to, true, line, format(behind), behind));
      }
    }
  }

  private String format(Length length) {
    return shown.notation().format().format(length);
  }

  /** The marks of the drawers' sides, and of what the figures are measured from. */
  private boolean hasMarks() {
    BalloonPlacer balloons = new BalloonPlacer(paper, area);
    for (Row row : rows.reversed()) {
      At tip = new At(window.right() - BEHIND_EDGE_MM, between(row));
      if (!balloons.place(row.side().mark(), tip)) {
        return false;
      }
    }
    parts.stream().filter(part -> !part.equals(wall)).forEach(part -> mark(part, balloons));
    return true;
  }

  /** Marks what a figure is measured from, where that has room. */
  private void mark(Part part, BalloonPlacer balloons) {
    Bounds seen = on(part).within(window);
    boolean isLevel = seen.width() > seen.height();
    balloons.place(
        part.mark(),
        isLevel
            ? new At(window.right() - BEHIND_EDGE_MM, seen.middle().y())
            : new At(seen.middle().x(), seen.bottom() - BEHIND_EDGE_MM));
  }

  /** Half way from the upper edge of a drawer's side to the member, or to the line. */
  private double between(Row row) {
    double half = shown.halfMm() * scale.factor();
    return (on(row.side()).top() + start(row).y() - half) / 2;
  }

  private SlideWall.Laid finished() {
    Bounds bounds = paper.bounds();
    double dx = (area.widthMm() - bounds.width()) / 2 - bounds.left();
    List<Element> elements = new ArrayList<>();
    paper.elements().forEach(each -> elements.add(Moved.by(each, dx, MARGIN_MM - bounds.top())));
    At below = new At(area.widthMm() / 2, bounds.height() + MARGIN_MM + LINE_MM);
    String caption =
        shown.notation().words().say("step.slides.view", wall.mark(), scale.toString());
    elements.add(new Text(TextStyle.SMALL, below, Anchor.MIDDLE, true, caption));
    return new SlideWall.Laid(elements, below.y() + MARGIN_MM, scale);
  }
}
