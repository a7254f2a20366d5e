package storyrod.layout.sheet;

import java.util.Arrays;

/** The pieces of a {@link CutTree}, linked in one array of numbers. */
abstract class CutNodes {
  static final int NONE = -1;

  /** Stands for a part where a defect leaves a piece of no use. */
  static final int USELESS = -2;

  static final int ROOT = 0;

  static final int UP = 0;
  static final int FIRST = 1;
  static final int NEXT = 2;
  static final int SIZE = 3;
  static final int REST = 5;
  static final int PART = 6;
  static final int FLAGS = 7;
  static final int STRIDE = 8;

  static final int ACROSS = 1;
  static final int TURNED = 2;
  static final int FIXED = 4;
  static final int GONE = -3;

  int[] nodes = new int[16 * STRIDE];
  int end;
  int spare = NONE;

  /** One past the last place of a node; nodes are {@link #step} apart, some of them gone. */
  final int end() {
    return end;
  }

  final int step() {
    return STRIDE;
  }

  final boolean exists(int node) {
    return nodes[node + UP] != GONE;
  }

  final boolean isPart(int node) {
    return nodes[node + PART] != NONE;
  }

  final boolean isUseless(int node) {
    return nodes[node + PART] == USELESS;
  }

  final boolean isTurned(int node) {
    return (nodes[node + FLAGS] & TURNED) != 0;
  }

  final boolean isFixed(int node) {
    return (nodes[node + FLAGS] & FIXED) != 0;
  }

  final int part(int node) {
    return nodes[node + PART];
  }

  final int up(int node) {
    return nodes[node + UP];
  }

  final int first(int node) {
    return nodes[node + FIRST];
  }

  final int next(int node) {
    return nodes[node + NEXT];
  }

  /** The axis along which a node's pieces follow each other: 0 for x, 1 for y. */
  final int axis(int node) {
    return nodes[node + FLAGS] & ACROSS;
  }

  final int size(int node, int axis) {
    return nodes[node + SIZE + axis];
  }

  /** How much along a node's axis is free. */
  final int rest(int node) {
    return nodes[node + REST];
  }

  final int add(int axis, int length, int width) {
    int node = spare;
    if (node == NONE) {
      node = end;
      end += STRIDE;
      if (end > nodes.length) {
        nodes = Arrays.copyOf(nodes, 2 * nodes.length);
      }
    } else {
      spare = nodes[node + NEXT];
    }
    nodes[node + UP] = NONE;
    nodes[node + FIRST] = NONE;
    nodes[node + NEXT] = NONE;
    nodes[node + SIZE] = length;
    nodes[node + SIZE + 1] = width;
    nodes[node + REST] = axis == 0 ? length : width;
    nodes[node + PART] = NONE;
    nodes[node + FLAGS] = axis;
    return node;
  }

  /** A node by its size along an axis and across it. */
  final int addAlong(int axis, int itsAxis, int along, int across) {
    return axis == 0 ? add(itsAxis, along, across) : add(itsAxis, across, along);
  }

  final void drop(int node) {
    nodes[node + UP] = GONE;
    nodes[node + NEXT] = spare;
    spare = node;
  }

  final void append(int node, int child) {
    nodes[child + UP] = node;
    nodes[child + NEXT] = NONE;
    int last = nodes[node + FIRST];
    if (last == NONE) {
      nodes[node + FIRST] = child;
      return;
    }
    while (nodes[last + NEXT] != NONE) {
      last = nodes[last + NEXT];
    }
    nodes[last + NEXT] = child;
  }

  /** Puts other nodes, a chain, in the place of a child. */
  final void replace(int node, int child, int chain) {
    int after = nodes[child + NEXT];
    int first = chain == NONE ? after : chain;
    if (nodes[node + FIRST] == child) {
      nodes[node + FIRST] = first;
    } else {
      int before = nodes[node + FIRST];
      while (nodes[before + NEXT] != child) {
        before = nodes[before + NEXT];
      }
      nodes[before + NEXT] = first;
    }
    if (chain != NONE) {
      int last = chain;
      nodes[last + UP] = node;
      while (nodes[last + NEXT] != NONE) {
        last = nodes[last + NEXT];
        nodes[last + UP] = node;
      }
      nodes[last + NEXT] = after;
    }
  }

  final void replaceOne(int node, int child, int by) {
    nodes[by + NEXT] = NONE;
    replace(node, child, by);
  }
}
