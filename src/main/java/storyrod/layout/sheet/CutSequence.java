package storyrod.layout.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import storyrod.layout.CutList;
import storyrod.layout.LayoutJob;
import storyrod.layout.LayoutJob.Area;
import storyrod.layout.LayoutJob.Stock;
import storyrod.layout.LayoutPlan.Sawn;
import storyrod.layout.LayoutPlan.Spot;
import storyrod.measure.Length;

/**
 * Turns the tree of one piece of stock into numbered cuts, placed parts and offcuts in true sizes.
 * The edges are trimmed first; then each piece is cut up from its near edge before its own pieces
 * are, the broadest first, so that equal fence settings follow each other and what is left stays
 * together. Where nothing is left, the last of them is one in which no part gets its size from
 * that.
 */
final class CutSequence {
  /** No shorter piece is ripped only to get an offcut out of it (common practice: 12 in). */
  private static final long SHORTEST_RIP = 12 * Length.TICKS_PER_INCH;

  private final Stock stock;
  private final long unit;
  private final long kerf;
  private final CutTree tree;
  private final IntUnaryOperator blankOf;
  private final CutList cuts = new CutList();
  private final List<Spot> spots = new ArrayList<>();
  private final List<Area> offcuts = new ArrayList<>();

  private CutSequence(Enlarged sizes, CutTree tree, Stock stock, IntUnaryOperator blankOf) {
    this.stock = stock;
    this.unit = sizes.unit;
    this.kerf = sizes.kerfTicks;
    this.tree = tree;
    this.blankOf = blankOf;
  }

  /**
   * What the saw does to a piece of stock.
   *
   * @param blankOf gives the blank of which a part of a type is to be one
   */
  static Sawn of(Enlarged sizes, Found.Laid laid, LayoutJob job, IntUnaryOperator blankOf) {
    int number = sizes.kinds.get(laid.kind()).stock();
    Stock stock = job.stock().get(number);
    CutSequence sequence = new CutSequence(sizes, laid.tree(), stock, blankOf);
    sequence.cuts.trim(stock, job.kerf());
    sequence.walk(CutTree.ROOT, stock.trim().left().ticks(), stock.trim().bottom().ticks());
    sequence.offcuts.sort(Comparator.comparingDouble(CutSequence::minusArea));
    return new Sawn(number, sequence.spots, sequence.cuts.cuts(), sequence.offcuts);
  }

  private static double minusArea(Area area) {
    return -(double) area.length().ticks() * area.width().ticks();
  }

  /** Cuts a node's piece, whose near corner is at x, y, and then its own pieces. */
  private void walk(int node, long x, long y) {
    if (unit * tree.size(node, 0) <= kerf || unit * tree.size(node, 1) <= kerf) {
      return; // sawdust
    }
    if (tree.isPart(node)) {
      if (!tree.isUseless(node)) {
        int blank = blankOf.applyAsInt(tree.part(node));
        spots.add(
            new Spot(
                blank, area(x, y, tree.size(node, 0), tree.size(node, 1)), tree.isTurned(node)));
      }
      return;
    }
    int axis = tree.axis(node);
    if (axis == 1 && isTooShortToRip(node)) {
      return; // all of it is waste
    }
    List<Integer> children = children(node, axis);
    long at = axis == 0 ? x : y;
    long end = at + unit * tree.size(node, axis);
    for (int child : children) {
      long size = unit * tree.size(child, axis);
      at += size;
      if (at < end) {
        // A strip that the blade takes whole has no near edge to set the fence from.
        cutOff(node, axis == 0 ? y : x, at, size < kerf ? end - kerf - at : size - kerf);
      }
    }
    keep(node, axis == 0 ? at : x, axis == 0 ? y : at);
    descend(children, axis, x, y);
  }

  private boolean isTooShortToRip(int node) {
    boolean isCut = tree.first(node) != CutTree.NONE;
    return isCut && unit * tree.size(node, 0) - kerf < SHORTEST_RIP && !holdsPart(node);
  }

  private boolean holdsPart(int node) {
    boolean holds = tree.isPart(node) && !tree.isUseless(node);
    for (int child = tree.first(node); child != CutTree.NONE && !holds; child = tree.next(child)) {
      holds = holdsPart(child);
    }
    return holds;
  }

  /**
   * The broadest first, and the broadest that no fence has to measure last where it is what is
   * left; pieces beside a defect lie where they do.
   */
  private List<Integer> children(int node, int axis) {
    List<Integer> children = new ArrayList<>();
    boolean fixed = addPieces(node, axis, children);
    if (!fixed) {
      children.sort(Comparator.comparingInt(child -> -tree.size(child, axis)));
      lastFree(children, axis)
          .filter(child -> tree.rest(node) == 0)
          .ifPresent(child -> children.add(children.remove(children.indexOf(child))));
    }
    return children;
  }

  /** Adds a node's pieces, and instead of some that are sawn apart the same way these. */
  private boolean addPieces(int node, int axis, List<Integer> pieces) {
    boolean fixed = false;
    for (int child = tree.first(node); child != CutTree.NONE; child = tree.next(child)) {
      int same = sawnAlike(child, axis);
      if (same == CutTree.NONE) {
        pieces.add(child);
        fixed |= tree.isFixed(child);
      } else {
        fixed |= addPieces(same, axis, pieces);
      }
    }
    return fixed;
  }

  /** A piece, or the only one that it holds, if it is sawn up along an axis with nothing left. */
  private int sawnAlike(int node, int axis) {
    if (tree.isPart(node) || tree.isFixed(node) || tree.rest(node) > 0) {
      return CutTree.NONE;
    }
    if (tree.axis(node) == axis) {
      return node;
    }
    int only = tree.first(node);
    boolean isAlone = only != CutTree.NONE && tree.next(only) == CutTree.NONE;
    return isAlone ? sawnAlike(only, axis) : CutTree.NONE;
  }

  private Optional<Integer> lastFree(List<Integer> children, int axis) {
    Leftover leftover = new Leftover(tree);
    return children.stream().filter(child -> leftover.isFree(child, axis)).findFirst();
  }

  private void cutOff(int node, long across, long at, long fence) {
    int axis = tree.axis(node);
    long to = across + unit * tree.size(node, 1 - axis) - kerf;
    cuts.cut(axis == 1, at - kerf, across, to, fence);
  }

  private void descend(List<Integer> children, int axis, long x, long y) {
    long at = axis == 0 ? x : y;
    for (int child : children) {
      walk(child, axis == 0 ? at : x, axis == 0 ? y : at);
      at += unit * tree.size(child, axis);
    }
  }

  private void keep(int node, long x, long y) {
    int axis = tree.axis(node);
    int rest = tree.rest(node);
    int across = tree.size(node, 1 - axis);
    Area area = axis == 0 ? area(x, y, rest, across) : area(x, y, across, rest);
    if (area.length().isPositive() && area.width().isPositive()) {
      offcuts.add(area);
    }
  }

  private Area area(long x, long y, long length, long width) {
    return new Area(
        new Length(x),
        new Length(y),
        new Length(unit * length - kerf),
        new Length(unit * width - kerf));
  }
}
