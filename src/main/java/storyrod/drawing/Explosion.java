package storyrod.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.build.BuildPlan;
import storyrod.drawing.Contacts.Out;
import storyrod.drawing.Contacts.Path;
import storyrod.drawing.Moves.Group;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * How far each part stands from its place in an exploded view.
 *
 * <ol>
 *   <li>Sub-assemblies are opened first, each for itself, inner ones before those around them; then
 *       they and the loose parts are units.
 *   <li>Units are taken in the order in which they are fitted. The first stays; each later group
 *       moves out against the direction in which it went in, starting from the place of what it is
 *       joined to, if all of that has moved alike, or of the one unit that all of that belongs to.
 *   <li>It passes all that left before it on the same way, and goes on until it is nearly clear, on
 *       the paper, of everything that stands already; if it never is, it stops where it overlaps
 *       least.
 * </ol>
 */
final class Explosion {
  private static final double LEAST_SHARE = 0.07;
  private static final double MOST_SHARE = 0.9;

  private final Piece piece;
  private final Moves moves;
  private final Contacts contacts;
  private final Clearance clearance;
  private final double diagonal;
  private final Map<String, Vector3D> offsets = new LinkedHashMap<>();

  /** How far each part has been moved together with its unit, of those opened together. */
  private final Map<String, Vector3D> shifts = new LinkedHashMap<>();

  private final List<Path> paths = new ArrayList<>();

  /** The groups that have been moved so far, of those that are opened together. */
  private final List<Group> gone = new ArrayList<>();

  private Explosion(Piece piece, BuildPlan plan, View view, List<Part> parts) {
    this(
        piece,
        new Moves(piece, plan),
        new Clearance(piece.parts(), view),
        Extent.diagonalMm(Extent.around(parts)));
  }

  private Explosion(Piece piece, Moves moves, Clearance clearance, double diagonal) {
    this.piece = piece;
    this.moves = moves;
    this.contacts = new Contacts(piece);
    this.clearance = clearance;
    this.diagonal = diagonal;
    piece.parts().forEach(part -> offsets.put(part.name(), Vector3D.ZERO));
  }

  static Explosion of(Piece piece, BuildPlan plan, View view) {
    Explosion explosion = new Explosion(piece, plan, view, piece.parts());
    explosion.moves.levels().forEach(explosion::open);
    return explosion;
  }

  /** Only one level is opened, that of a sub-assembly or of the piece; its units stay closed. */
  static Explosion ofLevel(Piece piece, BuildPlan plan, View view, String level) {
    List<Group> groups = new Moves(piece, plan).level(level);
    List<String> parts = groups.stream().flatMap(group -> group.parts().stream()).toList();
    Explosion explosion =
        new Explosion(piece, plan, view, parts.stream().map(piece::part).toList());
    explosion.open(groups);
    return explosion;
  }

  /** Each part's offset in mm, in the order of the piece. */
  Map<String, Vector3D> offsets() {
    return offsets;
  }

  /** The ways back to their seats. */
  List<Path> paths() {
    return paths;
  }

  /** The same, everything that many times as far from its place. */
  Explosion stretched(double by) {
    Explosion stretched = new Explosion(piece, moves, clearance, diagonal);
    offsets.forEach((part, offset) -> stretched.offsets.put(part, offset.multiply(by)));
    paths.forEach(each -> stretched.paths.add(stretched(each, by)));
    return stretched;
  }

  private Path stretched(Path path, double by) {
    Vector3D from = path.from().add(offsets.get(path.part()).multiply(by - 1));
    return new Path(path.part(), from, from.add(path.to().subtract(path.from()).multiply(by)));
  }

  private void open(List<Group> groups) {
    List<String> placed = new ArrayList<>();
    gone.clear();
    piece.parts().forEach(part -> shifts.put(part.name(), Vector3D.ZERO));
    for (Group group : groups) {
      if (!placed.isEmpty()) {
        moveOut(group, placed);
      }
      placed.addAll(group.parts());
      gone.add(group);
    }
  }

  private void moveOut(Group group, List<String> placed) {
    shift(group, commonOffset(group, placed));
    List<List<String>> units = group.units().stream().map(Moves.Unit::parts).toList();
    Map<String, Vector3D> ways = contacts.waysOut(units, placed, group.out());
    double from = beyond(group) + LEAST_SHARE * diagonal;
    Clearance.Moving moving = new Clearance.Moving(ways, placed);
    double distance = clearance.distance(moving, offsets, from, from + MOST_SHARE * diagonal);
    ways.forEach((part, way) -> move(part, way.multiply(distance)));
    for (List<String> unit : units) {
      Vector3D shift = ways.get(unit.getFirst()).multiply(distance);
      paths.addAll(contacts.paths(new Out(unit, group.out(), shift), placed, offsets));
    }
  }

  private void shift(Group group, Vector3D by) {
    group.parts().forEach(part -> move(part, by));
  }

  private void move(String part, Vector3D by) {
    offsets.merge(part, by, Vector3D::add);
    shifts.merge(part, by, Vector3D::add);
  }

  /** The offset of all that the group is joined to, if it is one and the same. */
  private Vector3D commonOffset(Group group, List<String> placed) {
    List<String> neighbours = contacts.neighbours(group.parts(), placed);
    return common(neighbours, offsets).or(() -> common(neighbours, shifts)).orElse(Vector3D.ZERO);
  }

  private static Optional<Vector3D> common(List<String> parts, Map<String, Vector3D> by) {
    List<Vector3D> theirs = parts.stream().map(by::get).distinct().toList();
    return theirs.size() == 1 ? Optional.of(theirs.getFirst()) : Optional.empty();
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

  /** How far a group reaches in a direction as it stands now, from the origin of the frame. */
  private double reach(Group group, Face to) {
    return group.parts().stream()
        .map(part -> Extent.side(piece.part(part).bounds(), to).add(offsets.get(part)))
        .mapToDouble(side -> side.dot(Extent.direction(to)))
        .max()
        .orElse(0);
  }
}
