package storyrod.description;

import java.util.List;

/**
 * The open sets of words that later stages bring to the language.
 *
 * @param joints the kinds of joint
 * @param cuts the kinds of cut
 * @param operations the verbs with which a maker's own order speaks of operations
 */
public record Vocabulary(List<EntryType> joints, List<EntryType> cuts, List<String> operations) {
  public Vocabulary {
    joints = List.copyOf(joints);
    cuts = List.copyOf(cuts);
    operations = List.copyOf(operations);
  }
}
