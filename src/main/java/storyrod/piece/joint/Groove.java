package storyrod.piece.joint;

import java.util.List;
import storyrod.description.Diagnostic;
import storyrod.description.Entry;
import storyrod.description.Key;
import storyrod.description.ValueType;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.measure.Length;
import storyrod.piece.JointEffect;
import storyrod.piece.Meeting;
import storyrod.piece.TrenchRole;

/** A slot along a part that takes the edge of a panel, usually without glue. */
public final class Groove extends Slotted {
  private static final Key STOPPED =
      Key.optional(
              "stopped",
              new ValueType.YesNo(),
              "Whether the slot ends where the panel ends, so that it does not show at the ends of"
                  + " the part.")
          .standard("no");

  public Groove() {
    super(
        "groove",
        "The edge of a panel lies in a slot along another part.",
        JointKeys.ROOM,
        STOPPED);
  }

  @Override
  public JointEffect effect(Meeting meeting) {
    boolean leans = isStopped(meeting.entry()) && meeting.askew().isPresent();
    return leans
        ? new JointEffect(
            List.of(),
            JointKeys.plain(meeting, meeting.entry().yes("glue", false)),
            JointKeys.squareOnly(meeting, "let the groove run through: leave `stopped` out"))
        : super.effect(meeting);
  }

  private static boolean isStopped(Entry entry) {
    return entry.yes("stopped", false);
  }

  @Override
  TrenchRole role(Meeting meeting) {
    return isStopped(meeting.entry()) ? TrenchRole.STOPPED_GROOVE : TrenchRole.GROOVE;
  }

  @Override
  String term(Meeting meeting) {
    String word = byGrain(meeting);
    return isStopped(meeting.entry()) ? "stopped " + word : word;
  }

  @Override
  Length room(Entry entry, Pair parts) {
    return JointKeys.room(entry, parts.first(), parts.unit());
  }

  @Override
  Box slot(Meeting meeting) {
    Box through = super.slot(meeting);
    if (!isStopped(meeting.entry())) {
      return through;
    }
    Axis run = Axis.other(meeting.axis(), meeting.first().thickness());
    return through.with(run, through.on(run).shared(meeting.first().box().on(run)));
  }

  @Override
  List<Diagnostic> placeFaults(Meeting meeting, Box slot) {
    return Dado.openSlotFaults(meeting, slot);
  }
}
