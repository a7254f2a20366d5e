package storyrod.wood;

import java.util.OptionalDouble;

/**
 * What is published about a sheet material.
 *
 * @param lowDensity the lower end of the published range, in kg/m³
 * @param highDensity the upper end, in kg/m³
 * @param modulus the lower end of the published modulus of elasticity along the face grain, in MPa;
 *     none where it depends on the lay-up
 * @param verified whether all figures were seen in the source's text
 */
public record SheetMaterial(
    String name,
    double lowDensity,
    double highDensity,
    OptionalDouble modulus,
    String source,
    boolean verified) {

  /** The middle of the published range, in kg/m³. */
  public double density() {
    return (lowDensity + highDensity) / 2;
  }
}
