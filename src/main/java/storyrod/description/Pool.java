package storyrod.description;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import storyrod.description.Node.Scalar;
import storyrod.description.Scope.ItemCells;
import storyrod.measure.LengthFormat;

/**
 * The names that stocks and items have in the whole project. What sub-assemblies bring along keeps
 * its plain name where that is free, or else has the name of their description before it; two
 * sub-assemblies of one description share what they bring.
 */
final class Pool {
  private final LengthFormat printed;
  private final Map<String, String> owners = new LinkedHashMap<>();
  private final Map<String, ItemCells> fromStartSet = new LinkedHashMap<>();

  Pool(LengthFormat printed) {
    this.printed = printed;
  }

  /** How the project's plan set prints lengths. */
  LengthFormat printed() {
    return printed;
  }

  /** The items of the start set that are used, by their names there. */
  Map<String, ItemCells> fromStartSet() {
    return fromStartSet;
  }

  /**
   * A name in the whole project.
   *
   * @param sort what it is the name of, for stocks and items don't get in each other's way
   * @param own whether it may differ between two uses of one description
   */
  String claim(String sort, Scalar name, Scope scope, boolean own) {
    String file = name.at().source().file();
    String owner = file + (own ? " in " + scope.fullName("") : "");
    String ofFile =
        file.substring(file.lastIndexOf('/') + 1).replaceFirst("\\.ya?ml$", "") + "." + name.text();
    return Stream.of(name.text(), ofFile, scope.fullName(name.text()))
        .filter(each -> owners.computeIfAbsent(sort + " " + each, free -> owner).equals(owner))
        .findFirst()
        .orElse(scope.fullName(name.text()));
  }
}
