package storyrod.piece;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.FlatFace;
import storyrod.geometry.Point;
import storyrod.geometry.Pose;
import storyrod.geometry.Range;
import storyrod.measure.Length;

/**
 * Where two parts meet of which one is turned, or cut at an angle.
 *
 * @param shared what their faces share, in the frame of the piece; its normal points out of the
 *     first part
 * @param first how the first part stands
 * @param second how the second part stands
 */
public record Askew(FlatFace shared, Pose first, Pose second) {
  /** A direction of the first part as the second one sees it in its own frame. */
  public Vector3D seenBySecond(Vector3D inFirst) {
    return second.inverse().direction(first.direction(inFirst));
  }

  /** Which way the first part's face looks, as the second one sees it. */
  public Vector3D intoSecond() {
    return second.inverse().direction(shared.normal());
  }

  /** The corners of what they share, in the frame of the second part, in mm. */
  public List<Vector3D> cornersInSecond() {
    return shared.outer().stream().map(second.inverse()::point).toList();
  }

  /** A point of the first part, in mm, in the frame of the second. */
  public Vector3D pointInSecond(Vector3D inFirst) {
    return second.inverse().point(first.point(inFirst));
  }

  /** How steep the first part meets the other: 1 where its face is square to its own axis. */
  double cosine(Face face) {
    return first.inverse().direction(shared.normal()).dot(face.normal());
  }

  /** The least box round what they share, in the frame of the first part. */
  Box inFirst() {
    return around(shared.outer().stream().map(first.inverse()::point).toList());
  }

  /** The least box round what they share, in the frame of the second part. */
  Box inSecond() {
    return around(cornersInSecond());
  }

  /** The face of the second part that is touched, or the one nearest to it. */
  Face touchedInSecond() {
    return Face.nearest(intoSecond().negate());
  }

  static Box around(List<Vector3D> points) {
    List<Range> ranges = new ArrayList<>();
    for (int axis = 0; axis < 3; axis++) {
      int which = axis;
      double[] at = points.stream().mapToDouble(point -> point.toArray()[which]).sorted().toArray();
      ranges.add(new Range(Length.nearest(at[0]), Length.nearest(at[at.length - 1])));
    }
    return new Box(ranges.get(0), ranges.get(1), ranges.get(2));
  }

  /** The nearest exact point. */
  public static Point nearest(Vector3D mm) {
    return new Point(
        Length.nearest(mm.getX()), Length.nearest(mm.getY()), Length.nearest(mm.getZ()));
  }
}
