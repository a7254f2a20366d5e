package storyrod.build;

import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.ItemKind;
import storyrod.geometry.Face;
import storyrod.piece.Joint;
import storyrod.piece.Piece;

/** What the way of a unit to its place asks for, and the side from which it is fixed there. */
record Entrance(Piece piece, Lying lying) {
  /** The traits of a placing. */
  Stream<String> traits(Placing placing) {
    return Stream.concat(
        Stream.of("fit-tilted").filter(each -> placing.tilted()),
        Stream.of("fit-overhead").filter(each -> isDrilledFromBelow(placing)));
  }

  /** Whether the drill points upwards: the chips fall into the face of whoever leads it. */
  private boolean isDrilledFromBelow(Placing placing) {
    return placing.unit().level().equals(Unit.PIECE)
        && lying.needed(placing).equals(Optional.of(Lying.UPRIGHT))
        && placing.closes().stream().anyMatch(this::isDrilledFromBelow);
  }

  private boolean isDrilledFromBelow(Joint joint) {
    return isHeldByFasteners(joint)
        ? joint.firstFace() == Face.BOTTOM
        : joint.driven().filter(each -> each.face() == Face.BOTTOM).isPresent()
            && joint.fasteners().stream()
                .anyMatch(each -> piece.kind(each.item()) == ItemKind.WOOD_SCREW);
  }

  /** Whether a top is held by what hooks into its rails and is screwed to its underside. */
  private boolean isHeldByFasteners(Joint joint) {
    return joint.fasteners().stream().anyMatch(each -> piece.kind(each.item()).isTopFastener());
  }
}
