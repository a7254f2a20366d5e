package storyrod.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.description.Located;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** A door or a drawer that sticks in the damp season. */
final class GapCloses implements Check {
  /** A wider gap is no gap round a door. */
  private static final Length MOST = Length.mm(12);

  private static final String WIDER =
      "make the gaps wider, or take quarter-sawn wood, a frame with a panel, or a sheet";

  /** The nearest part beside a unit, and how far away it is. */
  private record Beside(Part part, Length gap) {}

  @Override
  public String code() {
    return "gap-closes";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "What hangs on hinges or slides keeps its gaps when its solid wood has swollen from the mean"
            + " of the year to the damp season; on each axis the gaps at both sides count together. Into"
            + " the gap between two of them each grows by half of its swelling.",
        "Movement after the Wood Handbook, eq. 13-2 and 13-3, in the room under `climate`.",
        "What stands round it is taken to stay where it is, and what hangs to be held at its middle;"
            + " a panel that floats in a frame does not count.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    Nesting nesting = Nesting.of(piece);
    List<String> units =
        piece.description().hardware().stream()
            .filter(entry -> hangs(piece, entry.item().value()))
            .flatMap(
                entry ->
                    nesting.hungBy(entry.parts().stream().map(Located::value).toList()).stream())
            .distinct()
            .toList();
    return units.stream()
        .flatMap(
            unit ->
                Stream.concat(
                    findings(piece, nesting, unit).stream(),
                    between(piece, nesting, unit, units).stream()))
        .toList();
  }

  private static boolean hangs(Piece piece, String item) {
    return piece.kind(item).isSlide() || piece.kind(item).isHinge();
  }

  private List<Diagnostic> findings(Piece piece, Nesting nesting, String unit) {
    Seasons seasons = new Seasons(piece);
    List<Part> parts = nesting.parts(unit);
    Box whole = parts.stream().map(Part::bounds).reduce(Box::around).orElseThrow();
    List<Diagnostic> found = new ArrayList<>();
    for (Axis axis : List.of(Axis.X, Axis.Z)) {
      Optional<Part> widest = widest(parts, axis);
      Optional<Length> low = gap(piece, nesting, unit, whole, Face.of(axis, -1));
      Optional<Length> high = gap(piece, nesting, unit, whole, Face.of(axis, 1));
      if (widest.isPresent() && low.isPresent() && high.isPresent()) {
        double room = low.get().plus(high.get()).toMm();
        double swelling = swelling(seasons, parts, axis);
        if (swelling > room) {
          found.add(finding(seasons, unit, widest.get(), axis, swelling, room));
        }
      }
    }
    return found;
  }

  /** What is wrong with the gaps to the others that hang at its right and above it. */
  private List<Diagnostic> between(Piece piece, Nesting nesting, String unit, List<String> units) {
    Seasons seasons = new Seasons(piece);
    List<Part> parts = nesting.parts(unit);
    Box whole = parts.stream().map(Part::bounds).reduce(Box::around).orElseThrow();
    List<Diagnostic> found = new ArrayList<>();
    for (Axis axis : List.of(Axis.X, Axis.Z)) {
      Optional<Beside> near = beside(piece, nesting, unit, whole, Face.of(axis, 1));
      Optional<String> other =
          near.flatMap(
              each -> units.stream().filter(u -> nesting.isIn(each.part().name(), u)).findFirst());
      if (other.isPresent() && widest(parts, axis).isPresent()) {
        double grown = swelling(seasons, parts, axis);
        double both = (grown + swelling(seasons, nesting.parts(other.get()), axis)) / 2;
        double room = near.orElseThrow().gap().toMm();
        if (both > room) {
          Part widest = widest(parts, axis).orElseThrow();
          found.add(touching(seasons, List.of(unit, other.get()), widest, axis, both, room));
        }
      }
    }
    return found;
  }

  private Diagnostic touching(
      Seasons seasons, List<String> two, Part widest, Axis axis, double both, double room) {
    String message =
        ("%s and %s grow towards each other by %s on %s in the damp season,"
                + " but the gap between them is %s: they will touch")
            .formatted(
                two.getFirst(),
                two.getLast(),
                seasons.print(both),
                axis.word(),
                seasons.print(room));
    return Diagnostic.warning(code(), widest.at(), message).hint(WIDER);
  }

  private static Optional<Part> widest(List<Part> parts, Axis axis) {
    return parts.stream()
        .filter(part -> Seasons.moves(part, axis))
        .max(Comparator.comparing(part -> part.box().size(axis)));
  }

  /** What the widest row of parts along an axis grows; parts beside each other add up. */
  private static double swelling(Seasons seasons, List<Part> parts, Axis axis) {
    double most = 0;
    for (Part row : parts) {
      Length middle = row.bounds().on(other(axis)).middle();
      double sum = 0;
      for (Part part : parts) {
        boolean isInRow = part.bounds().on(other(axis)).contains(middle) && !floats(part, parts);
        if (isInRow && Seasons.moves(part, axis)) {
          sum += seasons.swelling(part, part.bounds().size(axis)).orElse(0);
        }
      }
      most = Math.max(most, sum);
    }
    return most;
  }

  private static Axis other(Axis axis) {
    return Axis.other(axis, Axis.Y);
  }

  /** Whether a part lies in slots of others of its unit all round, as a panel in its frame. */
  private static boolean floats(Part part, List<Part> parts) {
    long taken =
        parts.stream()
            .filter(each -> each.cuts().stream().anyMatch(cut -> cut.isFor(part.name())))
            .count();
    return taken >= 4;
  }

  /** From the unit to the nearest part beside it on one side. */
  private static Optional<Length> gap(
      Piece piece, Nesting nesting, String unit, Box whole, Face side) {
    return beside(piece, nesting, unit, whole, side).map(Beside::gap);
  }

  private static Optional<Beside> beside(
      Piece piece, Nesting nesting, String unit, Box whole, Face side) {
    Box room = whole.extended(side, MOST);
    return piece.parts().stream()
        .filter(part -> !nesting.isIn(part.name(), unit) && room.overlaps(part.bounds()))
        .map(part -> new Beside(part, between(whole, part.bounds(), side)))
        .filter(near -> !near.gap().isNegative())
        .min(Comparator.comparing(Beside::gap));
  }

  private static Length between(Box whole, Box box, Face side) {
    return box.at(side.opposite()).minus(whole.at(side)).times(side.sign());
  }

  private Diagnostic finding(
      Seasons seasons, String unit, Part widest, Axis axis, double swelling, double room) {
    return Diagnostic.warning(
            code(),
            widest.at(),
            "%s swells by %s on %s in the damp season, but its gaps there are %s together: it will"
                    .formatted(unit, seasons.print(swelling), axis.word(), seasons.print(room))
                + " stick")
        .hint(WIDER);
  }
}
