package storyrod.drawing;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Tone;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;

/**
 * What is seen of a body of boxes from one of its faces, exactly: the body is cut into columns
 * along the line of sight; between neighbouring columns runs a visible edge if their nearest wood
 * lies at different depths, a hidden one if only what lies behind differs.
 */
final class Projection implements Shown {
  private final Axis across;
  private final Axis up;
  private final Axis depth;
  private final boolean fromFarEnd;
  private final List<Length> acrossAt;
  private final List<Length> upAt;
  private final List<Length> depthAt;
  private final Box body;
  private final List<Box> removed;
  private final List<List<BitSet>> columns = new ArrayList<>();

  /** An edge along one axis at a place on the other. */
  record Edge(Role role, Axis along, Range range, Length at) {}

  /** A rectangle of one tone. */
  record Patch(Tone tone, Range across, Range up) {}

  Projection(Box body, List<Box> removed, Face seenFrom) {
    this.body = body;
    this.removed = removed;
    this.depth = seenFrom.axis();
    this.across = depth == Axis.X ? Axis.Y : Axis.X;
    this.up = Axis.other(depth, across);
    this.fromFarEnd = seenFrom.sign() > 0;
    this.acrossAt = steps(across);
    this.upAt = steps(up);
    this.depthAt = steps(depth);
    for (int i = 0; i + 1 < acrossAt.size(); i++) {
      List<BitSet> row = new ArrayList<>();
      for (int j = 0; j + 1 < upAt.size(); j++) {
        row.add(column(i, j));
      }
      columns.add(row);
    }
  }

  private List<Length> steps(Axis axis) {
    TreeSet<Length> steps = new TreeSet<>(List.of(body.on(axis).from(), body.on(axis).to()));
    for (Box box : removed) {
      steps.add(box.on(axis).from());
      steps.add(box.on(axis).to());
    }
    return List.copyOf(steps);
  }

  private static Range cell(List<Length> steps, int index) {
    return new Range(steps.get(index), steps.get(index + 1));
  }

  private BitSet column(int i, int j) {
    int count = depthAt.size() - 1;
    BitSet wood = new BitSet(count);
    for (int k = 0; k < count; k++) {
      Box cell =
          body.with(across, cell(acrossAt, i))
              .with(up, cell(upAt, j))
              .with(depth, cell(depthAt, fromFarEnd ? count - 1 - k : k));
      wood.set(k, removed.stream().noneMatch(box -> box.contains(cell)));
    }
    return wood;
  }

  private BitSet at(int i, int j) {
    boolean outside = i < 0 || j < 0 || i >= columns.size() || j >= columns.getFirst().size();
    return outside ? new BitSet() : columns.get(i).get(j);
  }

  private static Optional<Role> between(BitSet one, BitSet other) {
    if (one.equals(other)) {
      return Optional.empty();
    }
    boolean seen = one.nextSetBit(0) != other.nextSetBit(0);
    return Optional.of(seen ? Role.VISIBLE : Role.HIDDEN);
  }

  List<Edge> edges() {
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < acrossAt.size(); i++) {
      Runs runs = new Runs(up, acrossAt.get(i), edges);
      for (int j = 0; j + 1 < upAt.size(); j++) {
        runs.next(between(at(i - 1, j), at(i, j)), cell(upAt, j));
      }
      runs.end();
    }
    for (int j = 0; j < upAt.size(); j++) {
      Runs runs = new Runs(across, upAt.get(j), edges);
      for (int i = 0; i + 1 < acrossAt.size(); i++) {
        runs.next(between(at(i, j - 1), at(i, j)), cell(acrossAt, i));
      }
      runs.end();
    }
    return edges;
  }

  /** The whole as one patch, then what lies deeper and what is open on top of it. */
  List<Patch> patches() {
    List<Patch> patches = new ArrayList<>();
    patches.add(new Patch(Tone.FRONT, body.on(across), body.on(up)));
    for (int i = 0; i < columns.size(); i++) {
      for (int j = 0; j < columns.getFirst().size(); j++) {
        int nearest = at(i, j).nextSetBit(0);
        if (nearest != 0) {
          Tone tone = nearest < 0 ? Tone.WHITE : Tone.SIDE;
          patches.add(new Patch(tone, cell(acrossAt, i), cell(upAt, j)));
        }
      }
    }
    return patches;
  }

  /** Joins edges of one role that follow each other on one line. */
  private static final class Runs {
    private final Axis along;
    private final Length at;
    private final List<Edge> edges;
    private Optional<Edge> open = Optional.empty();

    Runs(Axis along, Length at, List<Edge> edges) {
      this.along = along;
      this.at = at;
      this.edges = edges;
    }

    void next(Optional<Role> role, Range range) {
      boolean goesOn = role.isPresent() && role.equals(open.map(Edge::role));
      if (goesOn) {
        Range longer = new Range(open.get().range().from(), range.to());
        open = Optional.of(new Edge(role.get(), along, longer, at));
      } else {
        end();
        open = role.map(each -> new Edge(each, along, range, at));
      }
    }

    void end() {
      open.ifPresent(edges::add);
      open = Optional.empty();
    }
  }
}
