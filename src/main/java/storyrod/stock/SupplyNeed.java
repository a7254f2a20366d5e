package storyrod.stock;

import java.util.Optional;
import storyrod.measure.Rational;
import storyrod.measure.Volume;

/**
 * How much glue or finish a piece takes.
 *
 * @param use what it is for
 * @param product what it is, by the description
 * @param squareMetres of wood, once
 * @param coats how often it is put on; 1 for glue
 * @param litres what that takes; none where nothing says how far the product goes
 * @param soldIn what one can or bottle holds
 * @param cans to buy, for the most that it may take
 * @param cost of these
 */
public record SupplyNeed(
    Use use,
    String product,
    Rational squareMetres,
    int coats,
    Optional<Litres> litres,
    Optional<Volume> soldIn,
    Optional<Integer> cans,
    Optional<Rational> cost) {
  public enum Use {
    GLUE,
    FINISH
  }

  /**
   * From the least to the most that it takes; both are the same where its coverage is given.
   *
   * @param byLabel whether the description gives the coverage; else it is common practice
   */
  public record Litres(Rational least, Rational most, boolean byLabel) {}

  /**
   * Sheets of one grit, an estimate.
   *
   * @param packs to buy, and what they cost, where the description says how it is sold
   */
  public record Abrasive(int grit, int sheets, Optional<Packs> packs, Optional<Rational> cost) {
    /** How many packs of how many sheets. */
    public record Packs(int count, int sheets) {}

    public Abrasive(int grit, int sheets) {
      this(grit, sheets, Optional.empty(), Optional.empty());
    }
  }
}
