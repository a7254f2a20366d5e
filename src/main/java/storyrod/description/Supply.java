package storyrod.description;

import java.util.Optional;
import storyrod.measure.Coverage;
import storyrod.measure.Rational;
import storyrod.measure.Volume;

/**
 * How far a glue or a finish goes and how it is sold.
 *
 * @param coverage what its label says
 * @param soldIn what one can or bottle holds
 * @param price of one
 */
public record Supply(
    Optional<Coverage> coverage, Optional<Volume> soldIn, Optional<Rational> price) {
  public static final Supply UNKNOWN =
      new Supply(Optional.empty(), Optional.empty(), Optional.empty());
}
