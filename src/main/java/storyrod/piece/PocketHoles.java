package storyrod.piece;

import java.util.List;
import java.util.Optional;
import storyrod.description.Span;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.measure.Length;

/**
 * Slanted holes from a face towards an end, for pocket screws, drilled with a jig and a stepped
 * bit.
 *
 * @param end the end of the part at which the screws leave
 * @param centres where each hole's axis leaves the end, at the middle of the thickness
 * @param diameter the wide step's diameter
 * @param angleDegrees the angle between the hole and the face
 */
public record PocketHoles(
    String term,
    Face from,
    Face end,
    List<Point> centres,
    Length diameter,
    Length pilot,
    int angleDegrees,
    Optional<String> forWhat,
    Span at)
    implements Cut {
  public PocketHoles {
    centres = List.copyOf(centres);
  }
}
