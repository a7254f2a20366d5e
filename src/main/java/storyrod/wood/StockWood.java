package storyrod.wood;

import java.util.Optional;
import java.util.OptionalDouble;
import storyrod.description.StockEntry;
import storyrod.description.StockKind;
import storyrod.measure.Rational;

/** What is known of a stock's wood: the project's own figures first, then the tables'. */
public final class StockWood {
  private StockWood() {}

  /**
   * How much a width of solid wood changes, in its own unit; none where nobody knows. Sheets move
   * so little that they count as still.
   *
   * @param from moisture content in per cent
   * @param to moisture content in per cent
   */
  public static OptionalDouble change(StockEntry stock, double width, double from, double to) {
    if (stock.kind() == StockKind.SHEET) {
      return OptionalDouble.of(0);
    }
    Optional<Rational> own = stock.figures().movement();
    if (own.isPresent()) {
      return OptionalDouble.of(Movement.byCoefficient(width, own.get().toDouble(), from, to));
    }
    return SpeciesTable.find(stock.species())
        .map(wood -> OptionalDouble.of(Movement.change(wood, sawn(stock), width, from, to)))
        .orElse(OptionalDouble.empty());
  }

  private static Sawn sawn(StockEntry stock) {
    return stock.figures().quarterSawn() ? Sawn.QUARTER : Sawn.FLAT;
  }

  /** The modulus of elasticity along the grain in MPa; none where nobody knows. */
  public static OptionalDouble modulus(StockEntry stock) {
    Optional<Rational> own = stock.figures().modulus();
    if (own.isPresent()) {
      return OptionalDouble.of(own.get().toDouble());
    }
    return switch (stock.kind()) {
      case SOLID ->
          SpeciesTable.find(stock.species())
              .map(wood -> OptionalDouble.of(wood.moeMpa()))
              .orElse(OptionalDouble.empty());
      case SHEET ->
          SheetMaterials.find(stock.species())
              .map(SheetMaterial::modulus)
              .orElse(OptionalDouble.empty());
    };
  }
}
