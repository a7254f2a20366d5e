package storyrod.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Part;

/**
 * Who stands in whose way, exactly: parts are boxes less their trenches and less what is cut from
 * them along paths, and move along the axes.
 *
 * <p>Where parts lean, {@link Passing} looks closer.
 *
 * <p>A part is blocked by another in a direction if, moved that way without end, it would run
 * through the other's wood. Round holes make no way for anything and are left out.
 */
public final class Reach {
  private static final double ONE_WAY = 1 - 1e-9;
  private static final List<Face> FACES = List.of(Face.values());
  private static final int ALL = (1 << FACES.size()) - 1;
  private final Map<String, Integer> index = new LinkedHashMap<>();
  private final List<List<Box>> wood;
  private final List<Set<Pegged.Mouth>> mouths;
  private final int[][] blocked;
  private final Driving driving;

  /** Where parts lean: the ways that are free. */
  private final Map<Pair, Vector3D> ways = new LinkedHashMap<>();

  public Reach(List<Part> parts) {
    parts.forEach(part -> index.put(part.name(), index.size()));
    driving = new Driving(parts);
    wood = parts.stream().map(Reach::woodOf).toList();
    mouths = parts.stream().map(Pegged::mouths).toList();
    blocked = new int[parts.size()][parts.size()];
    for (int mover = 0; mover < parts.size(); mover++) {
      for (int other = 0; other < parts.size(); other++) {
        blocked[mover][other] = mover == other ? 0 : blockedFaces(parts, mover, other);
      }
    }
  }

  /**
   * The boxes that a part's box leaves once its trenches and tenons are cut; one box where it
   * leans.
   */
  static List<Box> woodOf(Part part) {
    return part.pose().isTurned() ? List.of(part.bounds()) : ownWood(part);
  }

  /** The same in the part's own frame, before it is turned. */
  static List<Box> ownWood(Part part) {
    List<Box> left = List.of(part.box());
    for (Cut cut : part.cuts()) {
      if (cut instanceof Cut.Shaped shaped) {
        for (Box cleared : shaped.cleared(part.box())) {
          left = minus(left, cleared);
        }
      }
      for (Box removed : cut.boxes()) {
        left = minus(left, removed);
      }
    }
    return left;
  }

  /** Whether one unit can move away from another in a direction, without end. */
  public boolean isFree(Unit mover, Unit other, Face leave) {
    int torn = ways.isEmpty() ? 0 : torn(mover, List.of(other));
    return ((blockedBy(mover, other) | torn) & bit(leave)) == 0;
  }

  /** The directions in which a unit can move away from all others, in the order of the faces. */
  public List<Face> ways(Unit mover, List<Unit> others) {
    int closed = 0;
    for (int i = 0; i < others.size() && closed != ALL; i++) {
      closed |= blockedBy(mover, others.get(i));
    }
    return ways(mover, others, closed);
  }

  /** The same, where it is known by which faces the others block it: a bit for each. */
  List<Face> ways(Unit mover, List<Unit> others, int blocked) {
    int closed = ways.isEmpty() ? blocked : blocked | torn(mover, others);
    return FACES.stream().filter(face -> (closed & bit(face)) == 0).toList();
  }

  /**
   * The ways on which a unit leaves all others in two straight moves; none where dowels or the like
   * hold it. What leans is taken as large as its bounding box.
   */
  List<TwoMoves.Way> waysInTwo(Unit mover, List<Unit> others) {
    return others.stream().anyMatch(other -> isPegged(mover, other))
        ? List.of()
        : twoMoves(mover, others).ways();
  }

  /** Whether a unit that has its place stands in the way on which another one comes in. */
  public boolean blocks(Unit standing, Placing coming) {
    Face out = coming.enters().orElseThrow().opposite();
    return coming
        .firstMove()
        .map(first -> new TwoMoves.Way(out, first.beside(), first.enters().opposite()))
        .map(way -> !isFree(coming.unit(), standing, way))
        .orElseGet(() -> !isFree(coming.unit(), standing, out));
  }

  private boolean isFree(Unit mover, Unit other, TwoMoves.Way way) {
    return !isPegged(mover, other) && twoMoves(mover, List.of(other)).isFree(way);
  }

  private TwoMoves twoMoves(Unit mover, List<Unit> others) {
    return new TwoMoves(
        woodOf(mover), others.stream().flatMap(other -> woodOf(other).stream()).toList());
  }

  private boolean isPegged(Unit one, Unit other) {
    return one.parts().stream()
        .map(part -> mouths.get(indexOf(part.name())))
        .anyMatch(
            own ->
                other.parts().stream()
                    .map(part -> mouths.get(indexOf(part.name())))
                    .anyMatch(by -> !Pegged.blocked(own, by).isEmpty()));
  }

  Driving driving() {
    return driving;
  }

  /** The wood of a unit that a space runs into. */
  boolean isIn(Box space, Unit unit) {
    return unit.parts().stream()
        .flatMap(part -> wood.get(indexOf(part.name())).stream())
        .anyMatch(space::overlaps);
  }

  /** The boxes of a unit's wood. */
  List<Box> woodOf(Unit unit) {
    return unit.parts().stream().flatMap(part -> wood.get(indexOf(part.name())).stream()).toList();
  }

  /** The faces towards which one unit blocks another, a bit for each by its place. */
  int blockedBy(Unit mover, Unit other) {
    int faces = 0;
    for (Part part : mover.parts()) {
      for (Part by : other.parts()) {
        faces |= blocked[indexOf(part.name())][indexOf(by.name())];
      }
    }
    return faces;
  }

  private int indexOf(String part) {
    return Optional.ofNullable(index.get(part))
        .orElseThrow(() -> new IllegalStateException("bug: no part " + part));
  }

  private int blockedFaces(List<Part> parts, int mover, int other) {
    if (!Passing.isNeeded(parts.get(mover), parts.get(other))) {
      return blockedFaces(wood.get(mover), wood.get(other))
          | Pegged.blocked(mouths.get(mover), mouths.get(other)).stream()
              .mapToInt(Reach::bit)
              .sum();
    }
    int faces = 0;
    for (Face face : FACES) {
      Optional<Vector3D> way = Passing.way(parts.get(mover), parts.get(other), face);
      faces |= way.isEmpty() ? bit(face) : 0;
      way.ifPresent(each -> ways.put(new Pair(mover, other, face), each));
    }
    return faces;
  }

  /** Two parts, by number, and the face towards which the first one leaves the second. */
  private record Pair(int mover, int other, Face leave) {}

  /** The faces towards which a unit cannot move as one, for its parts lean different ways. */
  private int torn(Unit mover, List<Unit> others) {
    int faces = 0;
    for (Face face : FACES) {
      List<Vector3D> needed =
          mover.parts().stream().flatMap(part -> needed(part, others, face)).toList();
      boolean atOdds = needed.stream().anyMatch(way -> way.dot(needed.getFirst()) < ONE_WAY);
      faces |= atOdds ? bit(face) : 0;
    }
    return faces;
  }

  private Stream<Vector3D> needed(Part part, List<Unit> others, Face face) {
    return others.stream()
        .flatMap(unit -> unit.parts().stream())
        .map(by -> new Pair(indexOf(part.name()), indexOf(by.name()), face))
        .flatMap(pair -> Optional.ofNullable(ways.get(pair)).stream());
  }

  private static int blockedFaces(List<Box> mover, List<Box> other) {
    int faces = 0;
    for (Box box : mover) {
      for (Box by : other) {
        faces |= blockedFaces(box, by);
      }
    }
    return faces;
  }

  private static int blockedFaces(Box box, Box by) {
    boolean x = box.x().overlaps(by.x());
    boolean y = box.y().overlaps(by.y());
    boolean z = box.z().overlaps(by.z());
    if (!(x && y || y && z || x && z)) {
      return 0;
    }
    int faces = 0;
    for (Face face : FACES) {
      faces |= meets(box, by, face) ? bit(face) : 0;
    }
    return faces;
  }

  /** Whether a box that moves towards a face without end runs into another. */
  static boolean meets(Box box, Box other, Face leave) {
    for (Axis axis : Axis.values()) {
      if (axis != leave.axis() && !box.on(axis).overlaps(other.on(axis))) {
        return false;
      }
    }
    Length tail = box.at(leave.opposite());
    Length far = other.at(leave);
    return leave.sign() > 0 ? far.isLongerThan(tail) : far.isShorterThan(tail);
  }

  private static List<Box> minus(List<Box> wood, Box cut) {
    return wood.stream().flatMap(box -> minus(box, cut).stream()).toList();
  }

  private static List<Box> minus(Box box, Box cut) {
    if (!box.overlaps(cut)) {
      return List.of(box);
    }
    List<Box> left = new ArrayList<>();
    Box rest = box;
    for (Axis axis : Axis.values()) {
      Range whole = rest.on(axis);
      Range taken = whole.shared(cut.on(axis));
      if (whole.from().isShorterThan(taken.from())) {
        left.add(rest.with(axis, new Range(whole.from(), taken.from())));
      }
      if (whole.to().isLongerThan(taken.to())) {
        left.add(rest.with(axis, new Range(taken.to(), whole.to())));
      }
      rest = rest.with(axis, taken);
    }
    return left;
  }

  private static int bit(Face face) {
    return 1 << face.ordinal();
  }
}
