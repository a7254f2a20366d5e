package storyrod.description;

import java.util.List;

/**
 * The open sets of words that later stages bring to the language.
 *
 * @param joints the kinds of joint; each takes a condition beside its own keys
 * @param cuts the kinds of cut; each takes a condition beside its own keys
 * @param operations the verbs with which a maker's own order speaks of operations
 */
public record Vocabulary(List<EntryType> joints, List<EntryType> cuts, List<String> operations) {
  public Vocabulary {
    joints = joints.stream().map(PartSections::withCondition).toList();
    cuts = cuts.stream().map(PartSections::withCondition).toList();
    operations = List.copyOf(operations);
  }
}
