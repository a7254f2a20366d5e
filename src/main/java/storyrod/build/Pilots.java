package storyrod.build;

import java.util.List;
import java.util.stream.Stream;
import storyrod.piece.Cut;
import storyrod.piece.InPlace;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * Finds the holes that are drilled when two parts lie together, through the holes of the first:
 * those of a joint's fasteners in the part that they end in. Drilled so, they always meet.
 */
public final class Pilots {
  private Pilots() {}

  /** The pilot holes that a joint asks for. */
  public static List<Cut> of(Piece piece, Joint joint) {
    return joint.driven().stream()
        .flatMap(
            driven ->
                Stream.of(joint.first(), joint.second()).filter(p -> !p.equals(driven.part())))
        .flatMap(part -> piece.part(part).cuts().stream())
        .filter(cut -> isFor(cut, joint))
        .toList();
  }

  static boolean isPilot(Piece piece, Part part, Cut cut) {
    return piece.joints().stream()
        .filter(joint -> joint.at().equals(cut.at()))
        .filter(joint -> joint.driven().filter(d -> !d.part().equals(part.name())).isPresent())
        .filter(joint -> Stream.of(joint.first(), joint.second()).anyMatch(part.name()::equals))
        .anyMatch(joint -> isFor(cut, joint));
  }

  private static boolean isFor(Cut cut, Joint joint) {
    return (cut instanceof Cut.Holes || cut instanceof InPlace)
        && cut.at().equals(joint.at())
        && joint.fasteners().stream()
            .anyMatch(each -> cut.forWhat().filter(each.item()::equals).isPresent());
  }
}
