package storyrod.piece;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Description;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.Entry;
import storyrod.geometry.Box;
import storyrod.measure.Length;
import storyrod.piece.KeptCutout.Method;

/** Reads how the piece of a cutout is kept, and says what is wrong with it. */
final class KeptReader {
  private static final String AS = "kept-as";
  private static final String METHOD = "method";
  private static final String GAP = "gap";
  private static final String CUTTER = "cutter";
  private static final String KERF = "kerf";

  private final Map<String, Blank> blanks;
  private final Description description;
  private final Diagnostics diagnostics;

  KeptReader(Map<String, Blank> blanks, Description description, Diagnostics diagnostics) {
    this.blanks = blanks;
    this.description = description;
    this.diagnostics = diagnostics;
  }

  /** How the piece is kept; nothing if it is waste or if something is wrong. */
  Optional<KeptCutout> read(Entry entry, Box opening) {
    int before = diagnostics.sorted().size();
    Optional<KeptCutout> kept =
        entry.has(AS) ? method(entry).map(method -> kept(entry, opening, method)) : waste(entry);
    boolean sound = diagnostics.sorted().size() == before;
    kept.filter(each -> sound).ifPresent(each -> compare(entry, each));
    return diagnostics.sorted().size() == before ? kept : Optional.empty();
  }

  private Optional<KeptCutout> waste(Entry entry) {
    Stream.of(METHOD, GAP, CUTTER, KERF)
        .filter(entry::has)
        .findFirst()
        .ifPresent(
            key ->
                diagnostics.add(
                    Diagnostic.error(
                            "kept-keys",
                            entry.at(key),
                            "`" + key + "` says how a piece is kept, but this cutout keeps none")
                        .hint("name the part it becomes under `kept-as:`, or take this away")));
    return Optional.empty();
  }

  private Optional<Method> method(Entry entry) {
    Optional<Method> method = entry.find(METHOD, String.class).map(Method::named);
    if (method.isEmpty()) {
      diagnostics.add(
          Diagnostic.error(
                  "kept-keys", entry.at(), "a kept cutout needs the method by which it is cut out")
              .hint("write `method: saw`, `method: router` or `method: laser`"));
    }
    method.ifPresent(each -> keys(entry, each));
    return method;
  }

  private void keys(Entry entry, Method method) {
    switch (method) {
      case SAW -> {
        needs(entry, GAP, "what is trimmed off each side, where the rips leave no gap");
        forbids(entry, List.of(CUTTER));
      }
      case ROUTER -> {
        needs(entry, CUTTER, "the cutter's diameter");
        forbids(entry, List.of(GAP, KERF));
      }
      case LASER -> {
        needs(entry, KERF, "what the laser takes, by a trial cut");
        forbids(entry, List.of(GAP, CUTTER));
      }
    }
  }

  private void needs(Entry entry, String key, String what) {
    if (!entry.has(key)) {
      diagnostics.add(
          Diagnostic.error(
                  "kept-keys",
                  entry.at(METHOD),
                  "`method: " + entry.text(METHOD) + "` needs `" + key + "`")
              .hint("write `" + key + ":` with " + what));
    }
  }

  private void forbids(Entry entry, List<String> keys) {
    keys.stream()
        .filter(entry::has)
        .forEach(
            key ->
                diagnostics.add(
                    Diagnostic.error(
                            "kept-keys",
                            entry.at(key),
                            "`" + key + "` means nothing with `method: " + entry.text(METHOD) + "`")
                        .hint("take it away, or choose another method")));
  }

  private KeptCutout kept(Entry entry, Box opening, Method method) {
    Blank board = blanks.get(entry.text("in"));
    Length kerf =
        switch (method) {
          case SAW -> entry.findLength(KERF).orElse(description.shop().kerf());
          case ROUTER -> entry.findLength(CUTTER).orElse(Length.ZERO);
          case LASER -> entry.findLength(KERF).orElse(Length.ZERO);
        };
    return new KeptCutout(
        board.name(),
        entry.text(AS),
        method,
        opening,
        board.length(),
        storyrod.geometry.Axis.other(board.length(), board.thickness()),
        kerf,
        method == Method.SAW ? entry.findLength(GAP).orElse(Length.ZERO) : Length.ZERO,
        entry.at());
  }

  private void compare(Entry entry, KeptCutout kept) {
    Blank part = blanks.get(kept.kept());
    if (part != null) {
      new KeptFit(entry, kept, blanks.get(kept.board()), part, description.format())
          .fault()
          .ifPresent(diagnostics::add);
    }
  }
}
