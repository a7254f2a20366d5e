package storyrod.wood;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How far sheets may be from their nominal thickness, read from the table {@code
 * sheet_tolerances.csv} beside this class.
 */
public final class SheetTolerances {
  private static final List<Row> ALL =
      CsvTable.read("sheet_tolerances.csv").stream().map(SheetTolerances::row).toList();

  private SheetTolerances() {}

  /**
   * What a standard allows, in mm.
   *
   * @param minus how much thinner
   * @param plus how much thicker
   */
  public record Tolerance(double minus, double plus, String source) {}

  private record Row(String material, double to, Tolerance tolerance) {}

  /** The tolerance of a material, if one is published. */
  public static Optional<Tolerance> of(String material, double nominalMm) {
    return SheetMaterials.find(material)
        .flatMap(
            known ->
                ALL.stream()
                    .filter(row -> row.material().equals(known.name()) && nominalMm <= row.to())
                    .findFirst())
        .map(Row::tolerance);
  }

  private static Row row(Map<String, String> row) {
    return new Row(
        row.get("material"),
        Double.parseDouble(row.get("to_mm")),
        new Tolerance(
            Double.parseDouble(row.get("minus_mm")),
            Double.parseDouble(row.get("plus_mm")),
            row.get("source")));
  }
}
