package storyrod.piece;

import java.util.List;
import java.util.Optional;
import storyrod.description.Span;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.measure.Length;

/**
 * Holes bored once the parts stand together, through holes of another part, at an angle that no
 * drawing has to give.
 *
 * @param from the face in which the mouths lie, or the nearest to it
 * @param through the full name of the part through which they are bored
 */
public record InPlace(
    String term,
    Face from,
    List<Bore> bores,
    Length diameter,
    Length depth,
    String through,
    Optional<String> forWhat,
    Span at)
    implements Cut {
  public InPlace {
    bores = List.copyOf(bores);
  }

  /** The axis of one bore, from the centre of its mouth to its bottom. */
  public record Bore(Point mouth, Point end) {}
}
