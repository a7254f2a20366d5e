package storyrod.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.build.BuildPlan;
import storyrod.drawing.Moves.Group;
import storyrod.drawing.Moves.Unit;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * How far each part stands from its place in an exploded view.
 *
 * <ol>
 *   <li>Sub-assemblies are opened first, each for itself; then they and the loose parts are units.
 *   <li>Units are taken in the order in which they are fitted. The first stays; each later group
 *       moves out against the direction in which it went in, starting from the place of what it is
 *       joined to, if all of that has moved alike.
 *   <li>It moves on until it is nearly clear, on the paper, of everything that stands already; if
 *       it never is, it stops where it overlaps least.
 * </ol>
 */
final class Explosion {
  private static final double ALLOWED_OVERLAP = 0.12;
  private static final double ALLOWED_OF_A_PART = 0.35;
  private static final double WORTH_A_STEP = 0.01;
  private static final int STEPS = 40;
  private static final double LEAST_SHARE = 0.07;
  private static final double MOST_SHARE = 0.9;

  private final Piece piece;
  private final View view;
  private final Moves moves;
  private final double reach;
  private final Map<String, Outline> outlines = new LinkedHashMap<>();
  private final Map<String, Vector3D> offsets = new LinkedHashMap<>();
  private final List<Path> paths = new ArrayList<>();

  /** The groups that have been moved so far, of those that are opened together. */
  private final List<Group> gone = new ArrayList<>();

  /** A way back to the seat, from a point where it stands now. */
  record Path(String part, Vector3D from, Vector3D to) {}

  private Explosion(Piece piece, BuildPlan plan, View view) {
    this.piece = piece;
    this.view = view;
    this.moves = new Moves(piece, plan);
    for (Part part : piece.parts()) {
      outlines.put(part.name(), Outline.of(part.solid(), view));
      offsets.put(part.name(), Vector3D.ZERO);
    }
    this.reach = Extent.diagonalMm(Extent.around(piece.parts()));
  }

  static Explosion of(Piece piece, BuildPlan plan, View view) {
    Explosion explosion = new Explosion(piece, plan, view);
    explosion.moves.assemblies().forEach(explosion::open);
    explosion.open(explosion.moves.topLevel());
    return explosion;
  }

  /** Each part's offset in mm, in the order of the piece. */
  Map<String, Vector3D> offsets() {
    return offsets;
  }

  List<Path> paths() {
    return paths;
  }

  private void open(List<Group> groups) {
    List<String> placed = new ArrayList<>();
    gone.clear();
    for (Group group : groups) {
      if (!placed.isEmpty()) {
        moveOut(group, placed);
      }
      placed.addAll(group.parts());
      gone.add(group);
    }
  }

  private void moveOut(Group group, List<String> placed) {
    Vector3D start = commonOffset(group, placed);
    Vector3D out = Extent.direction(group.out());
    shift(group, start);
    double distance = clearDistance(group, placed);
    shift(group, out.multiply(distance));
    for (Unit unit : group.units()) {
      paths.addAll(paths(unit, placed, group.out(), distance));
    }
  }

  private void shift(Group group, Vector3D by) {
    group.parts().forEach(part -> offsets.merge(part, by, Vector3D::add));
  }

  /** The offset of all that the group is joined to, if it is one and the same. */
  private Vector3D commonOffset(Group group, List<String> placed) {
    List<Vector3D> theirs =
        moves.neighbours(group.parts(), placed).stream().map(offsets::get).distinct().toList();
    return theirs.size() == 1 ? theirs.getFirst() : Vector3D.ZERO;
  }

  private double clearDistance(Group group, List<String> placed) {
    Vector3D out = Extent.direction(group.out());
    double start = beyond(group) + LEAST_SHARE * reach;
    double best = start;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= STEPS; i++) {
      double distance = start + i * reach * MOST_SHARE / STEPS;
      double excess = excess(group, placed, out.multiply(distance));
      if (excess <= 0) {
        return distance;
      }
      if (excess < least - WORTH_A_STEP) {
        least = excess;
        best = distance;
      }
    }
    return best;
  }

  /** How far the group must go to be past all that left before it on the same way. */
  private double beyond(Group group) {
    Box box = box(group);
    double farthest = 0;
    for (Group earlier : gone) {
      if (earlier.out() == group.out() && Extent.inLine(box(earlier), box, group.out().axis())) {
        farthest =
            Math.max(farthest, reach(earlier, group.out()) + reach(group, group.out().opposite()));
      }
    }
    return farthest;
  }

  private Box box(Group group) {
    return Extent.around(group.parts().stream().map(piece::part).toList());
  }

  /** How far a group reaches in a direction as it stands now, from the middle of the frame. */
  private double reach(Group group, Face face) {
    return group.parts().stream()
        .mapToDouble(part -> Extent.side(piece.part(part).box(), face).add(offsets.get(part)).dot(Extent.direction(face)))
        .max()
        .orElse(0);
  }

  /** By how much more than allowed the worst part, of the group or not, is overlapped. */
  private double excess(Group group, List<String> placed, Vector3D by) {
    Map<String, Double> covered = new LinkedHashMap<>();
    double total = 0;
    for (String part : group.parts()) {
      Outline moved = outlines.get(part).moved(offsets.get(part).add(by), view);
      for (String other : placed) {
        double shared = moved.shared(outlines.get(other).moved(offsets.get(other), view));
        total += shared;
        covered.merge(part, shared, Double::sum);
        covered.merge(other, shared, Double::sum);
      }
    }
    double area = group.parts().stream().mapToDouble(part -> outlines.get(part).area()).sum();
    double worst = 0;
    for (Map.Entry<String, Double> each : covered.entrySet()) {
      worst = Math.max(worst, each.getValue() / outlines.get(each.getKey()).area());
    }
    return Math.max(0, total / area - ALLOWED_OVERLAP) + Math.max(0, worst - ALLOWED_OF_A_PART);
  }

  /** From up to two places where the unit meets what stands, else from the middle of its front. */
  private List<Path> paths(Unit unit, List<String> placed, Face out, double distance) {
    Vector3D back = Extent.direction(out).multiply(-distance);
    List<Path> found = new ArrayList<>();
    for (Moves.Contact contact : moves.contacts(unit.parts(), placed)) {
      Vector3D from = contact.middle().add(offsets.get(contact.part()));
      found.add(new Path(contact.part(), from, from.add(back)));
    }
    if (found.isEmpty()) {
      String first = unit.parts().getFirst();
      Vector3D from = Extent.side(piece.part(first).box(), out.opposite()).add(offsets.get(first));
      return List.of(new Path(first, from, from.add(back)));
    }
    return farthestTwo(found);
  }

  private static List<Path> farthestTwo(List<Path> paths) {
    Path first = paths.getFirst();
    Path other = first;
    for (Path path : paths) {
      if (path.from().distance(first.from()) > other.from().distance(first.from()) + 1e-6) {
        other = path;
      }
    }
    return other == first ? List.of(first) : List.of(first, other);
  }
}
