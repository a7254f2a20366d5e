package storyrod.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** A hole that leaves next to no wood before the edge of its part, a slot or another hole. */
final class HoleEdge implements Check {
  private static final Length WALL = Length.inch(1, 16);

  @Override
  public String code() {
    return "hole-edge";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "Round a hole, its countersink included, at least 1/16 in of wood remains "
            + "before the part's edge and before the next hole, and a slot lies clear of it "
            + "or takes all of it. Two holes that run into each other are an error.",
        "Common practice.",
        "Holes that meet at an angle are the matter of bores-meet, screw-meets and hole-meets.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    return piece.parts().stream().flatMap(part -> findings(piece, part).stream()).toList();
  }

  private List<Diagnostic> findings(Piece piece, Part part) {
    List<Diagnostic> found = new ArrayList<>();
    List<Cut.Holes> rows = part.cuts(Cut.Holes.class);
    for (int i = 0; i < rows.size(); i++) {
      Cut.Holes row = rows.get(i);
      if (!row.term().equals(Cut.Holes.OPEN_RECESS)) {
        nearEdge(piece, part, row).ifPresent(found::add);
      }
      part.cuts(Cut.Trench.class).stream()
          .filter(trench -> halfInside(part, row, trench))
          .forEach(trench -> found.add(inSlot(part, row, trench)));
      for (Cut.Holes other : rows.subList(i, rows.size())) {
        nearEachOther(piece, part, new Pair(row, other)).ifPresent(found::add);
      }
    }
    return found;
  }

  private Optional<Diagnostic> nearEdge(Piece piece, Part part, Cut.Holes row) {
    Length least =
        row.centres().stream()
            .flatMap(centre -> inFace(row.from()).stream().map(axis -> toEdge(part, centre, axis)))
            .reduce(Length::min)
            .orElseThrow();
    Length wood = new Length(least.ticks() - row.mouth().ticks() / 2);
    if (!wood.isShorterThan(WALL)) {
      return Optional.empty();
    }
    String left =
        wood.isNegative()
            ? "runs %s over the edge of %s".formatted(print(piece, wood.abs()), part.name())
            : "leaves only %s of wood to the edge of %s".formatted(print(piece, wood), part.name());
    return Optional.of(
        Diagnostic.warning(code(), row.at(), "%s %s".formatted(named(row), left))
            .also(part.at(), part.name() + " is defined here")
            .hint("move it inwards: at least 1/16 in should remain, or the edge splits"));
  }

  private static Length toEdge(Part part, Point centre, Axis axis) {
    Length before = centre.on(axis).minus(part.box().on(axis).from());
    return before.min(part.box().on(axis).to().minus(centre.on(axis)));
  }

  private static List<Axis> inFace(Face face) {
    return Arrays.stream(Axis.values()).filter(axis -> axis != face.axis()).toList();
  }

  /** Whether a slot, open at the face of the holes, takes a part of one of them only. */
  private static boolean halfInside(Part part, Cut.Holes row, Cut.Trench trench) {
    Box removed = trench.removed();
    return removed.at(row.from()).equals(part.box().at(row.from()))
        && row.centres().stream()
            .anyMatch(centre -> touches(row, centre, removed) && !lies(row, centre, removed));
  }

  private static boolean touches(Cut.Holes row, Point centre, Box removed) {
    double square = 0;
    for (Axis axis : inFace(row.from())) {
      Length at = centre.on(axis);
      Length away =
          removed.on(axis).from().minus(at).max(at.minus(removed.on(axis).to())).max(Length.ZERO);
      square += square(away);
    }
    return 4 * square < square(row.mouth());
  }

  private static boolean lies(Cut.Holes row, Point centre, Box removed) {
    return inFace(row.from()).stream()
        .allMatch(
            axis ->
                !centre.on(axis).minus(removed.on(axis).from()).times(2).isShorterThan(row.mouth())
                    && !removed
                        .on(axis)
                        .to()
                        .minus(centre.on(axis))
                        .times(2)
                        .isShorterThan(row.mouth()));
  }

  private Diagnostic inSlot(Part part, Cut.Holes row, Cut.Trench trench) {
    return Diagnostic.warning(
            code(),
            row.at(),
            "%s runs over the edge of the %s in %s"
                .formatted(named(row), trench.term(), part.name()))
        .also(trench.at(), "the " + trench.term() + " is cut for this")
        .hint("move one of the two, or drive the fastener from another face");
  }

  private record Pair(Cut.Holes one, Cut.Holes two) {}

  private Optional<Diagnostic> nearEachOther(Piece piece, Part part, Pair pair) {
    Length centres = Length.mm(Integer.MAX_VALUE);
    for (int i = 0; i < pair.one.count(); i++) {
      for (int j = pair.one == pair.two ? i + 1 : 0; j < pair.two.count(); j++) {
        Point one = pair.one.centres().get(i);
        Point two = pair.two.centres().get(j);
        if (!isStepped(pair, one, two) && meetInDepth(part, pair)) {
          centres = centres.min(apart(pair.one.from(), one, two));
        }
      }
    }
    return judged(piece, part, pair, centres);
  }

  /** A wide hole round a narrow one is a counterbore; half of one hole may come from each side. */
  private static boolean isStepped(Pair pair, Point one, Point two) {
    boolean sameCentre = apart(pair.one.from(), one, two).isZero();
    boolean sameHole =
        pair.one.from() == pair.two.from() && pair.one.diameter().equals(pair.two.diameter());
    return sameCentre && !sameHole;
  }

  private static boolean meetInDepth(Part part, Pair pair) {
    if (pair.one.from().axis() != pair.two.from().axis()) {
      return false;
    }
    Length thickness = part.box().size(pair.one.from().axis());
    return pair.one.from() == pair.two.from()
        || pair.one.depth().plus(pair.two.depth()).isLongerThan(thickness);
  }

  private Optional<Diagnostic> judged(Piece piece, Part part, Pair pair, Length centres) {
    Length bores = half(pair.one.diameter(), pair.two.diameter());
    Length mouths = half(pair.one.mouth(), pair.two.mouth());
    String holes =
        "%s and %s in %s are %s from centre to centre"
            .formatted(named(pair.one), named(pair.two), part.name(), print(piece, centres));
    if (centres.isShorterThan(bores)) {
      return Optional.of(
          Diagnostic.error(code(), pair.two.at(), holes + ": they run into each other")
              .also(pair.one.at(), "the other is drilled for this")
              .hint("move them apart: " + print(piece, mouths.plus(WALL)) + " or more"));
    }
    if (centres.isShorterThan(mouths.plus(WALL))) {
      return Optional.of(
          Diagnostic.warning(code(), pair.two.at(), holes + ", hardly any wood between them")
              .also(pair.one.at(), "the other is drilled for this")
              .hint("move them apart: " + print(piece, mouths.plus(WALL)) + " or more"));
    }
    return Optional.empty();
  }

  private static Length half(Length one, Length two) {
    return new Length(one.plus(two).ticks() / 2);
  }

  private static Length apart(Face face, Point one, Point two) {
    double square =
        inFace(face).stream().mapToDouble(axis -> square(one.on(axis).minus(two.on(axis)))).sum();
    return Length.nearest(StrictMath.sqrt(square));
  }

  private static double square(Length length) {
    return length.toMm() * length.toMm();
  }

  private static String named(Cut.Holes row) {
    String sunk = row.countersink().isZero() ? "" : "countersunk ";
    String use = row.forWhat().map(what -> " for " + what).orElse("");
    return "a %s%s%s".formatted(sunk, row.term(), use);
  }

  private static String print(Piece piece, Length length) {
    return piece.description().format().forBits().formatWithUnit(length);
  }
}
