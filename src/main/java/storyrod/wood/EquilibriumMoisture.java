package storyrod.wood;

/**
 * The moisture content at which wood neither takes up water from the air nor gives any off: Wood
 * Handbook eq. 4-5 (FPL-GTR-282), good from -1 to 132 °C and from 5 to 95 % relative humidity.
 */
public final class EquilibriumMoisture {
  private EquilibriumMoisture() {}

  /**
   * The moisture content in per cent of the ovendry mass.
   *
   * @param celsius the temperature of the air
   * @param humidity the relative humidity in per cent
   */
  public static double percent(double celsius, double humidity) {
    double t = celsius;
    double w = 349 + 1.29 * t + 0.0135 * t * t;
    double k = 0.805 + 0.000736 * t - 0.00000273 * t * t;
    double k1 = 6.27 - 0.00938 * t - 0.000303 * t * t;
    double k2 = 1.91 + 0.0407 * t - 0.000293 * t * t;
    double kh = k * humidity / 100;
    double hydrated = k1 * kh + 2 * k1 * k2 * kh * kh;
    return 1800 / w * (kh / (1 - kh) + hydrated / (1 + k1 * kh + k1 * k2 * kh * kh));
  }
}
