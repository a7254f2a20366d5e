package storyrod.description;

import java.util.ArrayList;
import java.util.List;
import storyrod.description.Node.Mapping;
import storyrod.description.Node.Member;
import storyrod.description.Node.Scalar;

/** Finds the keys of an entry that stand beside its name, not indented under it. */
record Beside(EntryType type, Mapping entries) {
  /** The name that has nothing under it and the keys behind it; none if all is as it should be. */
  List<Member> strays() {
    List<Member> strays = new ArrayList<>();
    for (Member member : entries.members()) {
      boolean isName = isEmpty(member) && strays.isEmpty();
      if (isName || !strays.isEmpty() && isKey(member)) {
        strays.add(member);
      }
    }
    return strays.size() < 2 ? List.of() : strays;
  }

  private static boolean isEmpty(Member member) {
    return member.value() instanceof Scalar text && text.text().isEmpty();
  }

  private boolean isKey(Member member) {
    return member.value() instanceof Scalar
        && type.keys().stream().anyMatch(key -> key.name().equals(member.key().text()));
  }

  static Diagnostic fault(Member name) {
    String word = Quote.of(name.key().text());
    return Diagnostic.error(
            "empty-value", name.key().at(), "the keys of '" + word + "' stand beside it")
        .hint("indent them further than `" + word + ":`, by two spaces");
  }
}
