package storyrod.stock;

import java.util.ArrayList;
import java.util.List;

/** One sheet being laid out: a tree of pieces, with the free places kept at hand. */
final class SheetTree {
  final CutNode root;
  private final List<CutNode> free = new ArrayList<>();
  private final List<Growth> growths = new ArrayList<>();
  private boolean known;

  private SheetTree(CutNode root) {
    this.root = root;
  }

  static SheetTree empty(Enlarged sizes) {
    return new SheetTree(CutNode.free(true, sizes.length, sizes.width));
  }

  SheetTree copy() {
    return new SheetTree(root.copy());
  }

  boolean isEmpty() {
    return root.children.isEmpty();
  }

  /**
   * A free place that can be made longer along the axis of its strip's parent, as far as that one
   * has space free.
   *
   * @param place the strip itself or one of its pieces
   */
  record Growth(CutNode parent, CutNode strip, CutNode place) {
    boolean alongX() {
      return parent.alongX;
    }

    /** How long the place is along the axis of growth. */
    long along() {
      return alongX() ? place.freeLength() : place.freeWidth();
    }

    long across() {
      return alongX() ? place.freeWidth() : place.freeLength();
    }
  }

  /** The nodes whose rest is free, in a fixed order. */
  List<CutNode> free() {
    find();
    return free;
  }

  /** The places that can be made longer, in a fixed order. */
  List<Growth> growths() {
    find();
    return growths;
  }

  private void find() {
    if (!known) {
      free.clear();
      growths.clear();
      collect(root);
      known = true;
    }
  }

  private void collect(CutNode node) {
    if (node.rest > 0) {
      free.add(node);
      node.children.stream().filter(child -> !child.isPart()).forEach(c -> collect(node, c));
    }
    node.children.forEach(this::collect);
  }

  private void collect(CutNode parent, CutNode strip) {
    if (strip.rest > 0) {
      growths.add(new Growth(parent, strip, strip));
    }
    for (CutNode piece : strip.children) {
      if (!piece.isPart()) {
        growths.add(new Growth(parent, strip, piece));
      }
    }
  }

  /** Puts a part at the free place of a number in {@link #free}. */
  void place(int place, CutNode leaf, boolean newStrip) {
    free().get(place).place(leaf, newStrip);
    known = false;
  }

  /** Puts a part at a place of {@link #growths}, which becomes just as long as the part. */
  void placeGrown(int place, CutNode leaf) {
    Growth growth = growths().get(place);
    growth.parent.grow(growth.strip, leaf.along(growth.alongX()) - growth.along());
    growth.place.place(leaf, true);
    known = false;
  }

  void prune(boolean[] marked, List<Integer> removed) {
    root.prune(marked, removed);
    known = false;
  }

  /** All pieces, parts among them. */
  List<CutNode> nodes() {
    List<CutNode> nodes = new ArrayList<>();
    gather(root, nodes);
    return nodes;
  }

  private static void gather(CutNode node, List<CutNode> nodes) {
    nodes.add(node);
    node.children.forEach(child -> gather(child, nodes));
  }

  /** The area in square ticks of the largest free place, a kerf less each way. */
  long largestOffcut(Enlarged sizes) {
    long largest = 0;
    for (CutNode node : free()) {
      long length = sizes.unit * node.freeLength() - sizes.kerfTicks;
      long width = sizes.unit * node.freeWidth() - sizes.kerfTicks;
      largest = Math.max(largest, length > 0 && width > 0 ? length * width : 0);
    }
    return largest;
  }
}
