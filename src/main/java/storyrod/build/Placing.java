package storyrod.build;

import java.util.List;
import java.util.Optional;
import storyrod.geometry.Face;
import storyrod.piece.Joint;

/**
 * A unit put in its place past what stands already.
 *
 * @param enters the face it leads with; empty for the first unit of its level
 * @param firstMove the move before that, where it takes two to come in
 * @param closes the joints between it and what stands
 * @param standing the full names of the parts that stand before it
 * @param tilted whether it has to be tilted on its way in
 */
public record Placing(
    Unit unit,
    Optional<Face> enters,
    Optional<FirstMove> firstMove,
    List<Joint> closes,
    List<String> standing,
    boolean tilted) {
  public Placing {
    closes = List.copyOf(closes);
    standing = List.copyOf(standing);
  }

  /** The same, when other parts stand before it. */
  Placing after(List<String> parts) {
    return new Placing(unit, enters, firstMove, closes, parts, tilted);
  }

  /** Whether it comes in with one straight move. */
  boolean isStraight() {
    return !tilted && firstMove.isEmpty();
  }

  String name() {
    return unit.fitName();
  }
}
