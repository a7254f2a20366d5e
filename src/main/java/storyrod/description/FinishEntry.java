package storyrod.description;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The finish: what, how often, and whether it has been tried on this wood.
 *
 * @param how it is put on, a word of {@link #HOW}
 * @param kind what sort of product it is, a word of {@link #KINDS}
 * @param supply how far it goes and how it is sold
 * @param sandpaper how that is sold, if its price counts
 * @param last what goes on over its coats, such as wax over shellac
 * @param sheen how it shines, a word of {@link #SHEENS}
 * @param cureDays after how many days it has fully hardened, by its label
 */
public record FinishEntry(
    Span at,
    String product,
    int coats,
    int dryHours,
    int sandTo,
    Optional<String> triedOn,
    Optional<String> how,
    Optional<String> kind,
    Supply supply,
    Optional<SandpaperEntry> sandpaper,
    Optional<FinishEntry> last,
    Optional<String> sheen,
    Optional<Integer> cureDays) {
  public static final List<String> HOW = List.of("wiped", "brushed", "sprayed");

  public static final List<String> SHEENS = List.of("matte", "satin", "semi-gloss", "gloss");

  /** The words for sorts of finish; a test holds them to the table of coverages. */
  public static final List<String> KINDS =
      List.of(
          "oil-varnish",
          "water-varnish",
          "wiping-varnish",
          "shellac",
          "lacquer",
          "hard-wax-oil",
          "linseed-oil",
          "tung-oil",
          "enamel",
          "stain",
          "wax");

  /** A finish that is put on as its label says. */
  public FinishEntry(
      Span at, String product, int coats, int dryHours, int sandTo, Optional<String> triedOn) {
    this(
        at,
        product,
        coats,
        dryHours,
        sandTo,
        triedOn,
        Optional.empty(),
        Optional.empty(),
        Supply.UNKNOWN,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** The products in the order in which they go on. */
  public List<FinishEntry> products() {
    return Stream.concat(Stream.of(this), last.stream()).toList();
  }

  /** How often something is put on, whatever it is. */
  public int allCoats() {
    return products().stream().mapToInt(FinishEntry::coats).sum();
  }
}
