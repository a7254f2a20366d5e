package storyrod.layout;

import java.util.List;
import storyrod.measure.Length;

/**
 * What is to be sawn, and from what. Where every blank and every piece of stock has the same width
 * and nothing may turn or is trimmed across, only lengths matter.
 *
 * @param kerf the width of the blade
 */
public record LayoutJob(List<Blank> blanks, List<Stock> stock, Length kerf, Least least) {
  public LayoutJob {
    blanks = List.copyOf(blanks);
    stock = List.copyOf(stock);
  }

  /** The same job with as much of every stock as wanted. */
  public LayoutJob withoutLimits() {
    return new LayoutJob(blanks, stock.stream().map(Stock::withoutLimit).toList(), kerf, least);
  }

  /** What the best layout has least of. */
  public enum Least {
    PIECES,
    COST
  }

  /**
   * Equal parts to be sawn.
   *
   * @param length along the stock's length, unless turned
   */
  public record Blank(String name, Length length, Length width, int count, boolean mayTurn) {}

  /**
   * Equal pieces of stock.
   *
   * @param available how many there are, or {@link #UNLIMITED}
   * @param cost of one piece, in whole units of the reader's choice
   * @param defects places that no part may lie over, from the near corner of the untrimmed piece
   */
  public record Stock(
      String name,
      Length length,
      Length width,
      int available,
      long cost,
      Trim trim,
      List<Area> defects) {
    public static final int UNLIMITED = -1;

    public Stock {
      defects = List.copyOf(defects);
    }

    private Stock withoutLimit() {
      return new Stock(name, length, width, UNLIMITED, cost, trim, defects);
    }
  }

  /** What is cut off each edge first: left and right along x, bottom and top along y. */
  public record Trim(Length left, Length right, Length bottom, Length top) {
    public static final Trim NONE = all(Length.ZERO);

    public static Trim all(Length each) {
      return new Trim(each, each, each, each);
    }
  }

  /** A rectangle of a piece of stock, x along its length, y across, from its near corner. */
  public record Area(Length x, Length y, Length length, Length width) {}
}
