package storyrod.layout.sheet;

import java.util.Arrays;

/**
 * A piece of stock in a search: its tree, the free places in it, and the state to go back to.
 *
 * <p>A place is the free rest of a node. A growth is such a place, or a strip's piece that may have
 * no rest of its own, which gets longer when its strip does, as far as the strip's parent has rest.
 */
final class OpenSheet {
  static final int CLOSED = -1;

  int kind = CLOSED;
  CutTree tree = new CutTree();
  private int keptKind = CLOSED;
  private CutTree kept = new CutTree();
  private boolean touched;
  private boolean known;

  int places;
  int[] node = new int[16];
  int[] freeX = new int[16];
  int[] freeY = new int[16];
  double[] worth = new double[16];
  double freeWorth;

  int growths;
  int[] strip = new int[16];
  int[] place = new int[16];

  /** The longest free place along each axis, growths counted. */
  int mostX;

  int mostY;

  /** Says that the sheet is about to change. */
  void touch() {
    if (!touched) {
      touched = true;
      keptKind = kind;
      if (kind != CLOSED) {
        kept.copyFrom(tree);
      }
    }
    known = false;
  }

  /** Makes the present state the one to go back to. */
  void keep() {
    touched = false;
  }

  void goBack() {
    if (touched) {
      CutTree changed = tree;
      tree = kept;
      kept = changed;
      kind = keptKind;
      touched = false;
      known = false;
    }
  }

  /** Finds the places and growths if the sheet has changed. */
  void find(double[] scale) {
    if (known) {
      return;
    }
    known = true;
    places = 0;
    growths = 0;
    mostX = 0;
    mostY = 0;
    freeWorth = 0;
    for (int each = 0; each < tree.end(); each += tree.step()) {
      if (tree.exists(each) && !tree.isPart(each)) {
        int rest = tree.rest(each);
        if (rest > 0) {
          addPlace(each, rest, scale[0]);
        }
        int above = tree.up(each);
        if (above >= 0 && tree.rest(above) > 0 && !tree.isFixed(each)) {
          addGrowths(each, above);
        }
      }
    }
  }

  private void addPlace(int each, int rest, double scale) {
    if (places == node.length) {
      node = Arrays.copyOf(node, 2 * places);
      freeX = Arrays.copyOf(freeX, 2 * places);
      freeY = Arrays.copyOf(freeY, 2 * places);
      worth = Arrays.copyOf(worth, 2 * places);
    }
    int axis = tree.axis(each);
    int across = tree.size(each, 1 - axis);
    node[places] = each;
    freeX[places] = axis == 0 ? rest : across;
    freeY[places] = axis == 0 ? across : rest;
    worth[places] = Worth.of((double) rest * across * scale);
    freeWorth += worth[places];
    mostX = Math.max(mostX, freeX[places]);
    mostY = Math.max(mostY, freeY[places]);
    places++;
  }

  private void addGrowths(int each, int above) {
    if (tree.rest(each) > 0) {
      addGrowth(each, each, above);
    }
    for (int piece = tree.first(each); piece >= 0; piece = tree.next(piece)) {
      if (!tree.isPart(piece)) {
        addGrowth(each, piece, above);
      }
    }
  }

  private void addGrowth(int of, int at, int above) {
    if (growths == strip.length) {
      strip = Arrays.copyOf(strip, 2 * growths);
      place = Arrays.copyOf(place, 2 * growths);
    }
    strip[growths] = of;
    place[growths] = at;
    growths++;
    int axis = tree.axis(above);
    int along = tree.rest(above) + (of == at ? tree.size(of, axis) : tree.rest(at));
    int across = of == at ? tree.rest(of) : tree.size(at, 1 - axis);
    mostX = Math.max(mostX, axis == 0 ? along : across);
    mostY = Math.max(mostY, axis == 0 ? across : along);
  }
}
