package storyrod.piece;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.Entry;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.geometry.Solid;
import storyrod.measure.LengthFormat;

/** Finds the space in which two parts run through each other, or says why they do not. */
final class Crossings {
  /** What rounding may leave out of a space that a solid fills, in mm³. */
  private static final double NOTHING_MM3 = 0.01;

  private final SlantedCuts slants;
  private final LengthFormat format;

  Crossings(SlantedCuts slants, LengthFormat format) {
    this.slants = slants;
    this.format = format;
  }

  Contacts.Found find(Entry entry, Blank first, Face face, Blank second) {
    if (!first.pose().equals(second.pose())) {
      return Contacts.fault(askew(entry, first, second));
    }
    Optional<Box> shared = first.shoulder().shared(second.shoulder());
    if (shared.isEmpty() || !crossesOver(first, face.axis(), second)) {
      return Contacts.fault(notThrough(entry, first, second));
    }
    return fills(first, shared.get()) && fills(second, shared.get())
        ? new Contacts.Found(shared, Optional.empty(), Optional.empty())
        : Contacts.fault(askew(entry, first, second));
  }

  /** Whether each runs past the other on both sides, seen along an axis. */
  private static boolean crossesOver(Blank first, Axis along, Blank second) {
    List<Axis> across = Arrays.stream(Axis.values()).filter(axis -> axis != along).toList();
    return isPast(first, second, across.getFirst()) && isPast(second, first, across.getLast())
        || isPast(second, first, across.getFirst()) && isPast(first, second, across.getLast());
  }

  private static boolean isPast(Blank one, Blank other, Axis axis) {
    Range own = one.shoulder().on(axis);
    Range its = other.shoulder().on(axis);
    return own.from().isShorterThan(its.from()) && own.to().isLongerThan(its.to());
  }

  private boolean fills(Blank blank, Box space) {
    double shared = slants.solid(blank).sharedVolumeMm3(Solid.of(space));
    return shared > space.volumeMm3() - NOTHING_MM3;
  }

  private static Diagnostic askew(Entry entry, Blank first, Blank second) {
    return Diagnostic.error(
            "joint-askew",
            entry.at(),
            "%s cannot join %s and %s, of which one is turned or cut at an angle"
                .formatted(entry.kind(), first.name(), second.name()))
        .hint("let both lie square where they cross");
  }

  private Diagnostic notThrough(Entry entry, Blank first, Blank second) {
    Optional<Axis> other =
        first.shoulder().overlaps(second.shoulder())
            ? Arrays.stream(Axis.values())
                .filter(axis -> crossesOver(first, axis, second))
                .findFirst()
            : Optional.empty();
    return Diagnostic.error(
            "parts-do-not-cross",
            entry.at(),
            "%s: seen from the %s of %s, it and %s do not run through each other: %s is %s, %s is %s"
                .formatted(
                    entry.kind(),
                    entry.face("end").face().word(),
                    first.name(),
                    second.name(),
                    first.name(),
                    place(first),
                    second.name(),
                    place(second)))
        .also(first.at(), first.name() + " is defined here")
        .also(second.at(), second.name() + " is defined here")
        .hint(
            other
                .map(
                    axis ->
                        "it goes in along %s: write `end: %s.%s` or `end: %s.%s`"
                            .formatted(
                                axis.word(),
                                first.name(),
                                Face.of(axis, -1).word(),
                                first.name(),
                                Face.of(axis, 1).word()))
                .orElse(
                    "let both run past each other; for an end write `half-lap`, described shoulder"
                        + " to shoulder"));
  }

  private String place(Blank blank) {
    return String.join(", ", Arrays.stream(Axis.values()).map(axis -> place(axis, blank)).toList());
  }

  private String place(Axis axis, Blank blank) {
    Range range = blank.shoulder().on(axis);
    return "%s %s to %s"
        .formatted(axis.word(), format.format(range.from()), format.format(range.to()));
  }
}
