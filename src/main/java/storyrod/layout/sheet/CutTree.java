package storyrod.layout.sheet;

/**
 * One piece of stock being laid out, in enlarged sizes: a tree of pieces. Each piece is a part, or
 * pieces that follow each other along one axis with the free rest behind them; their own pieces
 * follow each other along the other axis. All of it lies in one array of numbers, so that a copy is
 * quick and nothing is thrown away in the search.
 */
final class CutTree extends CutNodes {
  private int parts;
  private long used;

  /** Makes this an empty piece of a size, its own pieces along an axis. */
  void clear(int length, int width, int axis) {
    end = 0;
    spare = NONE;
    parts = 0;
    used = 0;
    int root = add(axis, length, width);
    nodes[root + FLAGS] |= FIXED;
  }

  void copyFrom(CutTree other) {
    if (nodes.length < other.end) {
      nodes = new int[other.nodes.length];
    }
    System.arraycopy(other.nodes, 0, nodes, 0, other.end);
    end = other.end;
    spare = other.spare;
    parts = other.parts;
    used = other.used;
  }

  /** How many parts there are. */
  int parts() {
    return parts;
  }

  /** The area of all parts. */
  long used() {
    return used;
  }

  /** Cuts an empty fixed node in two fixed nodes at a distance along an axis. */
  int split(int node, int axis, int at) {
    nodes[node + FLAGS] = FIXED | axis;
    nodes[node + REST] = 0;
    int across = size(node, 1 - axis);
    int near = addAlong(axis, 1 - axis, at, across);
    int far = addAlong(axis, 1 - axis, size(node, axis) - at, across);
    nodes[near + FLAGS] |= FIXED;
    nodes[far + FLAGS] |= FIXED;
    append(node, near);
    append(node, far);
    return near;
  }

  /** Makes an empty fixed node one that no part may lie in. */
  void waste(int node) {
    nodes[node + PART] = USELESS;
    nodes[node + REST] = 0;
  }

  /** Turns the axis of an empty node. */
  void setAxis(int node, int axis) {
    nodes[node + FLAGS] = nodes[node + FLAGS] & ~ACROSS | axis;
    nodes[node + REST] = size(node, axis);
  }

  /** Cuts a strip right across from a node's free rest and says which node it is. */
  int strip(int node, int along) {
    int axis = axis(node);
    int strip = addAlong(axis, 1 - axis, along, size(node, 1 - axis));
    append(node, strip);
    nodes[node + REST] -= along;
    return strip;
  }

  /** Tidies a strip up that has got all its parts; without any it is no strip. */
  void finish(int strip) {
    if (first(strip) == NONE) {
      nodes[up(strip) + REST] += size(strip, axis(up(strip)));
      replace(up(strip), strip, NONE);
      drop(strip);
    } else {
      dissolve(strip);
    }
  }

  /** Puts a part at the start of a node's free rest; see {@link #place(int, int, boolean)}. */
  int place(int node, int part, int length, int width, boolean turned, boolean newStrip) {
    int leaf = add(0, length, width);
    nodes[leaf + PART] = part;
    nodes[leaf + REST] = 0;
    if (turned) {
      nodes[leaf + FLAGS] |= TURNED;
    }
    parts++;
    used += (long) length * width;
    place(node, leaf, newStrip);
    return leaf;
  }

  /**
   * A new strip across the rest is as long as the part, so that what is left of the rest keeps its
   * whole breadth; otherwise the rest is first cut along, and what is left beside the part keeps
   * the whole length of the rest.
   */
  private void place(int node, int leaf, boolean newStrip) {
    int axis = axis(node);
    int along = size(leaf, axis);
    int across = size(leaf, 1 - axis);
    int whole = size(node, 1 - axis);
    int rest = nodes[node + REST];
    if (newStrip || across == whole) {
      append(node, across == whole ? leaf : wrapped(axis, leaf, along, whole));
      nodes[node + REST] = rest - along;
      return;
    }
    int inner = leaf;
    if (along < rest) {
      inner = addAlong(axis, axis, rest, across);
      append(inner, leaf);
      nodes[inner + REST] = rest - along;
    }
    append(node, wrapped(axis, inner, rest, whole));
    nodes[node + REST] = 0;
  }

  private int wrapped(int axis, int inner, int along, int across) {
    int strip = addAlong(axis, 1 - axis, along, across);
    append(strip, inner);
    nodes[strip + REST] = across - size(inner, 1 - axis);
    return strip;
  }

  /** Makes a child, and all its pieces, longer along its parent's axis at the cost of the rest. */
  void grow(int child, int by) {
    int node = nodes[child + UP];
    int axis = axis(node);
    nodes[node + REST] -= by;
    nodes[child + SIZE + axis] += by;
    for (int piece = first(child); piece != NONE; ) {
      int next = next(piece);
      if (isPart(piece)) {
        int around = add(axis, size(piece, 0), size(piece, 1));
        nodes[around + REST] = 0;
        nodes[around + UP] = child;
        replaceOne(child, piece, around);
        append(around, piece);
        piece = around;
      }
      nodes[piece + SIZE + axis] += by;
      nodes[piece + REST] += by;
      piece = next;
    }
  }

  /** Takes one part of a type out. */
  void removeOne(int type) {
    for (int node = 0; node < end; node += STRIDE) {
      if (exists(node) && nodes[node + PART] == type) {
        remove(node, new int[type + 1]);
        return;
      }
    }
  }

  /** Takes a piece with all its parts out, counts them, and draws the free space together. */
  void remove(int node, int[] counts) {
    if (isFixed(node)) {
      empty(node, counts);
      return;
    }
    int above = up(node);
    cutOut(node, counts);
    while (above != ROOT && !isFixed(above)) {
      int node2 = above;
      above = up(above);
      if (first(node2) == NONE) {
        cutOut(node2, counts);
      } else {
        tighten(node2);
      }
    }
  }

  private void cutOut(int node, int[] counts) {
    int above = up(node);
    nodes[above + REST] += size(node, axis(above));
    replace(above, node, NONE);
    takeOut(node, counts);
  }

  private void empty(int node, int[] counts) {
    for (int child = first(node); child != NONE; ) {
      int next = next(child);
      if (isFixed(child)) {
        empty(child, counts);
      } else {
        cutOut(child, counts);
      }
      child = next;
    }
  }

  private void takeOut(int node, int[] counts) {
    if (isPart(node)) {
      counts[part(node)]++;
      parts--;
      used -= (long) size(node, 0) * size(node, 1);
    }
    for (int child = first(node); child != NONE; ) {
      int next = next(child);
      takeOut(child, counts);
      child = next;
    }
    drop(node);
  }

  /** Hands space that is free along the parent's axis in all of a node's pieces to the parent. */
  private void tighten(int node) {
    int above = up(node);
    int axis = axis(above);
    int slack = Integer.MAX_VALUE;
    for (int child = first(node); child != NONE; child = next(child)) {
      slack = Math.min(slack, isPart(child) ? 0 : rest(child));
    }
    if (slack > 0) {
      nodes[node + SIZE + axis] -= slack;
      nodes[above + REST] += slack;
      for (int child = first(node); child != NONE; child = next(child)) {
        nodes[child + SIZE + axis] -= slack;
        nodes[child + REST] -= slack;
      }
    }
    for (int child = first(node); child != NONE; ) {
      int next = next(child);
      dissolve(child);
      child = next;
    }
    dissolve(node);
  }

  /** Puts in the place of a node that has a single piece and nothing free that piece. */
  private void dissolve(int node) {
    if (isPart(node) || rest(node) > 0) {
      return;
    }
    int only = first(node);
    if (only == NONE || next(only) != NONE) {
      return;
    }
    int above = up(node);
    if (isPart(only)) {
      replace(above, node, only);
    } else {
      nodes[above + REST] += rest(only);
      replace(above, node, first(only));
      drop(only);
    }
    drop(node);
  }
}
