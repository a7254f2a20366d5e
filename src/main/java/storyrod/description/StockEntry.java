package storyrod.description;

import java.util.Optional;
import storyrod.measure.Length;
import storyrod.measure.Rational;
import storyrod.words.Words;

/**
 * A stock.
 *
 * @param species the wood's name, as in the species table, or the sheet's material in words
 * @param boughtAs the rough thickness class of boards, such as 4/4, as a length
 * @param density in kg/m³, where given
 * @param grained whether the face of a sheet has a grain direction that parts must follow
 * @param figures what else the project knows of it
 */
public record StockEntry(
    String name,
    Span at,
    StockKind kind,
    String species,
    Located<Length> thickness,
    Optional<Length> boughtAs,
    Optional<SheetSize> sheet,
    Optional<Price> price,
    Optional<Located<Rational>> density,
    boolean grained,
    StockFigures figures) {
  /** A stock of which the tables know the rest. */
  public StockEntry(
      String name,
      Span at,
      StockKind kind,
      String species,
      Located<Length> thickness,
      Optional<Length> boughtAs,
      Optional<SheetSize> sheet,
      Optional<Price> price,
      Optional<Located<Rational>> density,
      boolean grained) {
    this(
        name,
        at,
        kind,
        species,
        thickness,
        boughtAs,
        sheet,
        price,
        density,
        grained,
        StockFigures.NONE);
  }

  /** Its species as one says it in some words: {@code black walnut} of {@code walnut, black}. */
  public String wood(Words words) {
    String[] halves = species.split(", ", -1);
    return words.name(halves.length == 2 ? halves[1] + " " + halves[0] : species);
  }
}
