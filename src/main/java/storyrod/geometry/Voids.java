package storyrod.geometry;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.measure.Length;

/**
 * Free space among boxes that a cube of some size cannot be moved into from outside.
 *
 * <p>The boxes grow by half the cube on every side, so that its middle is a point; their faces cut
 * space into cells, and what a flood from outside does not reach is closed off.
 */
public final class Voids {
  private static final List<List<Integer>> ORDERS =
      List.of(
          List.of(0, 1, 2),
          List.of(0, 2, 1),
          List.of(1, 0, 2),
          List.of(1, 2, 0),
          List.of(2, 0, 1),
          List.of(2, 1, 0));

  private final long[][] planes = new long[3][];
  private final BitSet taken = new BitSet();
  private final Length half;

  private Voids(Collection<Box> solids, Length cube) {
    half = new Length(cube.ticks() / 2);
    List<Box> grown = solids.stream().map(box -> grown(box, half)).toList();
    for (Axis axis : Axis.values()) {
      planes[axis.ordinal()] = planes(grown, axis);
    }
    grown.forEach(this::take);
  }

  /**
   * A large box in each closed-off space: its whole where it is a box. In the order of their cells.
   *
   * @param solids what stands in the way; where they touch or overlap they close the way
   * @param cube the size of what cannot get in; narrower gaps count as closed
   */
  public static List<Box> among(Collection<Box> solids, Length cube) {
    return solids.isEmpty() ? List.of() : new Voids(solids, cube).closed();
  }

  private static Box grown(Box box, Length by) {
    Box result = box;
    for (Face face : Face.values()) {
      result = result.extended(face, by);
    }
    return result;
  }

  /** All places where a box begins or ends, with one beyond on each side for the outside. */
  private static long[] planes(List<Box> boxes, Axis axis) {
    long[] ends =
        boxes.stream()
            .map(box -> box.on(axis))
            .flatMap(range -> Stream.of(range.from(), range.to()))
            .mapToLong(Length::ticks)
            .sorted()
            .distinct()
            .toArray();
    long[] all = new long[ends.length + 2];
    System.arraycopy(ends, 0, all, 1, ends.length);
    all[0] = ends[0] - 1;
    all[all.length - 1] = ends[ends.length - 1] + 1;
    return all;
  }

  private int cells(int axis) {
    return planes[axis].length - 1;
  }

  private int cell(int x, int y, int z) {
    return (x * cells(1) + y) * cells(2) + z;
  }

  private int at(Axis axis, Length place) {
    return Arrays.binarySearch(planes[axis.ordinal()], place.ticks());
  }

  private void take(Box box) {
    int from = at(Axis.Z, box.z().from());
    int to = at(Axis.Z, box.z().to());
    for (int x = at(Axis.X, box.x().from()); x < at(Axis.X, box.x().to()); x++) {
      for (int y = at(Axis.Y, box.y().from()); y < at(Axis.Y, box.y().to()); y++) {
        taken.set(cell(x, y, from), cell(x, y, to));
      }
    }
  }

  private List<Box> closed() {
    BitSet seen = (BitSet) taken.clone();
    flood(0, seen);
    List<Box> closed = new ArrayList<>();
    int all = cells(0) * cells(1) * cells(2);
    for (int cell = seen.nextClearBit(0); cell < all; cell = seen.nextClearBit(cell)) {
      largest(flood(cell, seen)).ifPresent(box -> closed.add(grown(box, half)));
    }
    return closed;
  }

  /** All free cells that hang together with one, which are marked as seen. */
  private BitSet flood(int start, BitSet seen) {
    BitSet reached = new BitSet();
    Deque<Integer> open = new ArrayDeque<>(List.of(start));
    seen.set(start);
    while (!open.isEmpty()) {
      int cell = open.pop();
      reached.set(cell);
      for (int next : neighbours(cell)) {
        if (next >= 0 && !seen.get(next)) {
          seen.set(next);
          open.push(next);
        }
      }
    }
    return reached;
  }

  private int[] neighbours(int cell) {
    int[] place = place(cell);
    int[] next = new int[6];
    for (int axis = 0; axis < 3; axis++) {
      int stride = axis == 0 ? cells(1) * cells(2) : axis == 1 ? cells(2) : 1;
      next[2 * axis] = place[axis] > 0 ? cell - stride : -1;
      next[2 * axis + 1] = place[axis] < cells(axis) - 1 ? cell + stride : -1;
    }
    return next;
  }

  private int[] place(int cell) {
    int z = cell % cells(2);
    int y = cell / cells(2) % cells(1);
    return new int[] {cell / cells(2) / cells(1), y, z};
  }

  /**
   * A large box of whole cells, all of them in a set: from each cell one grows as far as it can
   * along one axis, then along another, then along the third, in each order of the axes.
   */
  private Optional<Box> largest(BitSet cells) {
    return cells.stream()
        .mapToObj(this::place)
        .flatMap(place -> ORDERS.stream().map(order -> grown(place, order, cells)))
        .map(this::box)
        .max(Comparator.comparingDouble(Box::volumeMm3));
  }

  private int[][] grown(int[] place, List<Integer> order, BitSet cells) {
    int[][] block = {place.clone(), place.clone()};
    for (int axis : order) {
      grow(block, axis, -1, cells);
      grow(block, axis, 1, cells);
    }
    return block;
  }

  /** Adds layer after layer on one side of a block, from its lowest to its highest cell. */
  private void grow(int[][] block, int axis, int step, BitSet cells) {
    int side = step < 0 ? 0 : 1;
    while (true) {
      int[][] layer = {block[0].clone(), block[1].clone()};
      layer[0][axis] = block[side][axis] + step;
      layer[1][axis] = layer[0][axis];
      if (!isIn(layer, axis, cells)) {
        return;
      }
      block[side][axis] += step;
    }
  }

  private boolean isIn(int[][] block, int axis, BitSet cells) {
    if (block[0][axis] < 0 || block[0][axis] >= cells(axis)) {
      return false;
    }
    for (int x = block[0][0]; x <= block[1][0]; x++) {
      for (int y = block[0][1]; y <= block[1][1]; y++) {
        int from = cell(x, y, block[0][2]);
        int to = cell(x, y, block[1][2]);
        if (cells.nextClearBit(from) <= to) {
          return false;
        }
      }
    }
    return true;
  }

  private Box box(int[][] block) {
    return new Box(range(block, 0), range(block, 1), range(block, 2));
  }

  private Range range(int[][] block, int axis) {
    return new Range(
        new Length(planes[axis][block[0][axis]]), new Length(planes[axis][block[1][axis] + 1]));
  }
}
