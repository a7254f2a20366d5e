package storyrod.description;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A stage of an order of work.
 *
 * @param unit the full name of the sub-assembly whose description brings it; empty for the
 *     project's own
 */
public record StageEntry(
    Located<String> title, List<OrderEntry> order, Map<String, String> say, String unit) {
  public StageEntry {
    order = List.copyOf(order);
    say = Collections.unmodifiableMap(new LinkedHashMap<>(say));
  }

  /** A stage of the project's own order. */
  public StageEntry(Located<String> title, List<OrderEntry> order, Map<String, String> say) {
    this(title, order, say, "");
  }

  /** Whether it comes from a description that is used. */
  public boolean isBrought() {
    return !unit.isEmpty();
  }

  /** Whether a part or a sub-assembly lies inside the unit that this is the order of. */
  public boolean isAbout(String target) {
    return !isBrought() || target.startsWith(unit + ".");
  }

  /** Whether its order has an operation, such as {@code fit left-side}. */
  public boolean names(String operation) {
    return order.stream().anyMatch(entry -> entry.toString().equals(operation));
  }
}
