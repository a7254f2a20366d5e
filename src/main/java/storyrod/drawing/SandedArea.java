package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Geometry;
import storyrod.geometry.Face;
import storyrod.geometry.FlatFace;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * What is sanded of a part's front or back: the face with its tapers, without what is cut into it
 * and without the seats of parts that are glued on, in mm on the axes of the flat part.
 */
final class SandedArea {
  /** Faces that miss each other by less lie on each other, in mm. */
  private static final double TOUCHING_MM = 0.05;

  private static final double OPPOSITE = -0.9999;

  /** A face that is turned farther from the eye belongs to a neighbouring face of the part. */
  private static final double SAME_FACE = 0.7;

  private final Piece piece;
  private final FlatPart flat;
  private final Vector3D out;

  private SandedArea(Piece piece, FlatPart flat, Face face) {
    this.piece = piece;
    this.flat = flat;
    this.out = flat.part().pose().normal(flat.original(face));
  }

  static Geometry of(Piece piece, FlatPart flat, Face face) {
    return of(piece, flat, face, new SolidView(flat, face));
  }

  /**
   * @param view what is seen of the flat part from that face
   */
  static Geometry of(Piece piece, FlatPart flat, Face face, SolidView view) {
    return new SandedArea(piece, flat, face).in(view);
  }

  private Geometry in(SolidView view) {
    return SolidView.without(view.surface(), seats(), this::onPaper);
  }

  /** The faces of glued parts that lie on this one. */
  private List<FlatFace> seats() {
    Part part = flat.part();
    List<FlatFace> own =
        part.placed().faces().stream().filter(each -> each.normal().dot(out) > SAME_FACE).toList();
    List<FlatFace> seats = new ArrayList<>();
    piece.joints().stream()
        .filter(Joint::glued)
        .filter(joint -> joint.first().equals(part.name()) || joint.second().equals(part.name()))
        .map(joint -> joint.first().equals(part.name()) ? joint.second() : joint.first())
        .distinct()
        .flatMap(other -> piece.part(other).placed().faces().stream())
        .filter(other -> own.stream().anyMatch(each -> touch(each, other)))
        .forEach(seats::add);
    return seats;
  }

  private static boolean touch(FlatFace one, FlatFace other) {
    return one.normal().dot(other.normal()) < OPPOSITE
        && Math.abs(one.offsetMm() + other.offsetMm()) < TOUCHING_MM;
  }

  private Drawing.At onPaper(Vector3D placed) {
    Vector3D made = flat.part().pose().inverse().point(placed);
    Function<Face, Double> from =
        side ->
            made.dot(side.normal()) - flat.part().box().at(side.opposite()).toMm() * side.sign();
    return new Drawing.At(from.apply(flat.right()), from.apply(flat.up()));
  }
}
