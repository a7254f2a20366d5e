package storyrod.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.description.Span;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Pose;
import storyrod.measure.Length;

/**
 * A joint as applied, in words that no later stage has to know the type for.
 *
 * @param type the trade's word, as in the description
 * @param first the part that goes in, is fastened, or lies on
 * @param firstFace the face of the first part that meets the second
 * @param second the part that takes it
 * @param entry the direction in which the first part moves to reach its seat, as the face it leads
 *     with
 * @param contact where the two meet, a box that is flat on one axis
 * @param glued whether glue holds it
 * @param holding whether it holds the two together, or only lets one lie in the other
 * @param fasteners the items it uses up, for all of it
 * @param driven the part from which the fasteners are driven, and the face they enter
 */
public record Joint(
    String type,
    String first,
    Face firstFace,
    String second,
    Face entry,
    Box contact,
    boolean glued,
    boolean holding,
    List<ItemCount> fasteners,
    Optional<Driven> driven,
    Span at) {
  public Joint {
    fasteners = List.copyOf(fasteners);
  }

  /** Whether another joint is of the same two parts. */
  public boolean isOfSameParts(Joint other) {
    return first.equals(other.first) && second.equals(other.second)
        || first.equals(other.second) && second.equals(other.first);
  }

  /** Whether the first part runs along the second to its seat, and out again. */
  public boolean slides() {
    return !holding && entry.axis() != firstFace.axis();
  }

  /** A joint given in the first part's own frame, as it stands in the piece. */
  Joint posed(Pose first, Pose second) {
    if (!first.isTurned() && !second.isTurned()) {
      return this;
    }
    return new Joint(
        type,
        this.first,
        Face.nearest(first.normal(firstFace)),
        this.second,
        Face.nearest(first.normal(entry)),
        first.isTurned() ? around(first) : contact,
        glued,
        holding,
        fasteners,
        driven.map(
            each ->
                new Driven(
                    each.part(),
                    Face.nearest(
                        (each.part().equals(this.first) ? first : second).normal(each.face())))),
        at);
  }

  private Box around(Pose pose) {
    List<Vector3D> corners = new ArrayList<>();
    for (Length x : List.of(contact.x().from(), contact.x().to())) {
      for (Length y : List.of(contact.y().from(), contact.y().to())) {
        for (Length z : List.of(contact.z().from(), contact.z().to())) {
          corners.add(pose.point(new Point(x, y, z).toMm()));
        }
      }
    }
    return Askew.around(corners);
  }

  /** From which part and face fasteners are driven. */
  public record Driven(String part, Face face) {}

  /** A number of one item, by the item's name. */
  public record ItemCount(String item, int count) {}
}
