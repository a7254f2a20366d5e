package storyrod.wood;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The sheet materials we know, read from the table {@code sheet_goods.csv} beside this class. */
public final class SheetMaterials {
  private static final List<SheetMaterial> ALL =
      CsvTable.read("sheet_goods.csv").stream().map(SheetMaterials::material).toList();
  private static final NameIndex<SheetMaterial> INDEX = index();

  private SheetMaterials() {}

  /** All materials in the order of the table. */
  public static List<SheetMaterial> all() {
    return ALL;
  }

  /** The material of a name, case aside: {@code birch plywood}. */
  public static Optional<SheetMaterial> find(String name) {
    return INDEX.find(name);
  }

  /** Up to three names that may have been meant, the nearest first. */
  public static List<String> near(String name) {
    return INDEX.near(name);
  }

  private static NameIndex<SheetMaterial> index() {
    NameIndex<SheetMaterial> index = new NameIndex<>();
    ALL.forEach(each -> index.add(each.name(), each));
    return index;
  }

  private static SheetMaterial material(Map<String, String> row) {
    return new SheetMaterial(
        row.get("material"),
        Double.parseDouble(row.get("density_low")),
        Double.parseDouble(row.get("density_high")),
        modulus(row.get("modulus")),
        row.get("source"),
        SpeciesTable.isVerified(row.get("provenance")));
  }

  private static OptionalDouble modulus(String text) {
    return text.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
  }
}
