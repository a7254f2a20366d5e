package storyrod.drawing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.drawing.Drawing.At;
import storyrod.geometry.Axis;
import storyrod.geometry.Cylinder;
import storyrod.geometry.Face;
import storyrod.geometry.FlatFace;
import storyrod.piece.Comb;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.InPlace;
import storyrod.piece.PocketHoles;
import storyrod.piece.Slanted;
import storyrod.piece.Slots;
import storyrod.piece.SplineSlot;

/**
 * How a part is looked at as it lies on the bench to be worked: its length runs across the paper,
 * seen a little from one end and from above, with the face up from which the tool enters.
 *
 * @param up the face that lies up, in the frame of the flat part
 */
record BenchView(View view, Face up) {
  /** How far the part is turned about its upright, and how far it is looked down on, in radians. */
  private static final double TURNED = Math.toRadians(20);

  private static final double DOWN = Math.toRadians(32);

  /** The same where what is taken off lies at the bottom of a groove. */
  private static final double STEEPLY_DOWN = Math.toRadians(65);

  /** Just above a surface. */
  private static final double ABOVE_MM = 0.01;

  /** The one of four that shows most of what is taken off. */
  static BenchView of(Taken taken) {
    return of(taken, Optional.empty());
  }

  /** The same where the show face is known: on that one tails are set out. */
  static BenchView of(Taken taken, Optional<Face> show) {
    return of(taken, up(taken.cuts().getFirst(), show), DOWN);
  }

  /** The same, looked down on more steeply. */
  static BenchView steep(Taken taken, Optional<Face> show) {
    return of(taken, up(taken.cuts().getFirst(), show), STEEPLY_DOWN);
  }

  private static BenchView of(Taken taken, Face up, double down) {
    return Stream.of(1, -1)
        .flatMap(way -> Stream.of(1, -1).map(side -> view(up, way, side, down)))
        .max(Comparator.comparingLong(view -> Math.round(exposed(taken, view))))
        .map(view -> new BenchView(view, up))
        .orElseThrow();
  }

  /** At its ends a part is worked as it lies flat. */
  private static Face up(Cut cut, Optional<Face> show) {
    Face flat = cut.from() == Face.BACK ? Face.BACK : Face.FRONT;
    return switch (cut) {
      case Cut.Trench trench -> sideways(cut, flat);
      case Cut.Holes holes -> sideways(cut, flat);
      case PocketHoles pockets -> sideways(cut, flat);
      case Slots slots -> sideways(cut, flat);
      case InPlace inPlace -> sideways(cut, flat);
      case Slanted.Housing housing -> sideways(cut, flat);
      case Slanted.Slope slope -> flat;
      case Cut.Tenon tenon -> flat;
      case Cut.Shaped shaped -> flat;
      case Cut.Roundover roundover -> flat;
      case Comb comb -> flat;
      case Dovetails tails when tails.isTails() ->
          show.filter(face -> face.axis() == Axis.Y).orElse(flat);
      case Dovetails pins -> flat;
      case SplineSlot slot -> flat;
    };
  }

  private static Face sideways(Cut cut, Face flat) {
    return cut.from().axis() == Axis.X ? flat : cut.from();
  }

  private static View view(Face up, int way, int side, double down) {
    Vector3D along = Vector3D.of(way, 0, 0);
    Vector3D back = up.normal().cross(along);
    double turned = side * TURNED;
    Vector3D right =
        along.multiply(StrictMath.cos(turned)).add(back.multiply(StrictMath.sin(turned)));
    Vector3D level =
        along.multiply(StrictMath.sin(turned)).subtract(back.multiply(StrictMath.cos(turned)));
    Vector3D toViewer =
        level.multiply(StrictMath.cos(down)).add(up.normal().multiply(StrictMath.sin(down)));
    return new View(right, toViewer.cross(right), toViewer);
  }

  /** The area in mm², in the view, of the part's own surface that is taken off. */
  static double exposed(Taken taken, View view) {
    double faces =
        taken.waste().faces().stream()
            .filter(face -> !taken.left().holds(above(face)))
            .mapToDouble(face -> area(face, view))
            .sum();
    double mouths =
        taken.bores().stream()
            .filter(bore -> bore.direction().dot(view.toViewer()) < 0)
            .mapToDouble(bore -> mouth(bore, view))
            .sum();
    return faces + mouths;
  }

  private static Vector3D above(FlatFace face) {
    List<Vector3D> ring = face.outer();
    Vector3D sum = ring.stream().reduce(Vector3D.ZERO, Vector3D::add);
    return sum.multiply(1.0 / ring.size()).add(face.normal().multiply(ABOVE_MM));
  }

  private static double mouth(Cylinder bore, View view) {
    return Math.PI * bore.radiusMm() * bore.radiusMm() * -bore.direction().dot(view.toViewer());
  }

  private static double area(FlatFace face, View view) {
    if (!ScreenFace.looksAt(view, face)) {
      return 0;
    }
    double twice = 0;
    At before = view.project(face.outer().getLast());
    for (Vector3D corner : face.outer()) {
      At at = view.project(corner);
      twice += before.x() * at.y() - at.x() * before.y();
      before = at;
    }
    return Math.abs(twice) / 2;
  }
}
