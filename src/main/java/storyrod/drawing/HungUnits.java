package storyrod.drawing;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import storyrod.description.HardwareEntry;
import storyrod.description.ItemKind;
import storyrod.description.Located;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** What hangs in the piece on slides and hinges, drawers and doors, and what else comes out. */
record HungUnits(Piece piece, Nesting nesting, Set<String> names) {
  /** Fewer parts than this show all that there is to see in their own drawings. */
  private static final int LEAST_PARTS = 3;

  static HungUnits of(Piece piece) {
    Nesting nesting = Nesting.of(piece);
    Set<String> names = new TreeSet<>();
    for (HardwareEntry entry : piece.description().hardware()) {
      ItemKind kind = piece.kind(entry.item().value());
      if (kind.isSlide() || kind.isHinge()) {
        List<String> served = entry.parts().stream().map(Located::value).toList();
        names.addAll(nesting.hungBy(served));
      }
    }
    return new HungUnits(piece, nesting, names);
  }

  /** The parts that neither a slide nor a hinge moves. */
  List<Part> standing() {
    return piece.parts().stream()
        .filter(part -> names.stream().noneMatch(unit -> nesting.isIn(part.name(), unit)))
        .toList();
  }

  /** The parts of each unit that hangs. */
  List<List<Part>> hung() {
    return names.stream().map(nesting::parts).toList();
  }

  /**
   * The sub-assemblies that have drawings of their own: those that no joint holds, drawers, doors,
   * trays, and have three parts or more.
   */
  List<String> drawn() {
    return nesting.units().keySet().stream()
        .filter(nesting.loose()::contains)
        .filter(unit -> nesting.parts(unit).size() >= LEAST_PARTS)
        .toList();
  }
}
