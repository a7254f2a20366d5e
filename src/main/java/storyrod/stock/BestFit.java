package storyrod.stock;

import java.util.List;

/**
 * Finds the place for one part that spoils the least free space. A free rectangle is worth more
 * than its area, so that one large rest beats two small ones.
 */
final class BestFit {
  /** How the worth of a free rectangle grows with its area. */
  enum Worth {
    AREA_TO_THREE_HALVES,
    AREA_SQUARED;

    double of(double area) {
      return switch (this) {
        case AREA_TO_THREE_HALVES -> area * Math.sqrt(area);
        case AREA_SQUARED -> area * area;
      };
    }
  }

  /** Which of the two ways to cut a free rectangle round a part may be used. */
  enum Split {
    EITHER,
    STRIP,
    INNER
  }

  private final Enlarged sizes;
  private final Worth worth;
  private final Split split;

  private SheetTree bestSheet;
  private CutNode bestNode;
  private boolean bestTurned;
  private boolean bestStrip;
  private double bestLoss;

  BestFit(Enlarged sizes, Worth worth, Split split) {
    this.sizes = sizes;
    this.worth = worth;
    this.split = split;
    this.bestSheet = SheetTree.empty(sizes);
    this.bestNode = bestSheet.root;
  }

  /**
   * Places a part on the best of some sheets; false if it fits on none.
   *
   * @param skip says which places to pass over, for variety
   */
  boolean insert(int part, List<SheetTree> sheets, Skip skip) {
    bestLoss = Double.POSITIVE_INFINITY;
    for (SheetTree sheet : sheets) {
      for (CutNode node : sheet.free()) {
        consider(part, false, sheet, node, skip);
        consider(part, true, sheet, node, skip);
      }
    }
    if (bestLoss == Double.POSITIVE_INFINITY) {
      return false;
    }
    bestSheet.place(bestNode, CutNode.part(part, bestTurned, sizes), bestStrip);
    return true;
  }

  /** Decides about each place whether to pass it over. */
  interface Skip {
    boolean now();
  }

  private void consider(int part, boolean turned, SheetTree sheet, CutNode node, Skip skip) {
    long spareLength = node.freeLength() - sizes.length(part, turned);
    long spareWidth = node.freeWidth() - sizes.width(part, turned);
    if (spareLength < 0 || spareWidth < 0 || !sizes.allows(part, turned) || skip.now()) {
      return;
    }
    double whole = worth.of((double) node.freeLength() * node.freeWidth());
    double wholeWidth =
        worth.of((double) spareLength * node.freeWidth())
            + worth.of((double) sizes.length(part, turned) * spareWidth);
    double wholeLength =
        worth.of((double) spareLength * sizes.width(part, turned))
            + worth.of((double) node.freeLength() * spareWidth);
    if (split != Split.INNER) {
      offer(whole - (node.alongX ? wholeWidth : wholeLength), sheet, node, turned, true);
    }
    if (split != Split.STRIP) {
      offer(whole - (node.alongX ? wholeLength : wholeWidth), sheet, node, turned, false);
    }
  }

  private void offer(double loss, SheetTree sheet, CutNode node, boolean turned, boolean strip) {
    if (loss < bestLoss) {
      bestLoss = loss;
      bestSheet = sheet;
      bestNode = node;
      bestTurned = turned;
      bestStrip = strip;
    }
  }
}
