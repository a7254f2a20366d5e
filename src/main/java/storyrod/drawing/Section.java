package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.drawing.Openings.Block;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.FlatFace;
import storyrod.geometry.Range;
import storyrod.geometry.Solid;
import storyrod.measure.Length;
import storyrod.piece.Part;

/**
 * A piece cut through from front to back by an upright plane, seen from the right.
 *
 * @param at where the plane lies on the x axis
 * @param kept the parts of which something is left, in their order
 * @param solids what is left of those that the plane cuts, by their names
 */
record Section(Length at, List<Part> kept, Map<String, Solid> solids) {
  private static final Face SEEN_FROM = Face.RIGHT;
  private static final double ON_PLANE_MM = 1e-3;
  private static final int SLENDER = 3;
  private static final Length CLEAR = Length.mm(2);

  /** Cuts where most parts are cut across, as near to the middle as can be. */
  static Optional<Section> of(List<Part> parts) {
    Length middle = Extent.around(parts).x().middle();
    return candidates(parts).stream()
        .max(
            Comparator.comparingInt((Length at) -> score(parts, at))
                .thenComparing(at -> at.minus(middle).abs(), Comparator.reverseOrder()))
        .filter(at -> score(parts, at) > 1)
        .map(at -> through(parts, at));
  }

  /** Half way between neighbouring ends of parts, and the middle of the piece. */
  private static List<Length> candidates(List<Part> parts) {
    TreeSet<Length> ends = new TreeSet<>();
    for (Part part : parts) {
      ends.add(part.bounds().x().from());
      ends.add(part.bounds().x().to());
    }
    List<Length> candidates = new ArrayList<>();
    Length before = ends.first();
    for (Length end : ends) {
      if (end.minus(before).isLongerThan(CLEAR.times(2))) {
        candidates.add(new Range(before, end).middle());
      }
      before = end;
    }
    return candidates;
  }

  /** How many parts are cut, less those that are cut along their length. */
  private static int score(List<Part> parts, Length at) {
    int score = 0;
    for (Part part : parts) {
      if (cuts(part, at)) {
        score += isAlong(part) ? -2 : 1;
      }
    }
    return score;
  }

  private static boolean cuts(Part part, Length at) {
    Range x = part.bounds().x();
    return x.from().isShorterThan(at) && at.isShorterThan(x.to());
  }

  private static boolean isAlong(Part part) {
    Box box = part.bounds();
    return box.size(Axis.X).times(SLENDER).isShorterThan(box.size(Axis.Y).max(box.size(Axis.Z)));
  }

  /** Parts cut by a plane at some x. */
  static Section through(List<Part> parts, Length at) {
    List<Part> kept = new ArrayList<>();
    Map<String, Solid> solids = new LinkedHashMap<>();
    Vector3D plane = Vector3D.of(at.toMm(), 0, 0);
    for (Part part : parts) {
      if (part.bounds().x().from().isShorterThan(at)) {
        kept.add(part);
        if (cuts(part, at)) {
          solids.put(part.name(), part.placed().trimmed(plane, SEEN_FROM.normal()));
        }
      }
    }
    return new Section(at, kept, solids);
  }

  /** The faces that the plane made, by the names of the parts. */
  Map<String, List<FlatFace>> cutFaces() {
    Map<String, List<FlatFace>> faces = new LinkedHashMap<>();
    solids.forEach(
        (part, solid) -> faces.put(part, solid.faces().stream().filter(this::isCut).toList()));
    return faces;
  }

  private boolean isCut(FlatFace face) {
    return face.normal().dot(SEEN_FROM.normal()) > 1 - 1e-9
        && Math.abs(face.offsetMm() - at.toMm()) < ON_PLANE_MM;
  }

  /** What is left of hardware: what lies before the plane is off, what it cuts is trimmed. */
  List<Fitting> left(List<Fitting> fittings) {
    return fittings.stream().flatMap(each -> left(each).stream()).toList();
  }

  private Optional<Fitting> left(Fitting fitting) {
    Vector3D plane = Vector3D.of(at.toMm() - fitting.offset().getX(), 0, 0);
    Solid solid = fitting.item().solid();
    Range x = solid.bounds().orElseThrow().x();
    if (x.to().toMm() <= plane.getX()) {
      return Optional.of(fitting);
    }
    return x.from().toMm() < plane.getX()
        ? Optional.of(fitting.as(solid.trimmed(plane, SEEN_FROM.normal())))
        : Optional.empty();
  }

  /** The rectangles round the cut faces of some parts, on y and z. */
  List<Block> blocks(List<Part> of) {
    List<Block> blocks = new ArrayList<>();
    Map<String, List<FlatFace>> faces = cutFaces();
    for (Part part : of) {
      faces.getOrDefault(part.name(), List.of()).forEach(face -> blocks.add(block(face)));
    }
    return blocks;
  }

  private static Block block(FlatFace face) {
    return new Block(
        range(face.outer().stream().mapToDouble(Vector3D::getY).toArray()),
        range(face.outer().stream().mapToDouble(Vector3D::getZ).toArray()));
  }

  private static Range range(double[] at) {
    return new Range(
        Length.nearest(java.util.Arrays.stream(at).min().orElseThrow()),
        Length.nearest(java.util.Arrays.stream(at).max().orElseThrow()));
  }
}
