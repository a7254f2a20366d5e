package storyrod.planset;

import java.util.Optional;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.wood.Mass;

/**
 * Figures of the whole piece that no stage before the plan set needs.
 *
 * @param massKg the weight of the wood in kg
 */
public record Figures(Optional<Double> massKg) {
  public static final Figures NONE = new Figures(Optional.empty());

  /** The figures of a piece; the weight is known if the density of every stock is. */
  public static Figures of(Piece piece) {
    double kg = 0;
    for (Part part : piece.wood()) {
      Optional<Double> density = Mass.density(part.stock());
      if (density.isEmpty()) {
        return NONE;
      }
      kg += Mass.kg(part.solid().volumeMm3(), density.get());
    }
    return new Figures(Optional.of(kg));
  }
}
