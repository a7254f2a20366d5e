package storyrod.piece;

import java.util.List;
import java.util.Optional;
import storyrod.description.Span;
import storyrod.geometry.Axis;
import storyrod.geometry.Contour;
import storyrod.geometry.Face;
import storyrod.geometry.Fineness;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.geometry.Solid;
import storyrod.measure.Length;

/**
 * A slot square to a mitred end, for a spline that lies half in it and half in the slot of the
 * other part.
 *
 * @param from the end that is mitred
 * @param profile what is taken, seen along the line in which the slot lies in its part
 * @param run from where to where, along the normal of the profile
 * @param thickness how wide the slot is
 * @param depth how deep, square to the mitre
 */
public record SplineSlot(
    Face from,
    Contour profile,
    Range run,
    Length thickness,
    Length depth,
    Optional<String> forWhat,
    Span at)
    implements Slanted {
  @Override
  public String term() {
    return "spline slot";
  }

  /** All that is taken. */
  public Solid solid() {
    return Solid.of(profile, run, Fineness.USUAL);
  }

  /** Where its two walls meet the mitre, in the plane of the profile. */
  public List<Point> onMitre() {
    return List.of(profile.segments().getFirst().from(), profile.segments().getFirst().to());
  }

  /** The axis on which the profile is looked at. */
  public Axis along() {
    return profile.normal();
  }

  /** Whether it lies in the edge of a frame, and runs from the inner to the outer corner. */
  public boolean isInFrame(Part part) {
    return along() == part.thickness();
  }
}
