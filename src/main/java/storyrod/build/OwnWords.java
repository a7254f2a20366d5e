package storyrod.build;

import java.util.List;
import storyrod.build.rule.Job;
import storyrod.description.Diagnostic;
import storyrod.description.OrderEntry;
import storyrod.description.StageEntry;

/** What a maker's stage says about operations, held against the operations there are. */
record OwnWords(StageEntry stage, Job job) {
  private static final int SHOWN = 12;

  /** Whether the maker's words under a key are meant for an operation. */
  static boolean meant(String key, Operation operation) {
    return key.equals(operation.name()) || key.equals(operation.target());
  }

  List<Diagnostic> faults() {
    return stage.say().keySet().stream()
        .filter(key -> job.operations().stream().noneMatch(each -> meant(key, each)))
        .map(
            key ->
                Diagnostic.error(
                        "unknown-operation",
                        stage.title().at(),
                        "this stage says something for `" + key + "`, which is no operation of it")
                    .hint("write it under a name from the stage's order, such as `fit left-side`"))
        .toList();
  }

  /** The fault of an entry that is no operation of the piece. */
  static Diagnostic unknown(OrderEntry entry, Job job) {
    List<String> there =
        job.operations().stream()
            .filter(each -> each.verb().word().equals(entry.verb()))
            .map(Operation::target)
            .distinct()
            .toList();
    return Diagnostic.error(
            "unknown-operation",
            entry.at(),
            "there is nothing to " + entry.verb() + " under the name `" + entry.target() + "`")
        .hint(hint(entry.verb(), there));
  }

  /** What is said of an entry that a used description brings along for other choices than these. */
  static Diagnostic leftOut(OrderEntry entry) {
    return Diagnostic.advice(
            "unknown-operation",
            entry.at(),
            "with these choices there is nothing to "
                + entry.verb()
                + " under the name `"
                + entry.target()
                + "`, so this entry is left out")
        .hint("take it out of the order if it is a slip");
  }

  private static String hint(String verb, List<String> there) {
    if (Verb.named(verb).isEmpty()) {
      return "an order is made of the words " + String.join(", ", Verb.words());
    }
    if (there.isEmpty()) {
      return "this piece has nothing to " + verb + "; leave the entry out";
    }
    String more = there.size() > SHOWN ? " and " + (there.size() - SHOWN) + " more" : "";
    return "what there is to "
        + verb
        + ": "
        + String.join(", ", there.subList(0, Math.min(SHOWN, there.size())))
        + more;
  }
}
