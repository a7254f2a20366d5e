package storyrod.wood;

import java.util.Optional;

/**
 * What is published about a wood.
 *
 * @param name the common name with the genus first, such as {@code ash, white}
 * @param specificGravity ovendry mass against the mass of water of the same volume
 * @param gravityBasis the moisture at which that volume was taken
 * @param moeMpa modulus of elasticity in MPa at 12 % moisture content
 * @param sideHardnessN side hardness in newtons at 12 % moisture content
 * @param shrinkage in per cent from green to ovendry
 * @param coefficient change of size for each per cent of moisture content, as a ratio
 */
public record Species(
    String name,
    String scientificName,
    Group group,
    double specificGravity,
    GravityBasis gravityBasis,
    int moeMpa,
    int sideHardnessN,
    AcrossGrain shrinkage,
    AcrossGrain coefficient,
    Provenance provenance,
    String note) {

  /** Whether a wood comes from a broad-leaved or a coniferous tree. */
  public enum Group {
    HARDWOOD,
    SOFTWOOD
  }

  /** On which volume a specific gravity stands. */
  public enum GravityBasis {
    AT_12_PERCENT,
    GREEN
  }

  /** A figure in the two directions across the grain. */
  public record AcrossGrain(double radial, double tangential) {}

  /**
   * Where the figures are from, and whether all of a group were seen in the source's text.
   *
   * @param mechanical for specific gravity, elasticity and hardness
   */
  public record Provenance(
      String source, boolean mechanical, boolean shrinkage, boolean coefficients) {}

  /**
   * The density in kg/m³ at 12 % moisture content: the ovendry mass of the volume at 12 %, plus 12
   * % of that mass as water. None where the gravity stands on green volume.
   */
  public Optional<Double> density() {
    return gravityBasis == GravityBasis.AT_12_PERCENT
        ? Optional.of(specificGravity * 1000 * 1.12)
        : Optional.empty();
  }
}
