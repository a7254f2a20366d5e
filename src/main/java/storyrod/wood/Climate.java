package storyrod.wood;

/** The air of a room in its driest and its dampest season. */
public record Climate(Air dry, Air damp) {

  /**
   * @param celsius temperature
   * @param humidity relative humidity in per cent
   */
  public record Air(double celsius, double humidity) {
    /** The moisture content of wood that has long stood in it, in per cent. */
    public double moisture() {
      return EquilibriumMoisture.percent(celsius, humidity);
    }
  }

  /** Between the two seasons wood stands, on the average, at this moisture content in per cent. */
  public double meanMoisture() {
    return (dry.moisture() + damp.moisture()) / 2;
  }
}
