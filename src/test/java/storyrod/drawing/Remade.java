package storyrod.drawing;

import java.util.Optional;
import java.util.regex.Pattern;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Contour;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Comb;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.Haunch;
import storyrod.piece.InPlace;
import storyrod.piece.PocketHoles;
import storyrod.piece.Slanted;
import storyrod.piece.Slots;
import storyrod.piece.SplineSlot;

/** A part made again: every size of its box and of its cuts as the drawing gives it. */
final class Remade {
  private static final Pattern ANGLE = Pattern.compile("(\\d+(?:\\.\\d+)?)°");

  private final FlatPart flat;
  private final Givens givens;
  private final ReadNotes notes;
  private final Figures figures;
  private final RemadeHoles holes;
  private double worstOff = 0;

  Remade(FlatPart flat, Givens givens, ReadNotes notes, Figures figures) {
    this.flat = flat;
    this.givens = givens;
    this.notes = notes;
    this.figures = figures;
    this.holes = new RemadeHoles(figures, this::box, this::at);
  }

  Box box() {
    return box(flat.box());
  }

  /** By how much print may have rounded the place that it rounds most, in mm. */
  double worstOff() {
    return worstOff;
  }

  private Length at(Axis axis, Length at) {
    Equations.Known known = givens.known(axis, at);
    worstOff = Math.max(worstOff, known.offMm());
    return Length.nearest(known.mm());
  }

  private Range range(Axis axis, Range range) {
    return new Range(at(axis, range.from()), at(axis, range.to()));
  }

  private Box box(Box box) {
    return new Box(range(Axis.X, box.x()), range(Axis.Y, box.y()), range(Axis.Z, box.z()));
  }

  /** Where no end of a trench is drawn, it runs out into what is gone at the part's end. */
  private Box trench(Cut.Trench trench) {
    Box box = flat.box();
    for (Face face : Face.values()) {
      Axis axis = face.axis();
      Length end = trench.removed().at(face);
      Length drawn = givens.isDrawn(axis, end) ? end : flat.box().at(face);
      Range range = box.on(axis);
      box =
          box.with(
              axis,
              face.sign() < 0 ? new Range(drawn, range.to()) : new Range(range.from(), drawn));
    }
    return box(box);
  }

  private String note(Cut cut) {
    return notes
        .of(cut)
        .orElseThrow(() -> new IllegalStateException("no note speaks of the " + cut.term()));
  }

  Cut cut(Cut cut) {
    return switch (cut) {
      case Cut.Trench t -> {
        Box removed = trench(t);
        yield t.role()
            .given(
                new Cut.Trench(
                    t.term(),
                    t.from(),
                    removed,
                    removed.size(t.from().axis()),
                    t.forWhat(),
                    t.at()));
      }
      case Cut.Tenon t ->
          new Cut.Tenon(
              t.term(),
              t.from(),
              box(t.end()),
              box(t.tenon()),
              t.haunch().map(each -> new Haunch(each.side(), box(each.box()))),
              t.forWhat(),
              t.at());
      case Comb c ->
          new Comb(
              c.term(),
              c.from(),
              box(c.end()),
              c.along(),
              c.sockets().stream().map(each -> range(c.along(), each)).toList(),
              c.finger(),
              c.forWhat(),
              c.at());
      case Cut.Shaped s -> shaped(s);
      case Cut.Roundover r -> r;
      case Cut.Holes h -> holes.made(h, note(h));
      case PocketHoles p -> holes.made(p, note(p));
      case Slanted.Slope s ->
          new Slanted.Slope(
              s.term(), s.from(), s.towards(), sloped(s, s.first()), sloped(s, s.second()), s.at());
      case Slanted.Housing h -> housing(h);
      case Slots s -> holes.made(s, note(s));
      case Dovetails d -> dovetails(d);
      case SplineSlot s -> spline(s);
      case InPlace i -> i;
    };
  }

  /** The plane runs on over the whole part, so where it starts along itself does not matter. */
  private Point sloped(Slanted.Slope slope, Point point) {
    Point start = point.with(slope.along(), Length.ZERO);
    return start
        .with(slope.from().axis(), at(slope.from().axis(), point.on(slope.from().axis())))
        .with(slope.towards().axis(), at(slope.towards().axis(), point.on(slope.towards().axis())));
  }

  private Cut housing(Slanted.Housing h) {
    Range mouth = range(h.across(), h.mouth());
    Range bottom = range(h.across(), h.bottom());
    Range deep = range(h.from().axis(), h.removed().on(h.from().axis()));
    return new Slanted.Housing(
        h.term(),
        h.from(),
        h.across(),
        mouth,
        range(h.along(), h.run()),
        deep.end(h.from().sign()),
        deep.length(),
        bottom.from().minus(mouth.from()),
        h.forWhat(),
        h.at());
  }

  private Cut dovetails(Dovetails d) {
    return new Dovetails(
        d.term(),
        d.from(),
        d.wide(),
        d.across(),
        box(d.end()),
        d.tails().stream()
            .map(
                each ->
                    new Dovetails.Tail(
                        range(d.across(), each.narrow()), range(d.across(), each.wide())))
            .toList(),
        d.slope(),
        d.forWhat(),
        d.at());
  }

  /** The mitre that a slot is cut into. */
  static Slanted.Slope mitre(FlatPart flat, SplineSlot slot) {
    return flat.cuts(Slanted.Slope.class).stream()
        .filter(each -> each.from() == slot.from())
        .findFirst()
        .orElseThrow();
  }

  private Cut spline(SplineSlot s) {
    Slanted.Slope mitre = mitre(flat, s);
    Point first = sloped(mitre, mitre.first());
    Point second = sloped(mitre, mitre.second());
    RemadeSpline made = new RemadeSpline(s, first, second, figures, note(s));
    double angle = Figures.radians(Figures.found(ANGLE, note(mitre), 1));
    Contour profile =
        s.along() == Axis.Y
            ? made.inFrame(angle)
            : made.inCase(at(Axis.Y, s.onMitre().getFirst().y()));
    return new SplineSlot(
        s.from(),
        profile,
        range(s.along(), s.run()),
        s.thickness(),
        s.depth(),
        s.forWhat(),
        s.at());
  }

  private Optional<Length> tried(Axis axis, Length at) {
    return givens.isKnown(axis, at) ? Optional.of(at(axis, at)) : Optional.empty();
  }

  private Optional<Double> radius(Cut.Shaped s) {
    return givens.radius(s.contour()).map(text -> figures.bit(text).mm());
  }

  private Cut shaped(Cut.Shaped s) {
    Contour contour = new RemadeContour(s.contour(), radius(s), this::tried).made();
    return new Cut.Shaped(s.term(), s.from(), contour, s.inside(), s.forWhat(), s.at());
  }
}
