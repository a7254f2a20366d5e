package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Tone;
import storyrod.geometry.Box;
import storyrod.geometry.FlatFace;
import storyrod.geometry.Solid;
import storyrod.measure.Length;

/**
 * A straight cut enlarged, the part sawn through across its run: the tool's face at the top, the
 * edge from which it is set out at the left, with its width, depth and distance. A long way to the
 * edge is broken.
 */
final class CutProfile implements CutFigure {
  /** How wide a cut is drawn, and how deep at most, in mm. */
  private static final double WIDE_MM = 14;

  private static final double DEEP_MM = 9;
  private static final double LARGEST = 5;

  /** How much is drawn beside a cut, and a rest so small that it is drawn too. */
  private static final double BESIDE_MM = 3.5;

  private static final double REST_MM = 2.5;

  /** Wood nearer to the edge than this is not broken; else so much is left at each side. */
  private static final double NEAR_MM = 18;

  private static final double BROKEN_MM = 8;

  private static final double FIRST_MM = 10;
  private static final double NEXT_MM = 8;

  /** Room for figures beside the drawing. */
  private static final double FIGURES_MM = 15;

  private static final double TEXT_MM = 3.2;
  private static final double CAPTION_MM = 4.5;

  /** How far left of the edge the caption begins. */
  private static final double CAPTION_LEFT_MM = 2;

  private static final double ON_PLANE_MM = 1e-3;

  private final Taken taken;
  private final CutPlace place;
  private final Notation notation;
  private final double factor;

  /** The stretch that a break leaves out, from the edge, in mm of the part; none where empty. */
  private final double breakFrom;

  private final double breakTo;

  /** What is drawn, in mm of the part from the edge and from the tool's face. */
  private final Bounds window;

  private CutProfile(Taken taken, CutPlace place, Notation notation) {
    this.taken = taken;
    this.place = place;
    this.notation = notation;
    double width = place.width().toMm();
    double depth = place.depth().toMm();
    this.factor = Math.min(LARGEST, Math.min(WIDE_MM / width, DEEP_MM / depth));
    double near = place.distance().toMm();
    boolean isBroken = near * factor > NEAR_MM;
    this.breakFrom = isBroken ? BROKEN_MM / factor : 0;
    this.breakTo = isBroken ? near - BROKEN_MM / factor : 0;
    this.window =
        new Bounds(
            0,
            0,
            end(near + width, place.part().size(place.edge().axis()).toMm()),
            end(depth, place.part().size(place.from().axis()).toMm()));
  }

  private double end(double at, double most) {
    double end = at + BESIDE_MM / factor;
    return most - end < REST_MM / factor ? most : end;
  }

  /** Of a step's first cut, if that is straight and has walls to measure. */
  static Optional<CutProfile> of(Taken taken, Notation notation) {
    return taken.cuts().stream()
        .flatMap(cut -> CutPlace.of(taken.flat(), cut).stream())
        .filter(place -> !taken.waste().isEmpty())
        .findFirst()
        .map(place -> new CutProfile(taken, place, notation));
  }

  @Override
  public Size size() {
    double above = FIRST_MM + (isDistant() && !isInLine() ? NEXT_MM : 0) + TEXT_MM;
    return new Size(2 * FIGURES_MM + paperX(window.right()), above + below() + foot());
  }

  /** What stands below the drawing: figures of the depth that run on, and the caption. */
  private double foot() {
    return drop() + CAPTION_MM;
  }

  /** How much lower the caption stands where it would else reach figures of the depth. */
  private double drop() {
    At zero = new At(0, 0);
    double figures = depth(zero).map(each -> end(each) - below()).orElse(0.0);
    boolean isClear =
        isDistant() && captionEnd() < depthLine(zero) - TEXT_MM && figures < CAPTION_MM;
    return isClear ? 0 : Math.max(0, figures);
  }

  /** How far down a dimension of a depth reaches. */
  private static double end(Dimension depth) {
    DimensionLayout layout = DimensionLayout.of(depth);
    return depth.to().y() + layout.beyond();
  }

  private double captionEnd() {
    return new CutCaption(taken, place, notation).width() - CAPTION_LEFT_MM;
  }

  private double below() {
    return window.bottom() * factor;
  }

  private boolean isDistant() {
    return place.distance().isPositive();
  }

  private double paperX(double fromEdge) {
    double left = Math.max(0, Math.min(fromEdge, breakTo) - breakFrom);
    double gap = breakTo > breakFrom ? Ruler.GAP * left / (breakTo - breakFrom) : 0;
    return factor * (fromEdge - left) + gap;
  }

  @Override
  public Group in(Size room) {
    double x = room.widthMm() - size().widthMm() + FIGURES_MM;
    double y = (room.heightMm() + size().heightMm()) / 2 - foot() - below();
    List<Element> elements = new ArrayList<>();
    section(taken.left(), Tone.WHITE, new At(x, y), elements);
    section(taken.waste(), Tone.SIDE, new At(x, y), elements);
    breaks(new At(x, y), elements);
    dimensions(new At(x, y), elements);
    String mark = taken.flat().part().mark();
    return new Group("cut-" + Ink.id(taken.flat().part()), mark, mark, elements);
  }

  /** The areas and lines where a plane across the middle of the cut goes through a solid. */
  private void section(Solid solid, Tone tone, At origin, List<Element> elements) {
    for (FlatFace face : place.sawn(solid)) {
      List<List<At>> rings =
          Stream.concat(Stream.of(face.outer()), face.openings().stream())
              .map(ring -> ring.stream().map(place::at).toList())
              .toList();
      for (Bounds shown : shown()) {
        Clipping.inside(new Area(tone, rings), shown)
            .forEach(each -> elements.add(moved(each, origin)));
        for (List<At> ring : rings) {
          List<At> closed = Stream.concat(ring.stream(), Stream.of(ring.getFirst())).toList();
          Clipping.inside(new Line(Role.VISIBLE, closed), shown)
              .forEach(each -> elements.add(moved(each, origin)));
        }
      }
    }
  }

  private List<Bounds> shown() {
    return breakTo > breakFrom
        ? List.of(
            new Bounds(0, 0, breakFrom, window.bottom()),
            new Bounds(breakTo, 0, window.right(), window.bottom()))
        : List.of(window);
  }

  private Element moved(Element element, At origin) {
    return switch (element) {
      case Area area ->
          new Area(area.tone(), area.rings().stream().map(r -> paper(r, origin)).toList());
      case Line line -> new Line(line.role(), paper(line.points(), origin));
      default -> throw new IllegalStateException("bug: a section has areas and lines only");
    };
  }

  private List<At> paper(List<At> points, At origin) {
    return points.stream().map(at -> paper(at, origin)).toList();
  }

  private At paper(At at, At origin) {
    return origin.plus(paperX(at.x()), factor * at.y());
  }

  /** Thin lines where the wood goes on. */
  private void breaks(At origin, List<Element> elements) {
    if (breakTo > breakFrom) {
      zigzag(breakFrom, origin, elements);
      zigzag(breakTo, origin, elements);
    }
    Box part = place.part();
    if (window.right() < part.size(place.edge().axis()).toMm() - ON_PLANE_MM) {
      zigzag(window.right(), origin, elements);
    }
    if (window.bottom() < part.size(place.from().axis()).toMm() - ON_PLANE_MM) {
      double y = origin.y() + below();
      elements.add(
          new Line(
              Role.DIMENSION,
              List.of(new At(origin.x(), y), new At(origin.x() + paperX(window.right()), y))));
    }
  }

  private void zigzag(double fromEdge, At origin, List<Element> elements) {
    double x = origin.x() + paperX(fromEdge);
    elements.add(BreakLine.of(x, origin.y(), origin.y() + below()));
  }

  /** Width and distance above, in line where the figures of both have room; depth at the right. */
  private void dimensions(At origin, List<Element> elements) {
    elements.add(width(origin));
    if (isDistant()) {
      elements.add(distance(origin));
      elements.add(caption(origin));
    }
    depth(origin).ifPresent(elements::add);
  }

  private Optional<Dimension> depth(At origin) {
    At far = far(origin, 0);
    At floor = far(origin, place.depth().toMm());
    Length deep = place.depth();
    return place.isThrough()
        ? Optional.empty()
        : Optional.of(
            new Dimension(
                far, floor, false, depthLine(origin), notation.format().format(deep), deep));
  }

  private double depthLine(At origin) {
    return origin.x() + paperX(window.right()) + FIRST_MM;
  }

  private At wall(At origin) {
    return paper(new At(place.distance().toMm(), 0), origin);
  }

  private At far(At origin, double deep) {
    double far = place.distance().plus(place.width()).toMm();
    return paper(new At(far, deep), origin);
  }

  private Dimension width(At origin) {
    return across(wall(origin), far(origin, 0), origin.y() - FIRST_MM, place.width());
  }

  private Dimension distance(At origin) {
    double line = origin.y() - FIRST_MM - (isInLine() ? 0 : NEXT_MM);
    return across(wall(origin), origin, line, place.distance());
  }

  private boolean isInLine() {
    At zero = new At(0, 0);
    Dimension distance = across(wall(zero), zero, -FIRST_MM, place.distance());
    return isInside(width(zero)) && isInside(distance);
  }

  private static boolean isInside(Dimension dimension) {
    DimensionLayout layout = DimensionLayout.of(dimension);
    return layout.textInside() && layout.before() == 0 && layout.beyond() == 0;
  }

  private Dimension across(At from, At to, double line, Length measure) {
    return new Dimension(from, to, true, line, notation.format().told(measure), measure);
  }

  private Element caption(At origin) {
    At at = new At(origin.x() - CAPTION_LEFT_MM, origin.y() + below() + foot() - 1);
    return new CutCaption(taken, place, notation).at(at);
  }
}
