package storyrod.wood;

/**
 * What is published about a sheet material.
 *
 * @param lowDensity the lower end of the published range, in kg/m³
 * @param highDensity the upper end, in kg/m³
 * @param verified whether both figures were seen in the source's text
 */
public record SheetMaterial(
    String name, double lowDensity, double highDensity, String source, boolean verified) {

  /** The middle of the published range, in kg/m³. */
  public double density() {
    return (lowDensity + highDensity) / 2;
  }
}
