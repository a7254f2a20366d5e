package storyrod.description;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import storyrod.measure.Length;

/**
 * What the shop's machines can take.
 *
 * @param jointerWidth the widest face that the jointer flattens
 * @param drumSanderWidth the widest board that the drum sander takes
 * @param crosscut the widest board that is crosscut in one go
 * @param shortest the shortest board that goes through jointer or planer
 * @param without the tools that the shop does not have, by their names in the plan set
 * @param clampOpening how far the longest clamps open
 */
public record ShopMachines(
    Optional<Length> jointerWidth,
    Optional<Length> drumSanderWidth,
    Optional<Length> crosscut,
    Length shortest,
    List<Located<String>> without,
    Optional<Length> clampOpening) {
  /** No machine's limit is known but that for short boards: 12 in, common practice. */
  public static final ShopMachines USUAL =
      new ShopMachines(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Length.inches(12),
          List.of(),
          Optional.empty());

  public ShopMachines {
    without = List.copyOf(without);
  }

  /** Whether a tool is among those that the shop does not have; spaces and hyphens aside. */
  public boolean lacks(String tool) {
    return without.stream().anyMatch(each -> letters(each.value()).equals(letters(tool)));
  }

  /** A tool's name by its letters only: {@code Band saw} and {@code band-saw} are one tool. */
  public static String letters(String tool) {
    return tool.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "");
  }
}
