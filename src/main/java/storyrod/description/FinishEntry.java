package storyrod.description;

import java.util.List;
import java.util.Optional;

/**
 * The finish: what, how often, and whether it has been tried on this wood.
 *
 * @param how it is put on, a word of {@link #HOW}
 * @param kind what sort of product it is, a word of {@link #KINDS}
 * @param supply how far it goes and how it is sold
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
    Supply supply) {
  public static final List<String> HOW = List.of("wiped", "brushed", "sprayed");

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
          "stain");

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
        Supply.UNKNOWN);
  }
}
