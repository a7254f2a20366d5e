package storyrod.planset;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Operation;
import storyrod.build.Verb;
import storyrod.description.HardwareEntry;
import storyrod.description.ItemKind;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** What stands in the case beside the free edges of doors, and carries their catches. */
record CatchPosts(Piece piece) {
  /** What stands further off takes no catch. */
  private static final Length NEAR = Length.mm(15);

  /** The full names of the parts that a step's catches are screwed to besides the doors. */
  List<String> of(Step step) {
    List<String> catches =
        step.operations().stream()
            .filter(each -> each.verb() == Verb.MOUNT)
            .map(Operation::target)
            .filter(item -> piece.kind(item) == ItemKind.CATCH)
            .toList();
    return of(
        piece.description().hardware().stream()
            .filter(entry -> catches.contains(entry.item().value()))
            .toList());
  }

  /** The full names of the parts besides the doors that an item is screwed to, if it is a catch. */
  List<String> of(String item) {
    return of(
        piece.description().hardware().stream()
            .filter(entry -> entry.item().value().equals(item))
            .filter(any -> piece.kind(item) == ItemKind.CATCH)
            .toList());
  }

  /** What stands beside the free edges of the parts that hardware is on, and back of them. */
  List<String> of(List<HardwareEntry> entries) {
    return entries.stream()
        .flatMap(entry -> entry.parts().stream())
        .flatMap(name -> behind(piece.part(name.value())).stream())
        .map(Part::name)
        .toList();
  }

  private Optional<Part> behind(Part on) {
    return piece.parts().stream()
        .filter(part -> !part.assembly().equals(on.assembly()))
        .filter(part -> !part.bounds().y().from().isShorterThan(on.bounds().y().from()))
        .filter(part -> part.bounds().z().overlaps(on.bounds().z()))
        .filter(part -> !apart(part, on).isLongerThan(NEAR) && !apart(part, on).isNegative())
        .min(
            Comparator.comparing((Part part) -> apart(part, on))
                .thenComparing(part -> part.bounds().y().from(), Comparator.reverseOrder()));
  }

  /** How far apart two parts stand from left to right; negative where they do not. */
  private static Length apart(Part one, Part other) {
    Range first = one.bounds().x();
    Range second = other.bounds().x();
    return first.from().minus(second.to()).max(second.from().minus(first.to()));
  }
}
