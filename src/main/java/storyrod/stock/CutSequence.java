package storyrod.stock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import storyrod.measure.Length;
import storyrod.stock.SheetProblem.Sheet;
import storyrod.stock.StockPlan.Area;
import storyrod.stock.StockPlan.SawCut;

/**
 * Turns the tree of one sheet into numbered cuts, placed parts and offcuts in true sizes. The edges
 * are trimmed first; then each piece is cut up from its near edge before its own pieces are, the
 * broadest first, so that equal fence settings follow each other and what is left stays together.
 */
final class CutSequence {
  private final Sheet sheet;
  private final long unit;
  private final List<SawCut> cuts = new ArrayList<>();
  private final List<Spot> spots = new ArrayList<>();
  private final List<Area> offcuts = new ArrayList<>();

  private CutSequence(Sheet sheet, long unit) {
    this.sheet = sheet;
    this.unit = unit;
  }

  /** Where a part, by its place in the problem, comes to lie. */
  record Spot(int part, Area area, boolean turned) {}

  /**
   * What the saw does to a sheet.
   *
   * @param offcuts the largest first
   */
  record Sawing(List<Spot> spots, List<SawCut> cuts, List<Area> offcuts) {}

  static Sawing of(SheetTree tree, Enlarged sizes, Sheet sheet) {
    CutSequence sequence = new CutSequence(sheet, sizes.unit);
    sequence.trim();
    sequence.walk(tree.root, sheet.trim().left(), sheet.trim().bottom());
    sequence.offcuts.sort(Comparator.comparing(CutSequence::minusArea));
    return new Sawing(
        List.copyOf(sequence.spots), List.copyOf(sequence.cuts), List.copyOf(sequence.offcuts));
  }

  private static long minusArea(Area area) {
    return -area.length().ticks() * area.width().ticks();
  }

  /** Near edges are trimmed with the fence on the far one: the first fence keeps what is good. */
  private void trim() {
    long kerf = sheet.kerf();
    SheetProblem.Trim trim = sheet.trim();
    long top = sheet.width() - trim.top();
    long right = sheet.length() - trim.right();
    if (trim.bottom() > 0) {
      cut(true, trim.bottom() - kerf, 0, sheet.length(), sheet.width() - trim.bottom());
    }
    if (trim.top() > 0) {
      cut(true, top, 0, sheet.length(), top - trim.bottom());
    }
    if (trim.left() > 0) {
      cut(false, trim.left() - kerf, trim.bottom(), top, sheet.length() - trim.left());
    }
    if (trim.right() > 0) {
      cut(false, right, trim.bottom(), top, right - trim.left());
    }
  }

  private void cut(boolean alongLength, long at, long from, long to, long fence) {
    cuts.add(
        new SawCut(
            cuts.size() + 1,
            alongLength,
            new Length(at),
            new Length(from),
            new Length(to),
            new Length(fence)));
  }

  /** Cuts a node's piece, whose near corner is at x, y, and then its own pieces. */
  private void walk(CutNode node, long x, long y) {
    if (node.isPart()) {
      spots.add(new Spot(node.part, area(x, y, node.length, node.width), node.turned));
      return;
    }
    List<CutNode> children = broadestFirst(node);
    long at = node.alongX ? x : y;
    long end = at + unit * node.along(node.alongX);
    for (CutNode child : children) {
      at += unit * child.along(node.alongX);
      if (at < end) {
        cutOff(node, node.alongX ? y : x, at, unit * child.along(node.alongX));
      }
    }
    keep(node, node.alongX ? at : x, node.alongX ? y : at);
    descend(node, children, x, y);
  }

  private static List<CutNode> broadestFirst(CutNode node) {
    return node.children.stream()
        .sorted(Comparator.comparingLong(child -> -child.along(node.alongX)))
        .toList();
  }

  private void cutOff(CutNode node, long across, long at, long size) {
    long to = across + unit * node.along(!node.alongX) - sheet.kerf();
    cut(!node.alongX, at - sheet.kerf(), across, to, size - sheet.kerf());
  }

  private void descend(CutNode node, List<CutNode> children, long x, long y) {
    long at = node.alongX ? x : y;
    for (CutNode child : children) {
      walk(child, node.alongX ? at : x, node.alongX ? y : at);
      at += unit * child.along(node.alongX);
    }
  }

  private void keep(CutNode node, long x, long y) {
    Area rest = area(x, y, node.freeLength(), node.freeWidth());
    if (rest.length().isPositive() && rest.width().isPositive()) {
      offcuts.add(rest);
    }
  }

  private Area area(long x, long y, long length, long width) {
    return new Area(
        new Length(x),
        new Length(y),
        new Length(unit * length - sheet.kerf()),
        new Length(unit * width - sheet.kerf()));
  }
}
