package storyrod.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import storyrod.drawing.Wanted.Side;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Cut;
import storyrod.piece.Slanted;
import storyrod.piece.Slots;
import storyrod.words.Words;

/**
 * Every dimension a part needs, each once: its overall sizes, and for each cut its place from the
 * nearer edge and its size. Depths stand in notes.
 */
final class Measures {
  private final FlatPart flat;
  private final LengthFormat format;
  private final Words words;
  private final List<Wanted> wanted = new ArrayList<>();

  private Measures(FlatPart flat, LengthFormat format, Words words) {
    this.flat = flat;
    this.format = format;
    this.words = words;
  }

  static List<Wanted> of(FlatPart flat, LengthFormat format, Words words) {
    Measures measures = new Measures(flat, format, words);
    measures.addOverall();
    flat.cuts().forEach(measures::add);
    return List.copyOf(measures.wanted);
  }

  /** The views a part needs: its face, an edge that shows the thickness, edges with cuts. */
  static Set<Face> views(FlatPart flat) {
    Set<Face> views = new TreeSet<>();
    views.add(Face.FRONT);
    flat.cuts().forEach(cut -> views.add(PlacedView.home(flat, cut)));
    for (Cut.Trench trench : flat.trenches()) {
      Box removed = trench.removed();
      if (!isPocket(flat, trench) && !flat.full(removed.y(), Axis.Y)) {
        addProfile(flat, removed, views);
      }
    }
    for (Cut cut : flat.cuts()) {
      if (cut instanceof Slanted.Housing housing && PlacedView.home(flat, housing) == Face.FRONT) {
        addProfile(flat, housing.removed(), views);
      }
    }
    if (views.size() == 1) {
      views.add(Face.RIGHT);
    }
    return views;
  }

  /** Whether a trench ends inside the part all round, so that no view of an edge shows it. */
  private static boolean isPocket(FlatPart flat, Cut.Trench trench) {
    return Arrays.stream(Face.values())
        .filter(face -> face.axis() != trench.from().axis())
        .noneMatch(face -> trench.removed().at(face).equals(flat.box().at(face)));
  }

  /** A trench's profile is seen where it runs out, on the far side only if not on the near one. */
  private static void addProfile(FlatPart flat, Box removed, Set<Face> views) {
    boolean alongX = !removed.x().length().isShorterThan(removed.z().length());
    Axis run = alongX ? Axis.X : Axis.Z;
    Face usual = alongX ? Face.RIGHT : Face.BOTTOM;
    boolean runsOut = removed.at(usual).equals(flat.box().at(usual));
    boolean runsOutFar = removed.at(usual.opposite()).equals(flat.box().at(usual.opposite()));
    boolean far = !runsOut && runsOutFar || views.contains(usual.opposite()) && runsOutFar;
    if (!removed.on(run).length().isZero()) {
      views.add(far ? usual.opposite() : usual);
    }
  }

  private void addOverall() {
    Point zero = Point.ORIGIN;
    Point top = zero.with(Axis.Z, flat.size(Axis.Z));
    want(Face.FRONT, Axis.X, top, top.with(Axis.X, flat.size(Axis.X)));
    want(Face.FRONT, Axis.Z, zero, top);
    Set<Face> views = views(flat);
    Face edge =
        List.of(Face.BOTTOM, Face.TOP, Face.RIGHT, Face.LEFT).stream()
            .filter(views::contains)
            .findFirst()
            .orElseThrow();
    want(edge, Axis.Y, zero, zero.with(Axis.Y, flat.size(Axis.Y)));
  }

  private void add(Cut cut) {
    Face view = PlacedView.home(flat, cut);
    switch (cut) {
      case Cut.Trench trench -> addTrench(view, trench.removed());
      case Cut.Shaped shaped -> addShaped(view, shaped);
      case Cut.Roundover roundover -> {}
      case Cut.Tenon tenon -> addTenon(view, tenon);
      case Cut.Holes holes -> addHoles(view, holes);
      case Cut.PocketHoles pockets -> {
        Axis across = pockets.end().axis() == Axis.X ? Axis.Z : Axis.X;
        pockets.centres().forEach(centre -> wantPlace(view, across, centre, centre));
      }
      case Slanted.Slope slope -> addSlope(view, slope);
      case Slanted.Housing housing -> addHousing(view, housing);
      case Slots slots -> addSlots(view, slots);
      case Cut.InPlace inPlace -> {}
    }
  }

  private void addTrench(Face view, Box removed) {
    for (Axis axis : inPlane(view)) {
      Range range = removed.on(axis);
      if (!flat.full(range, axis)) {
        Point from = corner(view, removed).with(axis, range.from());
        Point to = from.with(axis, range.to());
        boolean atAnEdge = range.from().isZero() || range.to().equals(flat.size(axis));
        if (!atAnEdge) {
          wantPlace(view, axis, from, to);
        }
        want(view, axis, from, to);
      }
    }
  }

  private void addSlope(Face view, Slanted.Slope slope) {
    switch (slope.term()) {
      case "taper" -> addTaper(view, slope);
      case "chamfer" -> {}
      default -> addLongSide(view, slope);
    }
  }

  /** Where a taper starts, from the end that stays as it is, and what is left at the other. */
  private void addTaper(Face view, Slanted.Slope taper) {
    Axis along = taper.towards().axis();
    Point start = taper.first();
    Point far = start.with(along, flat.box().at(taper.towards().opposite()));
    wantBetween(view, along, far, start);
    Axis over = taper.from().axis();
    Length opposite =
        flat.cuts().stream()
            .filter(Slanted.Slope.class::isInstance)
            .map(Slanted.Slope.class::cast)
            .filter(each -> each.from() == taper.from().opposite())
            .filter(each -> each.towards() == taper.towards())
            .map(each -> each.second().on(over))
            .findFirst()
            .orElse(flat.box().at(taper.from().opposite()));
    wantBetween(view, over, taper.second(), taper.second().with(over, opposite));
  }

  /** How long a part is on the side that keeps its length at a slanted end. */
  private void addLongSide(Face view, Slanted.Slope end) {
    Axis along = end.from().axis();
    Face side = end.towards().opposite();
    boolean asAtOtherEnd =
        end.from().sign() > 0
            && flat.cuts().stream()
                .filter(Slanted.Slope.class::isInstance)
                .map(Slanted.Slope.class::cast)
                .anyMatch(
                    each ->
                        each.from() == end.from().opposite()
                            && each.towards() == side
                            && each.drop().equals(end.drop()));
    if (asAtOtherEnd) {
      return;
    }
    Length other =
        flat.cuts().stream()
            .filter(Slanted.Slope.class::isInstance)
            .map(Slanted.Slope.class::cast)
            .filter(each -> each.from() == end.from().opposite() && each.towards() == side)
            .map(each -> each.second().on(along))
            .findFirst()
            .orElse(flat.box().at(end.from().opposite()));
    Point start = end.first();
    wantBetween(view, along, start, start.with(along, other));
  }

  private void wantBetween(Face view, Axis axis, Point one, Point two) {
    boolean inOrder = one.on(axis).isShorterThan(two.on(axis));
    want(view, axis, inOrder ? one : two, inOrder ? two : one);
  }

  private void addHousing(Face view, Slanted.Housing housing) {
    Box mouth = housing.removed().with(housing.across(), housing.mouth());
    addTrench(view, mouth);
  }

  private void addShaped(Face view, Cut.Shaped shaped) {
    Curves curves = new Curves(shaped.contour());
    if (shaped.inside() && curves.isLikeABox()) {
      Range thick = flat.box().y();
      addTrench(
          view, new Box(shaped.contour().extent(Axis.X), thick, shaped.contour().extent(Axis.Z)));
      return;
    }
    for (Point corner : curves.corners()) {
      inPlane(view).forEach(axis -> wantPlace(view, axis, corner, corner));
    }
    curves.tops().forEach(top -> wantPlace(view, top.rises(), top.at(), top.at()));
  }

  /** Thickness and width on the end, the length on the face: between equal ones their distance. */
  private void addTenon(Face view, Cut.Tenon tenon) {
    for (Axis axis : inPlane(view)) {
      Range range = tenon.tenon().on(axis);
      if (!flat.full(range, axis)) {
        Point from = corner(view, tenon.tenon()).with(axis, range.from());
        Point to = from.with(axis, range.to());
        wantPlace(view, axis, from, to);
        want(view, axis, from, to);
      }
    }
    Axis run = tenon.from().axis();
    Range length = Tenons.toMeasure(flat, tenon);
    Point from = corner(Face.FRONT, tenon.tenon()).with(run, length.from());
    want(Face.FRONT, run, from, from.with(run, length.to()));
  }

  /** A corner of a cut on the side where its dimensions stand. */
  private Point corner(Face view, Box removed) {
    Point middle = removed.middle();
    Point corner = middle;
    for (Axis axis : inPlane(view)) {
      Axis measured = Axis.other(view.axis(), axis);
      Side side = side(view, measured, middle);
      boolean high = side == highSide(view, axis);
      corner = corner.with(axis, removed.on(axis).end(high ? 1 : -1));
    }
    return corner;
  }

  private void addHoles(Face view, Cut.Holes holes) {
    addRow(view, holes.along(), holes.centres(), holes.step());
  }

  /** The middles as of holes; length, width and depth stand in the note. */
  private void addSlots(Face view, Slots slots) {
    addRow(view, slots.along(), slots.centres(), slots.step());
  }

  private void addRow(Face view, Axis along, List<Point> centres, Length step) {
    Point first = centres.getFirst();
    Point last = centres.getLast();
    for (Axis axis : inPlane(view)) {
      wantPlace(view, axis, first, axis == along ? last : first);
    }
    if (centres.size() > 1 && along != view.axis()) {
      wantText(view, along, first, last, chain(step, centres.size()));
    }
  }

  /** Equal steps and what they come to; where rounded steps do not add up, the total holds. */
  private String chain(Length step, int count) {
    Length total = step.times(count - 1L);
    if (count == 2) {
      return format.format(total);
    }
    Length printed = format.rounded(step).times(count - 1L);
    boolean addsUp = printed.equals(format.rounded(total));
    return words.say(
        addsUp ? "part.chain" : "part.chain-rounded",
        count - 1,
        format.format(step),
        format.format(total));
  }

  /** The distance of a stretch from the edge it is nearer to. */
  private void wantPlace(Face view, Axis axis, Point from, Point to) {
    Length after = flat.size(axis).minus(to.on(axis));
    if (from.on(axis).isLongerThan(after)) {
      want(view, axis, to, edge(view, axis, to, flat.size(axis)));
    } else {
      want(view, axis, edge(view, axis, from, Length.ZERO), from);
    }
  }

  /** The point of the part's outline from which a place is measured, on the dimension's side. */
  private Point edge(Face view, Axis axis, Point near, Length at) {
    Axis other = Axis.other(view.axis(), axis);
    boolean high = side(view, axis, near) == highSide(view, other);
    return near.with(axis, at).with(other, high ? flat.size(other) : Length.ZERO);
  }

  private void want(Face view, Axis axis, Point from, Point to) {
    wantText(view, axis, from, to, format.format(to.on(axis).minus(from.on(axis))));
  }

  private void wantText(Face view, Axis axis, Point from, Point to, String text) {
    Wanted one = new Wanted(view, side(view, axis, from), axis, from, to, text);
    if (one.measure().isPositive() && wanted.stream().noneMatch(one::repeats)) {
      wanted.add(one);
    }
  }

  static List<Axis> inPlane(Face view) {
    return Arrays.stream(Axis.values()).filter(axis -> axis != view.axis()).toList();
  }

  /** The side of a view towards which an axis grows. */
  private static Side highSide(Face view, Axis axis) {
    return switch (axis) {
      case X -> Side.RIGHT;
      case Z -> Side.ABOVE;
      case Y ->
          switch (view) {
            case RIGHT -> Side.RIGHT;
            case LEFT -> Side.LEFT;
            case TOP -> Side.ABOVE;
            default -> Side.BELOW;
          };
    };
  }

  /** Where a dimension stands: near what it measures, never between two views of an edge. */
  private Side side(Face view, Axis measured, Point near) {
    boolean right = near.x().times(2).isLongerThan(flat.size(Axis.X));
    boolean low = near.z().times(2).isShorterThan(flat.size(Axis.Z));
    return switch (view) {
      case FRONT, BACK ->
          measured == Axis.X ? (low ? Side.BELOW : Side.ABOVE) : (right ? Side.RIGHT : Side.LEFT);
      case RIGHT -> measured == Axis.Z ? Side.RIGHT : Side.BELOW;
      case LEFT -> measured == Axis.Z ? Side.LEFT : Side.BELOW;
      case TOP -> measured == Axis.X ? Side.ABOVE : right ? Side.RIGHT : Side.LEFT;
      case BOTTOM -> measured == Axis.X ? Side.BELOW : right ? Side.RIGHT : Side.LEFT;
    };
  }
}
