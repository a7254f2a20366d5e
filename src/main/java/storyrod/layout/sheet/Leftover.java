package storyrod.layout.sheet;

/**
 * Which pieces can be what is left of the piece they are sawn from. No fence gives that its size: a
 * blade that takes a little more, or an edge trimmed a little further in, changes it (common
 * practice: parts are sawn to a fence or a stop).
 */
record Leftover(CutTree tree) {
  /** Whether a piece may come out a little off along an axis and no part of it does. */
  boolean isFree(int node, int axis) {
    if (tree.isPart(node)) {
      return tree.isUseless(node);
    }
    return tree.axis(node) == axis
        ? tree.rest(node) > 0 || isAny(node, axis, true)
        : !isAny(node, axis, false);
  }

  /** Whether one of a node's own pieces is free, or is not. */
  private boolean isAny(int node, int axis, boolean free) {
    boolean found = false;
    for (int child = tree.first(node); child != CutTree.NONE && !found; child = tree.next(child)) {
      found = isFree(child, axis) == free;
    }
    return found;
  }
}
