package storyrod.build;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import storyrod.piece.Joint;

/**
 * What is put together dry before the first of its glue is spread or the first peg driven: each
 * sub-assembly, and the piece, with three units or more. Of two the one step that joins them says
 * it.
 */
public final class DryFits {
  private static final int FEWEST = 3;

  private final Map<String, List<Unit>> levels = new LinkedHashMap<>();

  public DryFits(List<Placing> placings, Late late) {
    Map<String, List<Placing>> byLevel =
        placings.stream()
            .filter(placing -> !late.isLate(placing.unit()))
            .collect(
                Collectors.groupingBy(
                    placing -> placing.unit().level(), LinkedHashMap::new, Collectors.toList()));
    byLevel.forEach(
        (level, all) -> {
          if (all.size() >= FEWEST && all.stream().anyMatch(placing -> isHeld(placing, all))) {
            levels.put(level, all.stream().map(Placing::unit).toList());
          }
        });
  }

  private static boolean isHeld(Placing placing, List<Placing> all) {
    return placing.closes().stream().anyMatch(joint -> joint.glued() || isPegged(joint, all));
  }

  /** Whether pegs hold it, which nobody draws out again. */
  private static boolean isPegged(Joint joint, List<Placing> all) {
    return all.stream()
        .flatMap(placing -> placing.unit().parts().stream())
        .flatMap(part -> part.cuts().stream())
        .anyMatch(cut -> cut.term().equals("peg hole") && cut.at().equals(joint.at()));
  }

  void forEach(BiConsumer<String, List<Unit>> action) {
    levels.forEach(action);
  }

  /** By the target of each dry fit, the units that it puts together. */
  public Map<String, List<Unit>> byTarget() {
    Map<String, List<Unit>> units = new LinkedHashMap<>();
    levels.forEach((level, all) -> units.put(target(level), all));
    return units;
  }

  /** What the dry fit of a level is called. */
  public static String target(String level) {
    return level.equals(Unit.PIECE) ? Operations.WHOLE : level;
  }
}
