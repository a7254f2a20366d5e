package storyrod.wood;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A wood that a text names.
 *
 * @param said as the text says it
 * @param genus what all its kinds are called: {@code oak}
 * @param species the name in the table of woods; empty where the text names the genus alone
 */
public record NamedWood(String said, String genus, String species) {
  /** The woods of the table that a text names, each kind before what is named by its genus. */
  public static List<NamedWood> in(String text) {
    List<NamedWood> found = new ArrayList<>();
    String left = " " + text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}-]+", " ") + " ";
    for (Species species : SpeciesTable.all()) {
      for (String form : forms(species)) {
        if (left.contains(" " + form + " ")) {
          found.add(new NamedWood(form, genus(species), species.name()));
          left = left.replace(" " + form + " ", " ");
        }
      }
    }
    for (String genus : SpeciesTable.all().stream().map(NamedWood::genus).distinct().toList()) {
      if (left.contains(" " + genus + " ")) {
        found.add(new NamedWood(genus, genus, ""));
      }
    }
    return found;
  }

  private static String genus(Species species) {
    return species.name().split(", ")[0].toLowerCase(Locale.ROOT);
  }

  /** A kind as it is spoken and as it is listed, by each of its names. */
  private static List<String> forms(Species species) {
    String[] halves = species.name().toLowerCase(Locale.ROOT).split(", ", 2);
    List<String> forms = new ArrayList<>();
    if (halves.length == 2) {
      for (String kind : halves[1].replace(")", "").split(" \\(")) {
        forms.add(kind + " " + halves[0]);
        forms.add(halves[0] + " " + kind);
      }
    }
    return forms;
  }

  /** Whether both may be the same wood: one genus, and not two kinds of it. */
  public boolean mayBe(NamedWood other) {
    return genus.equals(other.genus)
        && (species.isEmpty() || other.species.isEmpty() || species.equals(other.species));
  }
}
