package storyrod.description;

import java.util.Optional;

/**
 * From what boards a part of solid wood is made, as far as its description says.
 *
 * @param staves how many boards of equal width lie edge to edge
 * @param stavesLaid how their annual rings lie, in the words of {@link #ALTERNATED} and {@link
 *     #MATCHED}
 * @param layers how many boards of equal thickness lie face to face
 */
public record Makeup(
    Optional<Integer> staves, Optional<String> stavesLaid, Optional<Located<Integer>> layers) {
  /** The rings of neighbours curve up and down in turn. */
  public static final String ALTERNATED = "alternated";

  /** The staves are turned by their looks. */
  public static final String MATCHED = "matched";

  /** One board, or as many as it takes. */
  public static final Makeup UNSAID =
      new Makeup(Optional.empty(), Optional.empty(), Optional.empty());

  static Makeup of(Entry part) {
    return new Makeup(
        part.find("staves", Integer.class),
        part.find("staves-laid", String.class),
        part.findLocated("layers", Integer.class));
  }

  /** Equal for parts that are made from the same boards; empty where nothing is said. */
  public String key() {
    String of =
        "" + staves.orElse(0) + stavesLaid.orElse("") + layers.map(Located::value).orElse(1);
    return equals(UNSAID) ? "" : " of " + of;
  }
}
