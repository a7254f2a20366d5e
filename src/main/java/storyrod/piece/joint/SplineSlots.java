package storyrod.piece.joint;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.Entry;
import storyrod.geometry.Contour;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Blank;
import storyrod.piece.JointEffect.CutIn;
import storyrod.piece.Meeting;
import storyrod.piece.SplineSlot;

/**
 * The two slots for the spline of a mitre. In a frame they lie in the middle of the thickness and
 * run from the inner corner to the outer; in a case they run along the mitre, a third of it from
 * the inner corner, where the wood behind them is thickest (common practice).
 */
record SplineSlots(Corner corner) {
  private static final double HALF_DIAGONAL = StrictMath.sqrt(0.5);

  private Entry entry() {
    return corner.meeting().entry();
  }

  private boolean isWanted() {
    return entry().has("spline");
  }

  private boolean isCase() {
    Meeting meeting = corner.meeting();
    return meeting.first().thickness() == corner.outside().axis();
  }

  private Length thickness() {
    return entry().length("thickness");
  }

  private Length depth() {
    return entry().length("depth");
  }

  List<CutIn> cuts() {
    if (!isWanted()) {
      return List.of();
    }
    Meeting meeting = corner.meeting();
    Face end = meeting.face();
    Face other = corner.outside();
    return List.of(
        slot(meeting.first(), end, new Inwards(end.opposite(), other)),
        slot(meeting.second(), other, new Inwards(end, other.opposite())));
  }

  /** Into a part, square to its mitre: as far towards the one face as towards the other. */
  private record Inwards(Face one, Face two) {}

  private CutIn slot(Blank part, Face end, Inwards in) {
    Range shared = corner.meeting().contact().on(corner.along());
    Range run = isCase() ? part.box().on(corner.along()) : middle(shared);
    Point low = Point.ORIGIN.with(corner.along(), run.from());
    List<Point> path = isCase() ? acrossTheMitre(low, in) : alongTheMitre(low, end);
    return new CutIn(
        part.name(),
        new SplineSlot(
            end,
            Contour.of(corner.along(), path),
            run,
            thickness(),
            depth(),
            entry().find("spline", String.class),
            entry().at()));
  }

  private Range middle(Range whole) {
    Length off = whole.length().minus(thickness()).dividedBy(2, RoundingMode.HALF_EVEN);
    return new Range(whole.from().plus(off), whole.from().plus(off).plus(thickness()));
  }

  /**
   * A strip as deep as the slot from the outer corner to the inner; along the part it is longer.
   */
  private List<Point> alongTheMitre(Point low, Face end) {
    Length back = Length.nearest(depth().toMm() / HALF_DIAGONAL).times(-end.sign());
    Point outer = corner.outer(low);
    Point inner = corner.inner(low);
    return List.of(outer, inner, inner.moved(end.axis(), back), outer.moved(end.axis(), back));
  }

  /** A rectangle square to the mitre. */
  private List<Point> acrossTheMitre(Point low, Inwards in) {
    double middle = corner.width().toMm() / HALF_DIAGONAL / 3;
    double half = thickness().toMm() / 2;
    Point one = onMitre(low, middle - half);
    Point two = onMitre(low, middle + half);
    return List.of(one, two, into(two, in), into(one, in));
  }

  /** The point of the mitre some way from its inner corner. */
  private Point onMitre(Point low, double mm) {
    Length side = Length.nearest(mm * HALF_DIAGONAL);
    Face out = corner.meeting().face();
    Face outside = corner.outside();
    return corner
        .inner(low)
        .moved(out.axis(), side.times(out.sign()))
        .moved(outside.axis(), side.times(outside.sign()));
  }

  private Point into(Point at, Inwards in) {
    Length side = Length.nearest(depth().toMm() * HALF_DIAGONAL);
    return at.moved(in.one.axis(), side.times(in.one.sign()))
        .moved(in.two.axis(), side.times(in.two.sign()));
  }

  List<Diagnostic> faults() {
    List<Diagnostic> faults = new ArrayList<>();
    for (String key : List.of("thickness", "depth")) {
      if (entry().has(key) != isWanted()) {
        faults.add(half(key));
      }
    }
    return faults.isEmpty() && isWanted() ? tooLarge().stream().toList() : faults;
  }

  private Diagnostic half(String key) {
    return isWanted()
        ? Diagnostic.error(
                "mitre-spline", entry().at("spline"), "this spline has no `%s`".formatted(key))
            .hint("give both, as in `spline: strip, thickness: 1/4 in, depth: 3/8 in`")
        : Diagnostic.error(
                "mitre-spline",
                entry().at(key),
                "`%s` says nothing without `spline`".formatted(key))
            .hint("name the item that is the spline, or leave `%s` out".formatted(key));
  }

  /** A frame's slot needs wood on both faces, a case's in front of its bottom. */
  private Optional<Diagnostic> tooLarge() {
    if (!isCase()) {
      Length have = corner.meeting().contact().size(corner.along());
      return thickness().isShorterThan(have)
          ? Optional.empty()
          : Optional.of(noRoom("thickness", thickness(), have));
    }
    double third = corner.width().toMm() / HALF_DIAGONAL / 3;
    double reach = (third + thickness().toMm() / 2 + depth().toMm()) * HALF_DIAGONAL;
    double start = third - thickness().toMm() / 2;
    if (start <= 0) {
      return Optional.of(noRoom("thickness", thickness(), corner.width()));
    }
    return reach < corner.width().toMm()
        ? Optional.empty()
        : Optional.of(noRoom("depth", depth(), corner.width()));
  }

  private Diagnostic noRoom(String key, Length size, Length have) {
    Meeting meeting = corner.meeting();
    return Diagnostic.error(
            "spline-breaks-out",
            entry().at(key),
            "a slot %s %s breaks out of %s, which is %s thick"
                .formatted(
                    meeting.print(size),
                    key.equals("depth") ? "deep" : "wide",
                    meeting.first().name(),
                    meeting.print(have)))
        .also(meeting.first().at(), meeting.first().name() + " is defined here")
        .hint("a spline of a quarter to a third of the thickness is common practice");
  }
}
