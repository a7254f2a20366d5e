package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.index.strtree.STRtree;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Seen.Region;

/** Cuts from the picture of a face what other faces hide of it. */
final class Regions {
  private static final double THIN_MM = 0.05;

  private final View view;
  private final STRtree index;

  Regions(View view, STRtree index) {
    this.view = view;
    this.index = index;
  }

  List<Region> of(List<ScreenFace> faces) {
    return faces.stream().flatMap(face -> seenOf(face).stream()).toList();
  }

  private List<Region> seenOf(ScreenFace face) {
    List<ExactArea> before = new ArrayList<>();
    for (Object each : index.query(face.envelope())) {
      ScreenFace other = (ScreenFace) each;
      if (other != face && !apart(other, face) && !apart(face, other)) {
        if (hides(other, face)) {
          return List.of();
        }
        addInFront(other, face, before);
      }
    }
    return regions(face.normal(), less(ExactArea.of(face.rings()), before));
  }

  /** A picture less the covers before it, the largest first: most hidden faces are soon gone. */
  private static ExactArea less(ExactArea picture, List<ExactArea> covers) {
    ExactArea left = picture;
    covers.sort(Comparator.comparingDouble(ExactArea::areaMm2).reversed());
    for (ExactArea cover : covers) {
      if (left.isEmpty()) {
        return left;
      }
      left = left.less(cover);
    }
    return left;
  }

  /** Whether a convex picture without openings lies over all of another and nearer everywhere. */
  private boolean hides(ScreenFace one, ScreenFace two) {
    return one.envelope().contains(two.envelope())
        && one.isAround(two.rings().getFirst())
        && range(depthDifference(one, two), two).getMin() > ScreenFace.ON_FACE_MM;
  }

  /** The least and the most that a linear function of the view is at a face's corners. */
  private static DoubleSummaryStatistics range(double[] linear, ScreenFace face) {
    return face.rings().getFirst().stream()
        .mapToDouble(at -> linear[0] * at.x() + linear[1] * at.y() + linear[2])
        .summaryStatistics();
  }

  /** Whether a side of one picture's outer ring is a line that parts the two pictures. */
  private static boolean apart(ScreenFace one, ScreenFace two) {
    List<At> ring = one.rings().getFirst();
    At before = ring.getLast();
    for (At at : ring) {
      if (ScreenFace.isOneSided(ring, before, at, 1)
              && ScreenFace.isOneSided(two.rings().getFirst(), before, at, -1)
          || ScreenFace.isOneSided(ring, before, at, -1)
              && ScreenFace.isOneSided(two.rings().getFirst(), before, at, 1)) {
        return true;
      }
      before = at;
    }
    return false;
  }

  /** Adds the part of another face's picture where that face is nearer to the viewer. */
  private void addInFront(ScreenFace other, ScreenFace face, List<ExactArea> before) {
    double[] nearer = depthDifference(other, face);
    DoubleSummaryStatistics range = range(nearer, other);
    if (range.getMax() > ScreenFace.ON_FACE_MM) {
      ExactArea picture = ExactArea.of(other.rings());
      before.add(
          range.getMin() < -ScreenFace.ON_FACE_MM ? picture.less(behind(nearer, other)) : picture);
    }
  }

  /** How much nearer the other face's plane is, as a linear function a x + b y + c of the view. */
  private double[] depthDifference(ScreenFace other, ScreenFace face) {
    double[] near = depth(other);
    double[] far = depth(face);
    return new double[] {near[0] - far[0], near[1] - far[1], near[2] - far[2]};
  }

  private double[] depth(ScreenFace face) {
    Vector3D normal = face.normal();
    double facing = normal.dot(view.toViewer());
    return new double[] {
      -normal.dot(view.right()) / facing, normal.dot(view.up()) / facing, face.offset() / facing
    };
  }

  /**
   * A rectangle that covers, of the half-plane where a linear function is negative, all near a
   * face.
   */
  private static ExactArea behind(double[] linear, ScreenFace near) {
    double slope = Math.hypot(linear[0], linear[1]);
    double nx = -linear[0] / slope;
    double ny = -linear[1] / slope;
    Coordinate centre = near.envelope().centre();
    double away = nx * centre.x + ny * centre.y - linear[2] / slope;
    double reach = near.envelope().getDiameter() + 1;
    double x = centre.x - away * nx;
    double y = centre.y - away * ny;
    double far = reach + Math.abs(away);
    return ExactArea.of(
        List.of(
            List.of(
                new At(x - ny * reach, y + nx * reach),
                new At(x + ny * reach, y - nx * reach),
                new At(x + ny * reach + nx * far, y - nx * reach + ny * far),
                new At(x - ny * reach + nx * far, y + nx * reach + ny * far))));
  }

  private static List<Region> regions(Vector3D normal, ExactArea picture) {
    List<Region> regions = new ArrayList<>();
    for (ExactArea each : picture.apart()) {
      double area = each.areaMm2();
      if (area > THIN_MM * each.perimeterMm()) {
        regions.add(new Region(normal, each.points(), area));
      }
    }
    return regions;
  }
}
