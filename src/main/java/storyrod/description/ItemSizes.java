package storyrod.description;

import java.util.Optional;
import storyrod.measure.Length;

/**
 * Sizes that only some kinds of item have.
 *
 * @param bottomClearance what an under-mounted slide needs below the drawer's sides
 * @param notch how deep an under-mounted slide lets the drawer's bottom be recessed, from the lower
 *     edge of the sides to the underside of the bottom
 * @param cupDiameter of a concealed hinge
 * @param cupDepth of a concealed hinge
 * @param cupEdge from the door's edge to the rim of the cup
 * @param leafWidth from a butt hinge's pin to the edge of its leaf
 * @param leafThickness how deep a butt hinge's leaf is let in
 * @param centres between the two holes of a pull
 * @param width of a loose tenon, a biscuit, a button or a top fastener
 * @param thickness of a loose tenon, a biscuit or a button, or how deep a rotating fastener is let
 *     in
 * @param tongue how far a button or a top fastener reaches into its slot
 * @param tongueThickness how thick that tongue is
 * @param travel how far in all the top can move on a fastener
 * @param slotDepth how deep the slot for a biscuit is
 */
public record ItemSizes(
    Optional<Length> bottomClearance,
    Optional<Length> notch,
    Optional<Length> cupDiameter,
    Optional<Length> cupDepth,
    Optional<Length> cupEdge,
    Optional<Length> leafWidth,
    Optional<Length> leafThickness,
    Optional<Length> centres,
    Optional<Length> width,
    Optional<Length> thickness,
    Optional<Length> tongue,
    Optional<Length> tongueThickness,
    Optional<Length> travel,
    Optional<Length> slotDepth) {
  public static final ItemSizes NONE =
      new ItemSizes(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());
}
