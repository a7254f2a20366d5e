package storyrod.build;

import java.util.List;
import java.util.stream.Stream;
import storyrod.geometry.Axis;
import storyrod.geometry.Point;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.PocketHoles;
import storyrod.piece.Slots;

/** The holes and slots that a joint makes for its items. */
final class JointCuts {
  private JointCuts() {}

  /**
   * Those of a part. An entry that is repeated makes joints and cuts of one origin; then the place
   * tells which cut is whose.
   */
  static Stream<Cut> of(Joint joint, Part part) {
    return part.cuts().stream()
        .filter(cut -> cut.at().equals(joint.at()))
        .filter(cut -> part.pose().isTurned() || isAt(joint, cut));
  }

  private static boolean isAt(Joint joint, Cut cut) {
    return centres(cut).stream()
        .allMatch(
            at ->
                Stream.of(Axis.values())
                    .filter(axis -> axis != joint.firstFace().axis())
                    .allMatch(axis -> joint.contact().on(axis).contains(at.on(axis))));
  }

  private static List<Point> centres(Cut cut) {
    return switch (cut) {
      case Cut.Holes holes -> holes.centres();
      case Slots slots -> slots.centres();
      case PocketHoles pockets -> pockets.centres();
      default -> List.of();
    };
  }
}
