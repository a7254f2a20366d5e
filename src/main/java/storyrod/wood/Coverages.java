package storyrod.wood;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.measure.Coverage;

/** How far sorts of glue and finish go, read from the table {@code coverages.csv} beside it. */
public final class Coverages {
  private static final List<Sort> ALL =
      CsvTable.read("coverages.csv").stream().map(Coverages::sort).toList();

  private Coverages() {}

  /**
   * A sort of glue or finish.
   *
   * @param least what the thirstiest wood leaves of it
   */
  public record Sort(String kind, String use, Coverage least, Coverage most) {}

  public static List<Sort> all() {
    return ALL;
  }

  /** The sort of a kind, such as {@code oil-varnish}. */
  public static Optional<Sort> find(String kind) {
    return ALL.stream().filter(sort -> sort.kind().equals(kind)).findFirst();
  }

  private static Sort sort(Map<String, String> row) {
    return new Sort(
        row.get("kind"), row.get("use"), coverage(row.get("low")), coverage(row.get("high")));
  }

  private static Coverage coverage(String figure) {
    return Coverage.parse(figure + " m2/l")
        .orElseThrow(() -> new IllegalStateException("bug: not a coverage: " + figure));
  }
}
