package storyrod.description;

import java.util.Optional;
import storyrod.measure.Length;
import storyrod.measure.Rational;

/**
 * What a project knows of a stock beyond the published tables.
 *
 * @param modulus of elasticity along the grain, in MPa
 * @param movement change of width for each per cent of moisture content, as a ratio
 * @param quarterSawn whether its growth rings stand on the face; else they lie along it
 * @param measured how thick a sheet is by the calliper
 * @param spalted whether the wood is spalted or mouldy
 * @param board a usual board where it is bought
 */
public record StockFigures(
    Optional<Rational> modulus,
    Optional<Rational> movement,
    boolean quarterSawn,
    Optional<Located<Length>> measured,
    boolean spalted,
    Optional<SheetSize> board) {
  /** Nothing beyond the tables; flat-sawn. */
  public static final StockFigures NONE =
      new StockFigures(
          Optional.empty(), Optional.empty(), false, Optional.empty(), false, Optional.empty());
}
