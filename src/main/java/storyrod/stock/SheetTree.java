package storyrod.stock;

import java.util.ArrayList;
import java.util.List;

/** One sheet being laid out: a tree of pieces, with the free places kept at hand. */
final class SheetTree {
  final CutNode root;
  private final List<CutNode> free = new ArrayList<>();
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

  /** The nodes whose rest is free, in a fixed order. */
  List<CutNode> free() {
    if (!known) {
      free.clear();
      collect(root);
      known = true;
    }
    return free;
  }

  private void collect(CutNode node) {
    if (node.rest > 0) {
      free.add(node);
    }
    node.children.forEach(this::collect);
  }

  void place(CutNode at, CutNode leaf, boolean newStrip) {
    at.place(leaf, newStrip);
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
