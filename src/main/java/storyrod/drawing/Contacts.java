package storyrod.drawing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.geometry.Face;
import storyrod.piece.Joint;
import storyrod.piece.Piece;

/** Where parts of a piece meet, by its joints. */
final class Contacts {
  private final Piece piece;

  Contacts(Piece piece) {
    this.piece = piece;
  }

  /** A way back to the seat, from a point of a part where it is drawn. */
  record Path(String part, Vector3D from, Vector3D to) {}

  /** The joints of some parts with parts that are not among them. */
  Stream<Joint> outward(Collection<String> parts) {
    return piece.joints().stream()
        .filter(joint -> parts.contains(joint.first()) != parts.contains(joint.second()));
  }

  private Stream<Joint> between(Collection<String> parts, Collection<String> others) {
    return outward(parts)
        .filter(joint -> others.contains(joint.first()) || others.contains(joint.second()));
  }

  /** The parts among others that some parts are joined to. */
  List<String> neighbours(Collection<String> parts, Collection<String> others) {
    return between(parts, others)
        .map(joint -> parts.contains(joint.first()) ? joint.second() : joint.first())
        .distinct()
        .toList();
  }

  /**
   * The ways back to their seats of parts that have been moved out together: from the two places
   * farthest apart where they meet others, else from the middle of the side they lead with.
   *
   * @param offsets where each part is drawn, away from its place
   */
  List<Path> paths(Out out, Collection<String> others, Map<String, Vector3D> offsets) {
    List<Path> paths =
        between(out.parts(), others)
            .map(
                joint -> {
                  boolean first = out.parts().contains(joint.first());
                  String part = first ? joint.first() : joint.second();
                  return path(part, Extent.middle(joint.contact()), out, offsets);
                })
            .toList();
    if (paths.isEmpty()) {
      String part = out.parts().getFirst();
      Vector3D side = Extent.side(piece.part(part).bounds(), out.to().opposite());
      return List.of(path(part, side, out, offsets));
    }
    return farthestTwo(paths);
  }

  /** Parts that were moved out together in a direction by a distance in mm. */
  record Out(List<String> parts, Face to, double distanceMm) {
    Vector3D shift() {
      return Extent.direction(to).multiply(distanceMm);
    }
  }

  private static Path path(String part, Vector3D seat, Out out, Map<String, Vector3D> offsets) {
    Vector3D from = seat.add(offsets.get(part));
    return new Path(part, from, from.subtract(out.shift()));
  }

  private static List<Path> farthestTwo(List<Path> paths) {
    List<Path> best = new ArrayList<>(List.of(paths.getFirst()));
    double most = 1;
    for (int i = 0; i < paths.size(); i++) {
      for (Path other : paths.subList(i + 1, paths.size())) {
        double apart = paths.get(i).from().distance(other.from());
        if (apart > most + 1e-6) {
          most = apart;
          best = List.of(paths.get(i), other);
        }
      }
    }
    return best;
  }
}
