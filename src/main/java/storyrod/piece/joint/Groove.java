package storyrod.piece.joint;

import java.util.List;
import storyrod.description.Diagnostic;
import storyrod.geometry.Box;
import storyrod.piece.Meeting;

/** A slot along a part that takes the edge of a panel, usually without glue. */
public final class Groove extends Slotted {
  public Groove() {
    super("groove", "The edge of a panel lies in a slot along another part.", JointKeys.ROOM);
  }

  @Override
  List<Diagnostic> placeFaults(Meeting meeting, Box slot) {
    return Dado.openSlotFaults(meeting, slot);
  }
}
