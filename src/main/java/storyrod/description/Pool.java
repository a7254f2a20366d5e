package storyrod.description;

import java.util.LinkedHashMap;
import java.util.Map;
import storyrod.description.Node.Scalar;
import storyrod.description.Scope.ItemCells;

/**
 * The names that stocks and items have in the whole project. What sub-assemblies bring along keeps
 * its plain name where that is free, and two sub-assemblies of one description share what they
 * bring.
 */
final class Pool {
  private final Map<String, String> owners = new LinkedHashMap<>();
  private final Map<String, ItemCells> fromStartSet = new LinkedHashMap<>();

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
    String owner = name.at().source().file() + (own ? " in " + scope.fullName("") : "");
    String plain = sort + " " + name.text();
    if (owners.computeIfAbsent(plain, free -> owner).equals(owner)) {
      return name.text();
    }
    return scope.fullName(name.text());
  }
}
