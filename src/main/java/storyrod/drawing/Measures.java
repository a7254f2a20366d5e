package storyrod.drawing;

import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Comb;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.InPlace;
import storyrod.piece.PocketHoles;
import storyrod.piece.Slanted;
import storyrod.piece.Slots;
import storyrod.piece.SplineSlot;
import storyrod.words.Words;

/**
 * Every dimension a part needs, each once: its overall sizes, and for each cut its place from the
 * nearer edge and its size. Depths stand in notes.
 */
final class Measures {
  /** So many steps make a row long. */
  private static final int LONG_ROW = 4;

  private final FlatPart flat;
  private final LengthFormat format;
  private final EqualSteps equal;
  private final DimensionSides sides;
  private final WantedDimensions wanted;
  private final SlopedEnds ends;

  private Measures(FlatPart flat, LengthFormat format, Words words) {
    this.flat = flat;
    this.format = format;
    this.equal = new EqualSteps(format, words);
    this.sides = new DimensionSides(flat);
    this.ends = new SlopedEnds(flat);
    this.wanted = new WantedDimensions(flat, format);
  }

  static List<Wanted> of(FlatPart flat, LengthFormat format, Words words) {
    Measures measures = new Measures(flat, format, words);
    measures.addOverall();
    flat.cuts().forEach(measures::add);
    return measures.wanted.all();
  }

  private void addOverall() {
    Point zero = Point.ORIGIN;
    Point top = zero.with(Axis.Z, flat.size(Axis.Z));
    if (ends.reaches(Face.LEFT) && ends.reaches(Face.RIGHT)) {
      Point end = zero.with(Axis.Z, flat.box().at(ends.longSide()));
      wanted.stretch(Face.FRONT, Axis.X, end, end.with(Axis.X, flat.size(Axis.X)));
    }
    Length start = ends.start();
    wanted.stretch(Face.FRONT, Axis.Z, zero.with(Axis.X, start), top.with(Axis.X, start));
    Set<Face> views = PartViews.of(flat);
    Face edge =
        List.of(Face.BOTTOM, Face.TOP, Face.RIGHT, Face.LEFT).stream()
            .filter(views::contains)
            .findFirst()
            .orElseThrow();
    wanted.stretch(edge, Axis.Y, zero, zero.with(Axis.Y, flat.size(Axis.Y)));
  }

  private void add(Cut cut) {
    Face view = PlacedView.home(flat, cut);
    switch (cut) {
      case Cut.Trench trench -> addTrench(view, RunOuts.seen(flat, trench));
      case Cut.Shaped shaped -> addShaped(view, shaped);
      case Cut.Roundover roundover -> {}
      case Cut.Tenon tenon -> addTenon(view, tenon);
      case Comb comb -> addComb(view, comb);
      case Cut.Holes holes -> addRow(view, holes.along(), holes.centres(), holes.step());
      case PocketHoles pockets -> {
        Axis across = pockets.end().axis() == Axis.X ? Axis.Z : Axis.X;
        pockets.centres().forEach(centre -> wanted.place(view, across, centre, centre));
      }
      case Slanted.Slope slope -> new SlopeMeasures(flat, wanted).add(view, slope);
      case Slanted.Housing housing -> addHousing(view, housing);
      case Slots slots -> addRow(view, slots.along(), slots.centres(), slots.step());
      case Dovetails dovetails -> addDovetails(view, dovetails);
      case SplineSlot slot -> new SplineMeasures(flat, wanted).add(slot);
      case InPlace inPlace -> {}
    }
  }

  private void addTrench(Face view, Box removed) {
    for (Axis axis : DimensionSides.inPlane(view)) {
      Range range = removed.on(axis);
      if (!flat.full(range, axis)) {
        Point from = sides.corner(view, removed).with(axis, range.from());
        Point to = from.with(axis, range.to());
        boolean atAnEdge = range.from().isZero() || range.to().equals(flat.size(axis));
        if (!atAnEdge) {
          wanted.place(view, axis, from, to);
        }
        wanted.sizeOf(view, axis, removed);
      }
    }
  }

  /** A leaning slot is wider than what goes in by a little, which coarse fractions would hide. */
  private void addHousing(Face view, Slanted.Housing housing) {
    Axis across = housing.across();
    Box mouth = housing.removed().with(across, housing.mouth());
    if (across != view.axis()) {
      Point from = sides.corner(view, mouth).with(across, housing.mouth().from());
      String width = format.forBits().format(housing.mouth().length());
      wanted.said(view, across, from, from.with(across, housing.mouth().to()), width);
    }
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
    curves.corners().forEach(corner -> addCorner(view, shaped, corner));
    curves.tops().forEach(top -> wanted.place(view, top.rises(), top.at(), top.at()));
  }

  /** A corner, or where a slanted end takes it, the height at which the end begins. */
  private void addCorner(Face view, Cut.Shaped shaped, Point corner) {
    Optional<Slanted.Slope> end = ends.taking(corner);
    if (end.isEmpty()) {
      DimensionSides.inPlane(view).forEach(axis -> wanted.place(view, axis, corner, corner));
      return;
    }
    Axis up = end.get().towards().axis();
    boolean low = corner.on(up).times(2).isShorterThan(flat.size(up));
    Length edge = low ? Length.ZERO : flat.size(up);
    ends.onArc(shaped.contour(), corner, end.get())
        .ifPresent(at -> wanted.between(view, up, at, at.with(up, edge)));
  }

  /**
   * Thickness and width on the end, the length on the face: between equal ones their distance. A
   * haunch, which reaches to the edge, places the tenon by its width.
   */
  private void addTenon(Face view, Cut.Tenon tenon) {
    for (Axis axis : DimensionSides.inPlane(view)) {
      Range range = tenon.tenon().on(axis);
      if (!flat.full(range, axis)) {
        Point from = sides.corner(view, tenon.tenon()).with(axis, range.from());
        Point to = from.with(axis, range.to());
        tenon
            .haunch()
            .filter(haunch -> haunch.side().axis() == axis)
            .ifPresentOrElse(
                haunch -> stretch(view, haunch.box(), axis),
                () -> wanted.place(view, axis, from, to));
        wanted.stretch(view, axis, from, to);
      }
    }
    if (!Tenons.isToldByTwin(flat, tenon)) {
      tenon.haunch().ifPresent(haunch -> stretch(Face.FRONT, haunch.box(), tenon.from().axis()));
    }
    Axis run = tenon.from().axis();
    stretch(Face.FRONT, tenon.tenon().with(run, Tenons.toMeasure(flat, tenon)), run);
  }

  private void stretch(Face view, Box box, Axis axis) {
    Range range = box.on(axis);
    Point from = sides.corner(view, box).with(axis, range.from());
    wanted.stretch(view, axis, from, from.with(axis, range.to()));
  }

  /** The first socket, and the last where it is narrower; the note tells of those between. */
  private void addComb(Face view, Comb comb) {
    List<Box> sockets = comb.boxes();
    addTrench(view, sockets.getFirst());
    Box last = sockets.getLast();
    if (!last.size(comb.along()).equals(sockets.getFirst().size(comb.along()))) {
      addTrench(view, last);
    }
  }

  private void addDovetails(Face view, Dovetails row) {
    new DovetailMeasures(flat, wanted).add(view, row);
    int steps = row.tails().size() - 1;
    if (steps > 0) {
      Axis across = row.across();
      Length first = row.tails().getFirst().wide().from();
      Length last = row.tails().getLast().wide().from();
      Point base = DovetailMeasures.base(sides, view, row);
      Length step = last.minus(first).dividedBy(steps, RoundingMode.HALF_EVEN);
      String said = equal.said(steps, step, last.minus(first));
      wanted.said(view, across, base.with(across, first), base.with(across, last), said);
    }
  }

  /**
   * A row of equal cuts by their middles; their sizes stand in the note. Long rows are all placed
   * from one end: they are drilled along a jig, which is set against the same end for each.
   */
  private void addRow(Face view, Axis along, List<Point> centres, Length step) {
    Point first = centres.getFirst();
    Point last = centres.getLast();
    int steps = centres.size() - 1;
    for (Axis axis : DimensionSides.inPlane(view)) {
      if (axis == along && steps >= LONG_ROW) {
        wanted.stretch(view, axis, sides.edge(view, axis, first, Length.ZERO), first);
      } else {
        wanted.place(view, axis, first, axis == along ? last : first);
      }
    }
    if (steps > 0 && along != view.axis()) {
      wanted.said(view, along, first, last, equal.said(steps, step, step.times(steps)));
    }
  }
}
