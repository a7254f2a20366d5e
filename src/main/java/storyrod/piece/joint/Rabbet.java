package storyrod.piece.joint;

import java.util.List;
import storyrod.description.Diagnostic;
import storyrod.geometry.Box;
import storyrod.piece.Meeting;
import storyrod.piece.TrenchRole;

/** A step at the edge of a part that takes the end of another. */
public final class Rabbet extends Slotted {
  public Rabbet() {
    super("rabbet", "The end of one part sits in a step at the edge of another.");
  }

  @Override
  TrenchRole role(Meeting meeting) {
    return TrenchRole.OTHER;
  }

  @Override
  List<Diagnostic> placeFaults(Meeting meeting, Box slot) {
    if (opensAtAnEdge(meeting, slot)) {
      return List.of();
    }
    return List.of(
        Diagnostic.error(
                "rabbet-inside",
                meeting.entry().at("end"),
                "a rabbet lies at an edge, but %s is inside %s"
                    .formatted(meeting.entry().face("end"), meeting.second().name()))
            .also(meeting.second().at(), meeting.second().name() + " is defined here")
            .hint("write `dado` or `groove`, or move the part to the edge"));
  }
}
