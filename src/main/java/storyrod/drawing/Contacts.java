package storyrod.drawing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.build.Passing;
import storyrod.geometry.Face;
import storyrod.piece.Joint;
import storyrod.piece.Part;
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

  /**
   * Parts that were moved out together towards a face.
   *
   * @param shift how far, in mm; not square to the face where they leave along a lean
   */
  record Out(List<String> parts, Face to, Vector3D shift) {}

  /**
   * The unit vectors along which units leave what stays towards a face, for each of their parts.
   */
  Map<String, Vector3D> waysOut(Collection<List<String>> units, List<String> staying, Face to) {
    List<Part> others = staying.stream().map(piece::part).toList();
    Map<String, Vector3D> ways = new LinkedHashMap<>();
    for (List<String> unit : units) {
      List<Part> moving = unit.stream().map(piece::part).toList();
      Vector3D way = Passing.direction(moving, others, to);
      unit.forEach(part -> ways.put(part, way));
    }
    return ways;
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
