package storyrod.wood;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import storyrod.wood.Climate.Air;

/** The climates that have a name, read from the table {@code climates.csv} beside this class. */
public final class Climates {
  /** The climate of a project that names none. */
  public static final String STANDARD = "heated";

  /** By name, in the order of the table. */
  public static final Map<String, Climate> ALL = read();

  private Climates() {}

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
