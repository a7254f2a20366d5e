package storyrod.description;

import java.util.ArrayList;
import java.util.List;

/** Collects diagnostics while a stage goes on; the pipeline stops between stages. */
public final class Diagnostics {
  private final List<Diagnostic> collected = new ArrayList<>();

  public void add(Diagnostic diagnostic) {
    collected.add(diagnostic);
  }

  public void addAll(List<Diagnostic> diagnostics) {
    collected.addAll(diagnostics);
  }

  public boolean hasErrors() {
    return collected.stream().anyMatch(Diagnostic::isError);
  }

  /** All diagnostics so far, in the order of their places and without repeats. */
  public List<Diagnostic> sorted() {
    return collected.stream()
        .distinct()
        .sorted(
            java.util.Comparator.comparing((Diagnostic d) -> d.at().source().file())
                .thenComparing(d -> d.at().start())
                .thenComparing(Diagnostic::severity))
        .toList();
  }

  /** As {@link #sorted}, but errors first, then warnings, then advice. */
  public List<Diagnostic> bySeverity() {
    return sorted().stream().sorted(java.util.Comparator.comparing(Diagnostic::severity)).toList();
  }
}
