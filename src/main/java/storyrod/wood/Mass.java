package storyrod.wood;

import java.util.Optional;
import storyrod.description.StockEntry;

/** Masses from volumes and densities. */
public final class Mass {
  /** Standard gravity in m/s² (3rd General Conference on Weights and Measures, 1901). */
  public static final double GRAVITY = 9.80665;

  private static final double MM3_PER_M3 = 1e9;

  private Mass() {}

  /** The mass in kg of a volume in mm³ at a density in kg/m³. */
  public static double kg(double volumeMm3, double densityKgM3) {
    return volumeMm3 / MM3_PER_M3 * densityKgM3;
  }

  /**
   * The density of a stock in kg/m³: the project's own figure, else that of the tables; none where
   * neither knows it.
   */
  public static Optional<Double> density(StockEntry stock) {
    return stock.density().map(given -> given.value().toDouble()).or(() -> published(stock));
  }

  private static Optional<Double> published(StockEntry stock) {
    return switch (stock.kind()) {
      case SOLID -> SpeciesTable.find(stock.species()).flatMap(Species::density);
      case SHEET -> SheetMaterials.find(stock.species()).map(SheetMaterial::density);
    };
  }
}
