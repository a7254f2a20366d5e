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
    this.reach = diagonal(piece.parts());
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
    for (Group group : groups) {
      if (!placed.isEmpty()) {
        moveOut(group, placed);
      }
      placed.addAll(group.parts());
    }
  }

  private void moveOut(Group group, List<String> placed) {
    Vector3D start = commonOffset(group, placed);
    Vector3D out = direction(group.out());
    shift(group, start);
    double distance = clearDistance(group, placed, out);
    shift(group, out.multiply(distance));
    for (Unit unit : group.units()) {
      paths.addAll(paths(unit, placed, out.multiply(-distance)));
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

  private double clearDistance(Group group, List<String> placed, Vector3D out) {
    double area = group.parts().stream().mapToDouble(part -> outlines.get(part).area()).sum();
    double best = LEAST_SHARE * reach;
    double leastOverlap = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= STEPS; i++) {
      double distance = reach * (LEAST_SHARE + i * (MOST_SHARE - LEAST_SHARE) / STEPS);
      double overlap = overlap(group, placed, out.multiply(distance)) / area;
      if (overlap < leastOverlap - 1e-3) {
        leastOverlap = overlap;
        best = distance;
      }
      if (overlap <= ALLOWED_OVERLAP) {
        return distance;
      }
    }
    return best;
  }

  private double overlap(Group group, List<String> placed, Vector3D by) {
    double overlap = 0;
    for (String part : group.parts()) {
      Outline moved = outlines.get(part).moved(offsets.get(part).add(by), view);
      for (String other : placed) {
        overlap += moved.shared(outlines.get(other).moved(offsets.get(other), view));
      }
    }
    return overlap;
  }

  /** From up to two places where the unit meets what stands, else from the middle of its front. */
  private List<Path> paths(Unit unit, List<String> placed, Vector3D back) {
    List<Path> found = new ArrayList<>();
    for (Moves.Contact contact : moves.contacts(unit.parts(), placed)) {
      Vector3D from = contact.middle().add(offsets.get(contact.part()));
      found.add(new Path(contact.part(), from, from.add(back)));
    }
    if (found.isEmpty()) {
      String first = unit.parts().getFirst();
      Vector3D from = leading(piece.part(first).box(), back).add(offsets.get(first));
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

  /** The middle of the side of a box that leads along a direction. */
  static Vector3D leading(Box box, Vector3D along) {
    Vector3D low = Vector3D.of(box.x().from().toMm(), box.y().from().toMm(), box.z().from().toMm());
    Vector3D high = Vector3D.of(box.x().to().toMm(), box.y().to().toMm(), box.z().to().toMm());
    Vector3D half = high.subtract(low).multiply(0.5);
    Vector3D unit = along.normalize();
    return low.add(half)
        .add(
            Vector3D.of(
                half.getX() * unit.getX(), half.getY() * unit.getY(), half.getZ() * unit.getZ()));
  }

  static Vector3D direction(Face face) {
    return switch (face.axis()) {
      case X -> Vector3D.of(face.sign(), 0, 0);
      case Y -> Vector3D.of(0, face.sign(), 0);
      case Z -> Vector3D.of(0, 0, face.sign());
    };
  }

  /** The diagonal in mm of the box round all parts. */
  static double diagonal(List<Part> parts) {
    double sum = 0;
    for (storyrod.geometry.Axis axis : storyrod.geometry.Axis.values()) {
      double low =
          parts.stream().mapToDouble(p -> p.box().on(axis).from().toMm()).min().orElse(0);
      double high = parts.stream().mapToDouble(p -> p.box().on(axis).to().toMm()).max().orElse(0);
      sum += (high - low) * (high - low);
    }
    return Math.sqrt(sum);
  }
}
