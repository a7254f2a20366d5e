package storyrod.stock;

import java.util.ArrayList;
import java.util.List;

/**
 * A piece of a sheet in enlarged sizes: either one part, or pieces that follow each other along one
 * axis, the free rest behind them. Its children's own children follow each other along the other.
 */
final class CutNode {
  private static final int NONE = -1;

  final boolean alongX;
  final int part;
  final boolean turned;
  final List<CutNode> children = new ArrayList<>();
  long length;
  long width;

  /** How much along this node's axis is free. */
  long rest;

  private CutNode(boolean alongX, long length, long width, int part, boolean turned) {
    this.alongX = alongX;
    this.length = length;
    this.width = width;
    this.part = part;
    this.turned = turned;
  }

  static CutNode free(boolean alongX, long length, long width) {
    CutNode node = new CutNode(alongX, length, width, NONE, false);
    node.rest = node.along(alongX);
    return node;
  }

  static CutNode part(int part, boolean turned, Enlarged sizes) {
    return new CutNode(true, sizes.length(part, turned), sizes.width(part, turned), part, turned);
  }

  boolean isPart() {
    return part != NONE;
  }

  long along(boolean x) {
    return x ? length : width;
  }

  long freeLength() {
    return alongX ? rest : length;
  }

  long freeWidth() {
    return alongX ? width : rest;
  }

  CutNode copy() {
    CutNode copy = new CutNode(alongX, length, width, part, turned);
    copy.rest = rest;
    children.forEach(child -> copy.children.add(child.copy()));
    return copy;
  }

  /**
   * Puts a part at the start of the free rest. A new strip across the rest is as long as the part,
   * so that what is left of the rest keeps its whole breadth; otherwise the rest is first cut
   * along, and what is left beside the part keeps the whole length of the rest.
   */
  void place(CutNode leaf, boolean newStrip) {
    long along = leaf.along(alongX);
    long across = leaf.along(!alongX);
    if (newStrip || across == along(!alongX)) {
      children.add(across == along(!alongX) ? leaf : wrapped(leaf, along, along(!alongX)));
      rest -= along;
    } else {
      CutNode inner = along == rest ? leaf : flat(alongX, rest, across);
      if (inner != leaf) {
        inner.children.add(leaf);
        inner.rest = rest - along;
      }
      children.add(wrapped(inner, rest, along(!alongX)));
      rest = 0;
    }
  }

  private CutNode wrapped(CutNode inner, long along, long across) {
    CutNode strip = flat(!alongX, across, along);
    strip.children.add(inner);
    strip.rest = across - inner.along(!alongX);
    return strip;
  }

  private static CutNode flat(boolean alongX, long along, long across) {
    return free(alongX, alongX ? along : across, alongX ? across : along);
  }

  /** Makes a child, and all its pieces, longer along this node's axis at the cost of the rest. */
  void grow(CutNode child, long by) {
    rest -= by;
    child.shorten(alongX, -by);
    child.children.replaceAll(piece -> piece.isPart() ? around(piece) : piece);
    for (CutNode piece : child.children) {
      piece.shorten(alongX, -by);
      piece.rest += by;
    }
  }

  /** A piece along this node's axis that holds just a part. */
  private CutNode around(CutNode leaf) {
    CutNode piece = free(alongX, leaf.length, leaf.width);
    piece.children.add(leaf);
    piece.rest = 0;
    return piece;
  }

  /** Takes marked parts out and draws the free space together; true if nothing is left here. */
  boolean prune(boolean[] marked, List<Integer> removed) {
    if (isPart()) {
      if (marked[part]) {
        removed.add(part);
      }
      return marked[part];
    }
    for (int i = children.size() - 1; i >= 0; i--) {
      CutNode child = children.get(i);
      if (child.prune(marked, removed)) {
        children.remove(i);
        rest += child.along(alongX);
      }
    }
    tighten();
    return children.isEmpty();
  }

  /** Hands space that is free along this node's axis in all of a child's pieces to this node. */
  private void tighten() {
    for (int i = children.size() - 1; i >= 0; i--) {
      CutNode child = children.get(i);
      long slack = child.slack();
      if (slack > 0) {
        child.shrinkAcross(slack);
        rest += slack;
      }
      dissolve(i);
    }
  }

  private long slack() {
    long slack = Long.MAX_VALUE;
    for (CutNode child : children) {
      slack = Math.min(slack, child.isPart() ? 0 : child.rest);
    }
    return children.isEmpty() ? 0 : slack;
  }

  private void shrinkAcross(long by) {
    shorten(!alongX, by);
    for (CutNode child : children) {
      child.shorten(child.alongX, by);
      child.rest -= by;
    }
    for (int i = children.size() - 1; i >= 0; i--) {
      dissolve(i);
    }
  }

  private void shorten(boolean x, long by) {
    if (x) {
      length -= by;
    } else {
      width -= by;
    }
  }

  /** Replaces a child that has a single piece and nothing free by that piece. */
  private void dissolve(int index) {
    CutNode child = children.get(index);
    if (child.isPart() || child.rest > 0 || child.children.size() != 1) {
      return;
    }
    CutNode only = child.children.getFirst();
    if (only.isPart()) {
      children.set(index, only);
    } else {
      children.remove(index);
      children.addAll(index, only.children);
      rest += only.rest;
    }
  }
}
