package storyrod.stock;

import java.util.List;
import storyrod.stock.SheetTree.Growth;

/**
 * Finds the place for one part that spoils the least free space, by what free rectangles are worth
 * before and after.
 */
final class BestFit {
  /** Which of the two ways to cut a free rectangle round a part may be used. */
  enum Split {
    EITHER,
    STRIP,
    INNER
  }

  /** How a part comes to a place: see {@link CutNode#place} and {@link CutNode#grow}. */
  private enum How {
    STRIP,
    INNER,
    GROWN
  }

  private final Enlarged sizes;
  private final Worth worth;
  private final Split split;

  private int sheet;
  private int place;
  private boolean turned;
  private How how = How.STRIP;
  private double leastLoss;

  BestFit(Enlarged sizes, Worth worth, Split split) {
    this.sizes = sizes;
    this.worth = worth;
    this.split = split;
  }

  /**
   * Places a part on the best of some sheets; false if it fits on none.
   *
   * @param skip says which places to pass over, for variety
   */
  boolean insert(int part, Sheets sheets, Skip skip) {
    leastLoss = Double.POSITIVE_INFINITY;
    for (int i = 0; i < sheets.count(); i++) {
      consider(part, false, sheets.get(i), skip, i);
      consider(part, true, sheets.get(i), skip, i);
    }
    if (leastLoss == Double.POSITIVE_INFINITY) {
      return false;
    }
    place(sheets.changed(sheet), CutNode.part(part, turned, sizes));
    return true;
  }

  private void place(SheetTree on, CutNode leaf) {
    switch (how) {
      case STRIP -> on.place(place, leaf, true);
      case INNER -> on.place(place, leaf, false);
      case GROWN -> on.placeGrown(place, leaf);
    }
  }

  /** Decides about each place whether to pass it over. */
  interface Skip {
    boolean now();
  }

  private void consider(int part, boolean turn, SheetTree on, Skip skip, int i) {
    if (!sizes.allows(part, turn)) {
      return;
    }
    long length = sizes.length(part, turn);
    long width = sizes.width(part, turn);
    List<CutNode> free = on.free();
    for (int j = 0; j < free.size(); j++) {
      if (fits(free.get(j), length, width) && !skip.now()) {
        consider(free.get(j), length, width, turn, i, j);
      }
    }
    List<Growth> growths = on.growths();
    for (int j = 0; j < growths.size(); j++) {
      Growth growth = growths.get(j);
      if (fits(growth, length, width) && !skip.now()) {
        offer(loss(growth, length, width), turn, How.GROWN, i, j);
      }
    }
  }

  private static boolean fits(CutNode node, long length, long width) {
    return length <= node.freeLength() && width <= node.freeWidth();
  }

  private static boolean fits(Growth growth, long length, long width) {
    long by = (growth.alongX() ? length : width) - growth.along();
    long across = growth.alongX() ? width : length;
    return by > 0 && by <= growth.parent().rest && across <= growth.across();
  }

  private void consider(CutNode node, long length, long width, boolean turn, int i, int j) {
    long spareLength = node.freeLength() - length;
    long spareWidth = node.freeWidth() - width;
    double whole = worth.of(node.freeLength(), node.freeWidth());
    double across = worth.of(spareLength, node.freeWidth()) + worth.of(length, spareWidth);
    double along = worth.of(spareLength, width) + worth.of(node.freeLength(), spareWidth);
    if (split != Split.INNER) {
      offer(whole - (node.alongX ? across : along), turn, How.STRIP, i, j);
    }
    if (split != Split.STRIP) {
      offer(whole - (node.alongX ? along : across), turn, How.INNER, i, j);
    }
  }

  /** What the parent loses, less what the strip's other pieces and the place gain. */
  private double loss(Growth growth, long length, long width) {
    boolean x = growth.alongX();
    long by = (x ? length : width) - growth.along();
    CutNode parent = growth.parent();
    double loss =
        worth.of(parent.rest, parent.along(!x)) - worth.of(parent.rest - by, parent.along(!x));
    loss += worth.of(growth.along(), growth.across());
    loss -= worth.of(x ? length : width, growth.across() - (x ? width : length));
    for (CutNode piece : growth.strip().children) {
      if (piece != growth.place()) {
        long rest = piece.isPart() ? 0 : piece.rest;
        loss += worth.of(rest, piece.along(!x)) - worth.of(rest + by, piece.along(!x));
      }
    }
    if (growth.place() != growth.strip()) {
      long rest = growth.strip().rest;
      long along = growth.strip().along(x);
      loss += worth.of(along, rest) - worth.of(along + by, rest);
    }
    return loss;
  }

  private void offer(double loss, boolean turn, How by, int i, int j) {
    if (loss < leastLoss) {
      leastLoss = loss;
      sheet = i;
      place = j;
      turned = turn;
      how = by;
    }
  }
}
