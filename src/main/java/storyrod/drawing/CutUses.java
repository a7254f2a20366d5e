package storyrod.drawing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.words.Words;

/** What cuts are for, as notes name it: the marks of the parts that go in, the titles of items. */
record CutUses(Piece piece, Words words) {
  Optional<String> of(Cut cut) {
    return of(List.of(cut));
  }

  /** What equal cuts are for, each once, in their order. */
  Optional<String> of(List<Cut> cuts) {
    List<String> names =
        cuts.stream().flatMap(CutUses::served).map(this::titled).distinct().toList();
    if (names.size() < 2) {
      return names.stream().findFirst();
    }
    String others = String.join(", ", names.subList(0, names.size() - 1));
    return Optional.of(words.say("part.and", others, names.getLast()));
  }

  /** The mark of a part by its name, or the name where there is no such part. */
  String part(String name) {
    return mark(name).orElse(name);
  }

  /** Whether a knob's screw goes in from behind, in a part that slides close over what is there. */
  boolean isSunkBehind(Cut.Holes holes, Part part) {
    return holes.through()
        && holes.forWhat().filter(item -> piece.kind(item) == ItemKind.KNOB).isPresent()
        && piece.joints().stream()
            .anyMatch(joint -> joint.slides() && joint.first().equals(part.name()));
  }

  private static Stream<String> served(Cut cut) {
    List<String> also = cut instanceof Cut.Trench trench ? trench.alsoFor() : List.of();
    return Stream.concat(cut.forWhat().stream(), also.stream());
  }

  private String titled(String name) {
    return mark(name).or(() -> item(name)).orElse(name);
  }

  private Optional<String> mark(String name) {
    return piece.parts().stream()
        .filter(part -> part.name().equals(name))
        .map(Part::mark)
        .findFirst();
  }

  private Optional<String> item(String name) {
    return piece.item(name).map(ItemEntry::title).map(this::insideASentence);
  }

  /** A title in a sentence, unless it begins with a word of capitals. */
  private String insideASentence(String title) {
    boolean plain = title.length() > 1 && Character.isLowerCase(title.charAt(1));
    return plain ? words.inSentence(title) : title;
  }
}
