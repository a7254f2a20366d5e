package storyrod.layout.sheet;

import java.util.List;
import storyrod.layout.sheet.Enlarged.Defect;
import storyrod.layout.sheet.Enlarged.Kind;

/** Cuts defects out of a piece of stock by cuts along their edges, in an order left to chance. */
final class Clearing {
  private final CutTree tree;
  private final List<Defect> defects;
  private final int kerf;
  private final Chance chance;

  private Clearing(CutTree tree, List<Defect> defects, int kerf, Chance chance) {
    this.tree = tree;
    this.defects = defects;
    this.kerf = kerf;
    this.chance = chance;
  }

  /** Makes a tree an empty piece of a kind, clear of defects in some way; the kerf in units. */
  static void start(CutTree tree, Kind kind, int kerf, Chance chance) {
    tree.clear(kind.length(), kind.width(), chance.below(2));
    if (!kind.defects().isEmpty()) {
      new Clearing(tree, kind.defects(), kerf, chance).clear(CutTree.ROOT, 0, 0);
    }
  }

  private void clear(int node, int x, int y) {
    int toX = x + tree.size(node, 0);
    int toY = y + tree.size(node, 1);
    List<Defect> inside = defects.stream().filter(each -> meets(each, x, toX, y, toY)).toList();
    if (inside.isEmpty()) {
      tree.setAxis(node, chance.below(2));
      return;
    }
    Defect defect = inside.get(chance.below(inside.size()));
    int first = chance.below(4);
    for (int i = 0; i < 4; i++) {
      int side = (first + i) % 4;
      int axis = side / 2;
      int at = edge(defect, side) - (axis == 0 ? x : y);
      if (isWorthwhile(defect, side, at, tree.size(node, axis))) {
        split(node, axis, at, x, y);
        return;
      }
    }
    tree.waste(node);
  }

  /** What is no wider than the blade is sawdust: no cut is made for it, unless it is the defect. */
  private boolean isWorthwhile(Defect defect, int side, int at, int size) {
    boolean isFar = side % 2 == 1;
    int wide = edge(defect, side | 1) - edge(defect, side & ~1);
    return isFar ? at > 0 && at < size - kerf : at > 0 && at < size && (at > kerf || wide <= 0);
  }

  private void split(int node, int axis, int at, int x, int y) {
    int near = tree.split(node, axis, at);
    int far = tree.next(near);
    clear(near, x, y);
    clear(far, axis == 0 ? x + at : x, axis == 0 ? y : y + at);
  }

  private static int edge(Defect defect, int side) {
    return switch (side) {
      case 0 -> defect.fromX();
      case 1 -> defect.toX();
      case 2 -> defect.fromY();
      default -> defect.toY();
    };
  }

  private static boolean meets(Defect defect, int x, int toX, int y, int toY) {
    return x < defect.toX() && toX > defect.fromX() && y < defect.toY() && toY > defect.fromY();
  }
}
