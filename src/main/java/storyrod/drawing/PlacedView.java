package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Comb;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.Slanted;
import storyrod.piece.SplineSlot;

/**
 * One view in its place, third angle: what is seen from the right stands on the right. The front
 * view's top left corner is the origin; the others hold their distance from it.
 *
 * @param offset how far the side that faces the front view lies from the front view's own, in mm
 */
record PlacedView(FlatPart flat, Face face, Ruler ruler, double offset) implements ViewOnPaper {
  @Override
  public At at(Point point) {
    double deep = offset + point.y().toMm() * ruler.factor();
    return switch (face) {
      case FRONT -> new At(ruler.mm(point.x()), down(point.z()));
      case RIGHT -> new At(ruler.mm(flat.size(Axis.X)) + deep, down(point.z()));
      case LEFT -> new At(-deep, down(point.z()));
      case TOP -> new At(ruler.mm(point.x()), -deep);
      case BOTTOM -> new At(ruler.mm(point.x()), down(Length.ZERO) + deep);
      case BACK -> throw new IllegalStateException("bug: no view from the back");
    };
  }

  private double down(Length z) {
    return flat.size(Axis.Z).minus(z).toMm() * ruler.factor();
  }

  @Override
  public double factor() {
    return ruler.factor();
  }

  @Override
  public boolean shows(Point point) {
    return across() != Axis.X || ruler.shows(point.x());
  }

  @Override
  public Stream<Point> besideBreak(Point point) {
    return shows(point)
        ? Stream.of(point)
        : ruler.beside(point.x()).map(at -> point.with(Axis.X, at));
  }

  @Override
  public Bounds bounds() {
    return Bounds.NONE
        .with(at(Point.ORIGIN))
        .with(at(new Point(flat.size(Axis.X), flat.size(Axis.Y), flat.size(Axis.Z))));
  }

  /** Its edges, faces and bores; what it shows does not change with the scale. */
  List<Element> elements(Shown shown) {
    List<Element> elements = new ArrayList<>();
    switch (shown) {
      case Projection projection -> add(projection, elements);
      case SolidView solid -> solid.addTo(this, elements);
    }
    flat.cuts().forEach(cut -> Bores.add(this, cut, elements));
    if (across() == Axis.X) {
      ruler.breaks().forEach(gap -> addBreak(gap, elements));
    }
    return elements;
  }

  private void add(Projection projection, List<Element> elements) {
    projection.patches().forEach(patch -> addPatch(patch, elements));
    for (Role role : List.of(Role.HIDDEN, Role.VISIBLE)) {
      projection.edges().stream()
          .filter(edge -> edge.role() == role)
          .forEach(edge -> addEdge(edge, elements));
    }
  }

  /** The point of the view at some measures on its two axes. */
  At at(Length across, Length upright) {
    Point zero = Point.ORIGIN;
    return at(zero.with(across(), across).with(upright(), upright));
  }

  private List<Range> shown(Axis axis, Range range) {
    return axis == Axis.X ? ruler.shown(range) : List.of(range);
  }

  private void addPatch(Projection.Patch patch, List<Element> elements) {
    for (Range across : shown(across(), patch.across())) {
      List<At> ring =
          List.of(
              at(across.from(), patch.up().from()),
              at(across.to(), patch.up().from()),
              at(across.to(), patch.up().to()),
              at(across.from(), patch.up().to()));
      elements.add(new Area(patch.tone(), List.of(ring)));
    }
  }

  private void addEdge(Projection.Edge edge, List<Element> elements) {
    for (Range range : shown(edge.along(), edge.range())) {
      boolean level = edge.along() == across();
      At from = level ? at(range.from(), edge.at()) : at(edge.at(), range.from());
      At to = level ? at(range.to(), edge.at()) : at(edge.at(), range.to());
      elements.add(new Line(edge.role(), List.of(from, to)));
    }
  }

  private void addBreak(Range gap, List<Element> elements) {
    for (Length at : List.of(gap.from(), gap.to())) {
      elements.add(new Line(Role.DIMENSION, zigzag(ruler.mm(at), bounds())));
    }
  }

  private static List<At> zigzag(double x, Bounds bounds) {
    double middle = (bounds.top() + bounds.bottom()) / 2;
    return List.of(
        new At(x, bounds.top() - 1.5),
        new At(x, middle - 1),
        new At(x - 0.8, middle - 0.4),
        new At(x + 0.8, middle + 0.4),
        new At(x, middle + 1),
        new At(x, bounds.bottom() + 1.5));
  }

  /** The view along a slope, in which it is a line; a chamfer beside the face shows there too. */
  private static Face profile(Slanted.Slope slope) {
    boolean besideFace = slope.from() == Face.FRONT || slope.towards() == Face.FRONT;
    if (slope.kind() == Slanted.Slope.Kind.CHAMFER && besideFace) {
      return Face.FRONT;
    }
    return switch (slope.along()) {
      case X -> Face.RIGHT;
      case Y -> Face.FRONT;
      case Z -> Face.BOTTOM;
    };
  }

  /** The view in which a cut is dimensioned: what goes right through the thickness, on the face. */
  static Face home(FlatPart flat, Cut cut) {
    if (cut instanceof Slanted.Slope slope) {
      return profile(slope);
    }
    if (cut instanceof SplineSlot slot) {
      return SplineNotes.home(flat, slot);
    }
    if (cut instanceof Dovetails dovetails) {
      return DovetailNotes.home(flat, dovetails);
    }
    if (cut instanceof Cut.Shaped || cut instanceof Cut.Roundover || cut instanceof Comb) {
      return Face.FRONT;
    }
    Optional<Range> thick =
        cut instanceof Cut.Trench trench ? Optional.of(trench.removed().y()) : Optional.empty();
    if (cut instanceof Cut.Tenon tenon) {
      return Tenons.home(flat, tenon);
    }
    boolean through = thick.filter(range -> flat.full(range, Axis.Y)).isPresent();
    return through || cut.from() == Face.BACK ? Face.FRONT : cut.from();
  }
}
