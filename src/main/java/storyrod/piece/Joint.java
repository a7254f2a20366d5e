package storyrod.piece;

import java.util.List;
import java.util.Optional;
import storyrod.description.Span;
import storyrod.geometry.Box;
import storyrod.geometry.Face;

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

  /** From which part and face fasteners are driven. */
  public record Driven(String part, Face face) {}

  /** A number of one item, by the item's name. */
  public record ItemCount(String item, int count) {}
}
