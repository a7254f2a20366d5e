package storyrod.drawing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.AssemblyEntry;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * The name of one of several sub-assemblies that stand side by side in a picture: seen from behind
 * the left one is at the right.
 *
 * @param parts the full names of its parts
 */
record UnitName(String title, List<String> parts) {
  UnitName {
    parts = List.copyOf(parts);
  }

  /**
   * Of things that stand side by side those that are sub-assemblies; of a single thing none. Where
   * two would bear one name, a part by itself bears its own, as a front beside its drawer.
   */
  static List<UnitName> of(Piece piece, List<List<Part>> things) {
    List<UnitName> names =
        things.size() < 2
            ? List.of()
            : things.stream()
                .flatMap(thing -> of(piece, thing, Nesting.of(piece)).stream())
                .toList();
    return names.stream().map(name -> name.isAmong(names) ? name.ofPart(piece) : name).toList();
  }

  private boolean isAmong(List<UnitName> names) {
    return names.stream().anyMatch(other -> other != this && other.title.equals(title));
  }

  /** Whether a single part bears it. */
  boolean isOfPart() {
    return parts.size() == 1;
  }

  private UnitName ofPart(Piece piece) {
    return !isOfPart() ? this : new UnitName(piece.part(parts.getFirst()).title(), parts);
  }

  private static Optional<UnitName> of(Piece piece, List<Part> thing, Nesting nesting) {
    List<String> parts = thing.stream().map(Part::name).toList();
    Stream<String> around = parts.stream().limit(1).flatMap(name -> nesting.around(name).stream());
    return around
        .filter(unit -> parts.stream().allMatch(part -> nesting.isIn(part, unit)))
        .flatMap(unit -> Optional.ofNullable(piece.description().assemblies().get(unit)).stream())
        .findFirst()
        .map(AssemblyEntry::title)
        .map(title -> new UnitName(title, parts));
  }
}
