package storyrod.description;

import java.util.Optional;
import storyrod.measure.Length;
import storyrod.measure.Rational;

/**
 * An item of hardware with the sizes that matter.
 *
 * @param diameter a screw's shank, a pin's body
 * @param sideClearance what a slide needs beside the drawer, each side
 * @param pack how many come in a pack, 1 if not said
 * @param price for one pack
 * @param sizes what only its kind has
 */
public record ItemEntry(
    String name,
    Span at,
    String title,
    ItemKind kind,
    Optional<Length> length,
    Optional<Length> diameter,
    Optional<Length> sideClearance,
    int pack,
    Optional<Rational> price,
    ItemSizes sizes,
    Optional<Located<String>> from) {
  /** An item that is bought. */
  public ItemEntry(
      String name,
      Span at,
      String title,
      ItemKind kind,
      Optional<Length> length,
      Optional<Length> diameter,
      Optional<Length> sideClearance,
      int pack,
      Optional<Rational> price,
      ItemSizes sizes) {
    this(
        name,
        at,
        title,
        kind,
        length,
        diameter,
        sideClearance,
        pack,
        price,
        sizes,
        Optional.empty());
  }

  /** An item with no sizes of a special kind. */
  public ItemEntry(
      String name,
      Span at,
      String title,
      ItemKind kind,
      Optional<Length> length,
      Optional<Length> diameter,
      Optional<Length> sideClearance,
      int pack,
      Optional<Rational> price) {
    this(name, at, title, kind, length, diameter, sideClearance, pack, price, ItemSizes.NONE);
  }
}
