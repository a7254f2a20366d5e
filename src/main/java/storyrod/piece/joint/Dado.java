package storyrod.piece.joint;

import java.util.List;
import storyrod.description.Diagnostic;
import storyrod.geometry.Box;
import storyrod.piece.Meeting;

/** A slot across the grain, or across a sheet, that takes the end of another part. */
public final class Dado extends Slotted {
  public Dado() {
    super("dado", "The end of one part sits in a slot across another.");
  }

  @Override
  List<Diagnostic> placeFaults(Meeting meeting, Box slot) {
    return openSlotFaults(meeting, slot);
  }

  static List<Diagnostic> openSlotFaults(Meeting meeting, Box slot) {
    if (!opensAtAnEdge(meeting, slot)) {
      return List.of();
    }
    return List.of(
        Diagnostic.error(
                "slot-at-edge",
                meeting.entry().at("end"),
                "this %s has no wood on one side: %s lies at the edge of %s"
                    .formatted(
                        meeting.entry().kind(),
                        meeting.entry().face("end"),
                        meeting.second().name()))
            .also(meeting.second().at(), meeting.second().name() + " is defined here")
            .hint("write `rabbet` if it is meant to lie at the edge, or move it inwards"));
  }
}
