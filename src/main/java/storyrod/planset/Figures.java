package storyrod.planset;

import java.util.Optional;

/**
 * Figures of the whole piece that no stage before the plan set needs.
 *
 * @param massKg the weight of the wood in kg
 */
public record Figures(Optional<Double> massKg) {
  public static final Figures NONE = new Figures(Optional.empty());
}
