package storyrod.wood;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The woods we know, read from the table {@code species.csv} beside this class. A wood that is not
 * in it has no properties: none is ever guessed.
 */
public final class SpeciesTable {
  private static final List<Species> ALL =
      CsvTable.read("species.csv").stream().map(SpeciesTable::species).toList();
  private static final NameIndex<Species> INDEX = index();

  private SpeciesTable() {}

  /** All woods in the order of the table. */
  public static List<Species> all() {
    return ALL;
  }

  /** The wood of a common name, case aside: {@code ash, white}, {@code White ash}. */
  public static Optional<Species> find(String name) {
    return INDEX.find(name);
  }

  /** Up to three common names that may have been meant, the nearest first. */
  public static List<String> near(String name) {
    return INDEX.near(name);
  }

  private static NameIndex<Species> index() {
    NameIndex<Species> index = new NameIndex<>();
    ALL.forEach(each -> index.add(each.name(), each));
    return index;
  }

  private static Species species(Map<String, String> row) {
    return new Species(
        row.get("common_name"),
        row.get("scientific_name"),
        Species.Group.valueOf(row.get("group").toUpperCase(Locale.ROOT)),
        Double.parseDouble(row.get("sg")),
        basis(row.get("sg_basis")),
        Integer.parseInt(row.get("moe_mpa")),
        Integer.parseInt(row.get("side_hardness_n")),
        across(row, "shrink_radial_pct", "shrink_tangential_pct"),
        across(row, "c_r_per_pct_mc", "c_t_per_pct_mc"),
        provenance(row),
        row.get("note"));
  }

  private static Species.GravityBasis basis(String text) {
    return switch (text) {
      case "volume at 12% MC" -> Species.GravityBasis.AT_12_PERCENT;
      case "green volume" -> Species.GravityBasis.GREEN;
      default -> throw new IllegalStateException("bug: unknown sg_basis " + text);
    };
  }

  private static Species.AcrossGrain across(
      Map<String, String> row, String radial, String tangential) {
    return new Species.AcrossGrain(
        Double.parseDouble(row.get(radial)), Double.parseDouble(row.get(tangential)));
  }

  private static Species.Provenance provenance(Map<String, String> row) {
    return new Species.Provenance(
        row.get("source"),
        isVerified(row.get("provenance_mechanical")),
        isVerified(row.get("provenance_shrinkage")),
        isVerified(row.get("provenance_coefficients")));
  }

  static boolean isVerified(String provenance) {
    return switch (provenance) {
      case "verified" -> true;
      case "memory" -> false;
      default -> throw new IllegalStateException("bug: unknown provenance " + provenance);
    };
  }
}
