package storyrod.description;

import java.util.List;
import java.util.Optional;
import storyrod.description.Node.Mapping;
import storyrod.description.Node.Sequence;
import storyrod.measure.Rational;

/** What is recorded belongs to something, says something, and can have been measured. */
final class RecordCheck {
  private static final List<String> SIZES = List.of("length", "width", "thickness");

  /** Wetter than this is a tree, not a board (common practice, from memory). */
  private static final Rational WETTEST = Rational.of(60, 1);

  private final Context context;

  RecordCheck(Context context) {
    this.context = context;
  }

  /**
   * Checks a record.
   *
   * @param text the same as it is written: what could not be read there is told already
   */
  void check(Entry record, Node text) {
    if (Declarations.child(text, "made").orElse(text) instanceof Sequence all) {
      all.items().stream().filter(Mapping.class::isInstance).forEach(item -> made((Mapping) item));
    }
    record.list("boards").forEach(this::moisture);
  }

  private void made(Mapping made) {
    Optional<Node> step = made.get("step");
    boolean hasPart = made.get("part").isPresent();
    if (hasPart == step.isPresent()) {
      add(
          Diagnostic.error(
                  "record-about",
                  step.orElse(made).at(),
                  hasPart
                      ? "this is about a part and a step at once"
                      : "this is about no part and no step")
              .hint("write `part:` with a part's name, or `step:` with a step's number"));
    } else {
      says(made);
    }
  }

  private void says(Mapping made) {
    Optional<Node> step = made.get("step");
    boolean measured = SIZES.stream().anyMatch(size -> made.get(size).isPresent());
    if (measured && step.isPresent()) {
      add(
          Diagnostic.error("record-about", step.get().at(), "a step has no size")
              .hint("write `part:` with the part that was measured, or take the size away"));
    } else if (!measured && made.get("say").isEmpty()) {
      add(
          Diagnostic.error("record-empty", made.at(), "nothing is told of what was made")
              .hint("write a size that was measured, such as `length:`, or `say:` with words"));
    }
  }

  private void moisture(Entry board) {
    board
        .find("moisture", Rational.class)
        .filter(found -> found.compareTo(WETTEST) > 0)
        .ifPresent(
            found ->
                add(
                    Diagnostic.error(
                            "moisture",
                            board.at("moisture"),
                            "expected moisture of at most %s %%, found %s"
                                .formatted(WETTEST, found))
                        .hint("write what the meter shows in per cent, such as `8.5`")));
  }

  private void add(Diagnostic diagnostic) {
    context.diagnostics().add(diagnostic);
  }
}
