package storyrod.drawing;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * All drawings of a plan set.
 *
 * @param cover the piece put together
 * @param parts one drawing for each mark, in the order of the marks
 * @param layouts for each sheet stock's name, one drawing a sheet
 * @param steps pictures of steps by their number; a step that changes nothing to see has none
 */
public record Drawings(
    Drawing cover,
    Drawing exploded,
    Map<String, Drawing> parts,
    Map<String, List<Drawing>> layouts,
    Map<Integer, Drawing> steps) {
  public Drawings {
    parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts));
    layouts = Collections.unmodifiableMap(new LinkedHashMap<>(layouts));
    steps = Collections.unmodifiableMap(new LinkedHashMap<>(steps));
  }
}
