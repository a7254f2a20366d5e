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
import storyrod.drawing.Drawing.RunningDimension;
import storyrod.drawing.Drawing.RunningDimension.Height;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.measure.Length;
import storyrod.piece.Part;

/**
 * A wall with its slides' lines at one scale: what of it has room on the paper, its heights left
 * and right, its set-backs below. Until it is finished the origin of the paper is the piece's.
 */
final class SlideWallView {
  private static final double FIRST_MM = 10;
  private static final double NEXT_MM = 8;

  /**
   * What stands beyond a dimension line of one figure at the right: the ends of extension lines.
   */
  private static final double PAST_MM = 2.2;

  private static final double MARGIN_MM = 1;

  /** What the rings of marks take beyond that. */
  private static final double MARKS_MM = 7.8;

  /** What of a wall is drawn at least behind the front ends of its slides. */
  private static final double LEAST_BEHIND_MM = 5;

  /** What of it is enough to leave room for marks. */
  private static final double ENOUGH_BEHIND_MM = 8;

  /** How much of a wall is drawn above the drawers and below what they are measured from. */
  private static final double AROUND_MM = 4;

  private static final double LINE_MM = 3.6;

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
  private final SlidePoints where;
  private final SlideHeights heights;
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
    this.where = new SlidePoints(wall, fit);
    this.heights = SlideHeights.of(rows, wall.notation().format());
    this.window = window();
  }

  /** What of the wall is drawn: from its front as wide as there is room. */
  private Bounds window() {
    Bounds all = where.all();
    Bounds measured = where.measured();
    double room = area.widthMm() - 2 * MARGIN_MM - heights.widthMm() - FIRST_MM - PAST_MM;
    boolean hasMarks = room - MARKS_MM >= where.startsX() - all.left() + ENOUGH_BEHIND_MM;
    double wide = hasMarks ? room - MARKS_MM : room;
    return new Bounds(
        all.left(),
        Math.max(all.top(), measured.top() - AROUND_MM),
        Math.min(where.on(wall).right(), all.left() + wide),
        Math.min(all.bottom(), measured.bottom() + AROUND_MM));
  }

  boolean hasRoom() {
    return window.right() - where.startsX() >= LEAST_BEHIND_MM
        && window.height() <= area.heightMm();
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
    if (where.on(wall).right() > window.right() + HAIR_MM) {
      paper.add(BreakLine.of(window.right(), window.top(), window.bottom()));
    }
    cutOff(part -> where.on(part).top() < window.top() - HAIR_MM)
        .ifPresent(left -> paper.add(BreakLine.level(window.top(), left, window.right())));
    cutOff(part -> where.on(part).bottom() > window.bottom() + HAIR_MM)
        .ifPresent(left -> paper.add(BreakLine.level(window.bottom(), left, window.right())));
  }

  /** How far left what is cut off reaches; empty if nothing is. */
  private Optional<Double> cutOff(Predicate<Part> isCut) {
    return parts.stream().filter(isCut).map(part -> where.on(part).left()).min(Double::compare);
  }

  /** The outline of what runs before the wall, and the line itself. */
  private void addDrawerAndLine(Row row) {
    Line side = new Line(Role.PHANTOM, where.on(row.side()).outline());
    Clipping.inside(side, window).forEach(paper::add);
    At start = where.before(row);
    paper.add(new Line(Role.CENTRE, List.of(start, new At(window.right(), start.y()))));
  }

  /** The height of each line; at the right those on the drawers, as far as they have room. */
  private boolean hasHeights() {
    boolean hasAll = heights.stacks().stream().allMatch(this::add);
    Set<Length> told = new LinkedHashSet<>();
    for (Row row : rows) {
      if (told.add(SlideWall.line(row))) {
        At low = new At(window.right(), where.on(row.side()).bottom());
        At to = new At(low.x(), where.start(row).y());
        add(low, to, window.right() + FIRST_MM, row.onSide());
      }
    }
    return hasAll;
  }

  private boolean add(SlideHeights.Stack stack) {
    double line = window.left() - stack.offMm();
    Row lowest = stack.rows().getFirst();
    return stack.rows().size() == 1
        ? add(where.origin(lowest), where.before(lowest), line, lowest.onWall())
        : add(running(stack, line));
  }

  private RunningDimension running(SlideHeights.Stack stack, double line) {
    return new RunningDimension(
        where.origin(stack.rows().getFirst()),
        line,
        stack.rows().stream()
            .map(row -> new Height(where.before(row), format(row.onWall()), row.onWall()))
            .toList());
  }

  private boolean add(RunningDimension heights) {
    boolean hasRoom = paper.hasRoomFor(heights);
    if (hasRoom) {
      paper.add(heights);
    }
    return hasRoom;
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
        At from = where.front(row);
        Length behind = row.behind().abs();
        At to = where.start(row);
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
      At tip = new At(window.right() - BEHIND_EDGE_MM, where.between(row));
      if (!balloons.place(row.side().mark(), tip)) {
        return false;
      }
    }
    parts.stream().filter(part -> !part.equals(wall)).forEach(part -> mark(part, balloons));
    return true;
  }

  /** Marks what a figure is measured from, where that has room. */
  private void mark(Part part, BalloonPlacer balloons) {
    Bounds seen = where.on(part).within(window);
    boolean isLevel = seen.width() > seen.height();
    balloons.place(
        part.mark(),
        isLevel
            ? new At(window.right() - BEHIND_EDGE_MM, seen.middle().y())
            : new At(seen.middle().x(), seen.bottom() - BEHIND_EDGE_MM));
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
