package storyrod.layout.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import storyrod.layout.sheet.Enlarged.Kind;
import storyrod.layout.sheet.Enlarged.Type;

/**
 * Rectangles without waste, built from parts upwards: two of equal width or equal length make a
 * larger one (Wang 1983, with no waste allowed). What fills a piece of stock is a perfect pattern.
 */
final class Blocks {
  private static final int MOST = 25_000;
  private static final int MOST_PATTERNS = 300;
  private static final int MOST_PAIRS = 200_000;

  private final List<Type> types;
  private final List<Kind> kinds;
  private final StepCount steps;
  private int pairs;
  private final List<Block> blocks = new ArrayList<>();
  private final Set<Block> known = new HashSet<>();
  private final Map<Integer, List<Block>> byLength = new HashMap<>();
  private final Map<Integer, List<Block>> byWidth = new HashMap<>();

  Blocks(Enlarged sizes, StepCount steps) {
    this.types = sizes.types;
    this.kinds = sizes.kinds;
    this.steps = steps;
  }

  /** Two blocks that follow each other along an axis, or one part; equal by size and parts. */
  private static final class Block {
    final int length;
    final int width;
    final byte[] counts;
    final int axis;
    final Block[] both;
    final int part;
    final boolean turned;

    Block(int length, int width, byte[] counts, int part, boolean turned) {
      this.length = length;
      this.width = width;
      this.counts = counts;
      this.axis = -1;
      this.both = new Block[0];
      this.part = part;
      this.turned = turned;
    }

    Block(int axis, Block first, Block second, byte[] counts) {
      this.length = axis == 0 ? first.length + second.length : first.length;
      this.width = axis == 0 ? first.width : first.width + second.width;
      this.counts = counts;
      this.axis = axis;
      this.both = new Block[] {first, second};
      this.part = CutTree.NONE;
      this.turned = false;
    }

    int size(int along) {
      return along == 0 ? length : width;
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Block block
          && block.length == length
          && block.width == width
          && Arrays.equals(block.counts, counts);
    }

    @Override
    public int hashCode() {
      return 31 * (31 * Arrays.hashCode(counts) + length) + width;
    }
  }

  /** Patterns that fill a piece of stock. */
  List<Pattern> patterns() {
    for (int type = 0; type < types.size(); type++) {
      addPart(type, false);
      addPart(type, true);
    }
    List<Pattern> found = new ArrayList<>();
    for (int i = 0; i < blocks.size() && found.size() < MOST_PATTERNS && goesOn(); i++) {
      Block block = blocks.get(i);
      combine(block, 0, byWidth.getOrDefault(block.width, List.of()));
      combine(block, 1, byLength.getOrDefault(block.length, List.of()));
      byWidth.computeIfAbsent(block.width, each -> new ArrayList<>()).add(block);
      byLength.computeIfAbsent(block.length, each -> new ArrayList<>()).add(block);
      combine(block, 0, List.of(block));
      combine(block, 1, List.of(block));
      addPatterns(block, found);
    }
    return found;
  }

  private boolean goesOn() {
    return pairs < MOST_PAIRS && !steps.stopped();
  }

  private void addPatterns(Block block, List<Pattern> found) {
    for (int kind = 0; kind < kinds.size(); kind++) {
      Kind of = kinds.get(kind);
      boolean fills = block.length == of.length() && block.width == of.width();
      if (fills && of.defects().isEmpty()) {
        CutTree tree = new CutTree();
        tree.clear(of.length(), of.width(), Math.max(0, block.axis));
        build(tree, CutTree.ROOT, block);
        found.add(Pattern.of(kind, tree, types.size()));
      }
    }
  }

  private static boolean fits(int length, int width, Kind kind) {
    return length <= kind.length() && width <= kind.width();
  }

  private void addPart(int part, boolean turned) {
    Type type = types.get(part);
    if (type.allows(turned)) {
      byte[] counts = new byte[types.size()];
      counts[part] = 1;
      add(new Block(type.length(turned), type.width(turned), counts, part, turned));
    }
  }

  private void add(Block block) {
    if (blocks.size() < MOST
        && kinds.stream().anyMatch(kind -> fits(block.length, block.width, kind))
        && known.add(block)) {
      blocks.add(block);
    }
  }

  private void combine(Block block, int axis, List<Block> others) {
    pairs += others.size();
    steps.look(10 + (20 + types.size()) * others.size());
    for (Block other : others) {
      byte[] counts = sum(block.counts, other.counts);
      if (counts.length > 0) {
        add(new Block(axis, block, other, counts));
      }
    }
  }

  /** The counts of both, or none if there are not so many parts. */
  private byte[] sum(byte[] a, byte[] b) {
    byte[] sum = new byte[a.length];
    for (int i = 0; i < sum.length; i++) {
      int both = a[i] + b[i];
      if (both > types.get(i).count() || both > Byte.MAX_VALUE) {
        return new byte[0];
      }
      sum[i] = (byte) both;
    }
    return sum;
  }

  /** Cuts a block from the start of a node that follows the same axis. */
  private void build(CutTree tree, int node, Block block) {
    for (Block each : block.both.length == 0 ? new Block[] {block} : block.both) {
      if (each.axis == tree.axis(node)) {
        build(tree, node, each);
      } else if (each.part != CutTree.NONE) {
        tree.place(node, each.part, each.length, each.width, each.turned, true);
      } else {
        addStrip(tree, node, each);
      }
    }
  }

  private void addStrip(CutTree tree, int node, Block block) {
    int axis = tree.axis(node);
    int strip = tree.strip(node, block.size(axis));
    build(tree, strip, block);
    tree.finish(strip);
  }
}
