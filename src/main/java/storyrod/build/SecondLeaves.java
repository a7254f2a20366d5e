package storyrod.build;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.description.HardwareEntry;
import storyrod.description.ItemKind;
import storyrod.description.Located;
import storyrod.piece.Joint.ItemCount;
import storyrod.piece.Nesting;
import storyrod.piece.Piece;

/**
 * Butt hinges are screwed to the door while it lies on the bench, and to what carries it when it is
 * hung: so half of their screws go in with the door.
 */
public record SecondLeaves(Piece piece, Nesting nesting) {
  public SecondLeaves(Piece piece) {
    this(piece, Nesting.of(piece));
  }

  /** The screws that go in when a unit is hung, if it is a door on butt hinges. */
  List<ItemCount> screws(Unit unit) {
    return piece.description().hardware().stream()
        .filter(entry -> door(entry).filter(unit.name()::equals).isPresent())
        .map(entry -> new ItemCount(entry.screw().orElseThrow(), entry.count() * second(entry)))
        .toList();
  }

  /** The entry as far as its hardware is mounted before anything is hung by it. */
  HardwareEntry mounted(HardwareEntry entry) {
    return door(entry).isPresent()
        ? entry.withScrewsEach(entry.screwsEach() - second(entry))
        : entry;
  }

  /** What a step that mounts hinges leaves alone: the parts on which the doors are hung later. */
  public List<String> leftAlone(Step step) {
    List<String> items =
        step.operations().stream()
            .filter(each -> each.verb() == Verb.MOUNT)
            .map(Operation::target)
            .toList();
    return piece.description().hardware().stream()
        .filter(entry -> items.contains(entry.item().value()))
        .filter(entry -> door(entry).isPresent())
        .flatMap(this::carriers)
        .toList();
  }

  private Stream<String> carriers(HardwareEntry entry) {
    List<String> served = entry.parts().stream().map(Located::value).toList();
    return served.stream().filter(part -> !nesting.isHung(part, served));
  }

  /** An odd screw goes into the door. */
  private static int second(HardwareEntry entry) {
    return entry.screwsEach() / 2;
  }

  private Optional<String> door(HardwareEntry entry) {
    List<String> served = entry.parts().stream().map(Located::value).toList();
    boolean isSplit =
        piece.kind(entry.item().value()) == ItemKind.BUTT_HINGE
            && entry.screw().isPresent()
            && entry.screwsEach() > 1;
    return served.stream()
        .filter(part -> isSplit && nesting.isHung(part, served))
        .flatMap(part -> nesting.looseUnit(part).stream())
        .findFirst();
  }
}
