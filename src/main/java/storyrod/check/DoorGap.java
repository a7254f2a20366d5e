package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.measure.Unit;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** The gaps round a door in its own plane: to its opening, or to the door beside it. */
final class DoorGap implements Check {
  /** With less than this paint or damp air make a door bind. */
  private static final Length LEAST = Length.inch(1, 32);

  /** What is further away than this belongs to no gap. */
  private static final Length FAR = Length.inch(1, 2);

  /** A difference between two sides of a door that meets the eye. */
  private static final Length UNLIKE = Length.inch(1, 32);

  @Override
  public String code() {
    return "door-gap";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "Between a door and what stands beside it in its plane are 1/32 in (0.8 mm) or more; usual"
            + " are 1/16 to 3/32 in (1.5 to 2.5 mm). The gaps at its left and right, and above and"
            + " below it, are the same within 1/32 in.",
        "Common practice, from memory.",
        "It sees a door as the box round it and looks no further than 1/2 in. How the gap changes"
            + " with the seasons is another matter.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    return Hung.doors(piece).stream().flatMap(door -> findings(piece, door)).toList();
  }

  /** The room at one side of a door, and what ends it. */
  private record Gap(Face side, Part beside, Length width) {}

  private Stream<Diagnostic> findings(Piece piece, Hung door) {
    List<Diagnostic> found = new ArrayList<>();
    for (Face low : List.of(Face.LEFT, Face.BOTTOM)) {
      Optional<Gap> one = gap(piece, door, low);
      Optional<Gap> two = gap(piece, door, low.opposite());
      List<Gap> tight =
          Stream.of(one, two)
              .flatMap(Optional::stream)
              .filter(gap -> gap.width().isShorterThan(LEAST))
              .toList();
      tight.forEach(gap -> found.add(tight(piece, door, gap)));
      if (tight.isEmpty() && one.isPresent() && two.isPresent() && unlike(one.get(), two.get())) {
        found.add(unlike(piece, door, one.get(), two.get()));
      }
    }
    return found.stream();
  }

  private static boolean unlike(Gap one, Gap two) {
    return one.width().minus(two.width()).abs().isLongerThan(UNLIKE);
  }

  private static Optional<Gap> gap(Piece piece, Hung door, Face side) {
    Box box = door.box();
    return piece.parts().stream()
        .filter(part -> !door.has(part) && liesBeside(box, part.bounds(), side.axis()))
        .map(part -> new Gap(side, part, width(box, part.bounds(), side)))
        .filter(gap -> !gap.width().isNegative() && gap.width().isShorterThan(FAR))
        .reduce((one, two) -> two.width().isShorterThan(one.width()) ? two : one);
  }

  private static Length width(Box door, Box part, Face side) {
    return part.at(side.opposite()).minus(door.at(side)).times(side.sign());
  }

  private static boolean liesBeside(Box door, Box part, Axis axis) {
    return Stream.of(Axis.values())
        .filter(other -> other != axis)
        .allMatch(other -> door.on(other).overlaps(part.on(other)));
  }

  private Diagnostic tight(Piece piece, Hung door, Gap gap) {
    String message =
        gap.width().isZero()
            ? "there is no gap between `%s` and %s at its %s"
                .formatted(door.unit(), gap.beside().name(), gap.side().word())
            : "the gap between `%s` and %s at its %s is only %s"
                .formatted(
                    door.unit(), gap.beside().name(), gap.side().word(), print(piece, gap.width()));
    return Diagnostic.warning(code(), door.parts().getFirst().at(), message)
        .also(gap.beside().at(), gap.beside().name() + " is defined here")
        .hint("leave %s or so, or the door binds".formatted(usual(piece)));
  }

  private Diagnostic unlike(Piece piece, Hung door, Gap one, Gap two) {
    return Diagnostic.advice(
            code(),
            door.parts().getFirst().at(),
            "the gaps of `%s` differ: %s at its %s, %s at its %s"
                .formatted(
                    door.unit(),
                    print(piece, one.width()),
                    one.side().word(),
                    print(piece, two.width()),
                    two.side().word()))
        .also(one.beside().at(), one.beside().name() + " is defined here")
        .also(two.beside().at(), two.beside().name() + " is defined here")
        .hint("move the door, or change its size, so that both gaps are the same");
  }

  private static String usual(Piece piece) {
    boolean inInches = piece.description().format().unit() == Unit.INCH;
    return print(piece, inInches ? Length.inch(1, 16) : Length.mm(2));
  }

  private static String print(Piece piece, Length length) {
    return piece.description().format().forBits().formatWithUnit(length);
  }
}
