package storyrod.check;

import java.util.List;
import storyrod.description.HardwareEntry;
import storyrod.description.Located;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** The parts that slides serve: those of the drawers, and those of what the drawers run in. */
record HungParts(List<Part> hung, List<Part> others, List<Part> all) {
  static HungParts of(Piece piece, Nesting nesting, HardwareEntry entry) {
    List<String> served = entry.parts().stream().map(Located::value).toList();
    List<Part> all = served.stream().map(piece::part).toList();
    boolean isKnown = served.stream().anyMatch(part -> nesting.isHung(part, served));
    List<Part> hung =
        all.stream()
            .filter(
                part -> isKnown ? nesting.isHung(part.name(), served) : part.assembly().isPresent())
            .toList();
    return new HungParts(hung, all.stream().filter(part -> !hung.contains(part)).toList(), all);
  }
}
