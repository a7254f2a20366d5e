package storyrod.wood;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How long sorts of finish take to harden, read from the table {@code cures.csv} beside it. */
public final class Cures {
  private static final List<Cure> ALL =
      CsvTable.read("cures.csv").stream().map(Cures::cure).toList();

  private Cures() {}

  /** From the fewest to the most days of a sort of finish. */
  public record Cure(String kind, int least, int most) {}

  public static List<Cure> all() {
    return ALL;
  }

  /** The days of a kind, such as {@code oil-varnish}; none where nothing is known. */
  public static Optional<Cure> find(String kind) {
    return ALL.stream().filter(cure -> cure.kind().equals(kind)).findFirst();
  }

  private static Cure cure(Map<String, String> row) {
    return new Cure(
        row.get("kind"), Integer.parseInt(row.get("low")), Integer.parseInt(row.get("high")));
  }
}
