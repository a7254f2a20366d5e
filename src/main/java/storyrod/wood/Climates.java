package storyrod.wood;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import storyrod.description.ClimateEntry;
import storyrod.measure.Rational;
import storyrod.wood.Climate.Air;

/** The climates that have a name, read from the table {@code climates.csv} beside this class. */
public final class Climates {
  /** By name, in the order of the table. */
  public static final Map<String, Climate> ALL = read();

  private Climates() {}

  /** The climate of a description: that of its room, what was measured before it. */
  public static Climate of(ClimateEntry entry) {
    Climate room = ALL.get(entry.room());
    return new Climate(
        new Air(
            entry.dryCelsius().map(Rational::toDouble).orElse(room.dry().celsius()),
            entry.dryHumidity().map(Rational::toDouble).orElse(room.dry().humidity())),
        new Air(
            entry.dampCelsius().map(Rational::toDouble).orElse(room.damp().celsius()),
            entry.dampHumidity().map(Rational::toDouble).orElse(room.damp().humidity())));
  }

  private static Map<String, Climate> read() {
    Map<String, Climate> climates = new LinkedHashMap<>();
    for (Map<String, String> row : CsvTable.read("climates.csv")) {
      climates.put(row.get("name"), new Climate(air(row, "dry"), air(row, "damp")));
    }
    return Collections.unmodifiableMap(climates);
  }

  private static Air air(Map<String, String> row, String season) {
    return new Air(
        Double.parseDouble(row.get(season + "_celsius")),
        Double.parseDouble(row.get(season + "_humidity")));
  }
}
