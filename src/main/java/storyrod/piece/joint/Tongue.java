package storyrod.piece.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.Entry;
import storyrod.description.EntryType;
import storyrod.description.Key;
import storyrod.description.ValueType;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.Unit;
import storyrod.piece.Blank;
import storyrod.piece.Cut;
import storyrod.piece.Extension;
import storyrod.piece.Joint;
import storyrod.piece.Joint.ItemCount;
import storyrod.piece.JointEffect;
import storyrod.piece.JointEffect.CutIn;
import storyrod.piece.JointType;
import storyrod.piece.Meeting;
import storyrod.piece.TrenchRole;

/**
 * An end or an edge cut down on both cheeks to a tongue, which lies in a groove right along another
 * part. A panel or another tongue may lie in the same groove.
 */
public final class Tongue implements JointType {
  private static final EntryType WORDS =
      new EntryType(
          "tongue",
          "The end of one part, thinned to a tongue, sits in a groove along another.",
          List.of(
              JointKeys.END,
              JointKeys.INTO,
              JointKeys.DEPTH,
              Cheeks.THICKNESS,
              Cheeks.SETBACK,
              Cheeks.FROM,
              JointKeys.ROOM,
              Key.optional(
                  "peg",
                  new ValueType.ItemName(),
                  "The pegs that hold it, where it is not glued; without `peg-from` their holes are"
                      + " cuts."),
              Key.optional("pegs", new ValueType.Count(1), "How many pegs, 3 if not said."),
              TonguePegs.FROM,
              TonguePegs.EDGE,
              TonguePegs.PLAY,
              TonguePegs.DEPTH,
              JointKeys.GLUE));

  @Override
  public EntryType words() {
    return WORDS;
  }

  @Override
  public List<Extension> extensions(Entry entry, Pair parts) {
    Length reach = reach(entry, parts.first(), parts.unit());
    return List.of(new Extension(entry.face("end"), reach.max(Length.ZERO)));
  }

  private static Length reach(Entry entry, Blank first, Unit unit) {
    return entry.length("depth").minus(JointKeys.room(entry, first, unit));
  }

  @Override
  public JointEffect effect(Meeting meeting) {
    Entry entry = meeting.entry();
    List<Diagnostic> faults = new ArrayList<>(Cheeks.faults(meeting));
    faults.addAll(meeting.depthFaults("depth", entry.length("depth")));
    faults.addAll(JointKeys.roomFaults(meeting));
    faults.addAll(TonguePegs.faults(meeting));
    List<CutIn> cuts = new ArrayList<>();
    if (faults.isEmpty()) {
      Box slot = slot(meeting);
      faults.addAll(edgeFaults(meeting, slot));
      cuts.add(new CutIn(meeting.second().name(), groove(meeting, slot)));
      Box tongue = tongue(meeting, slot);
      cuts.add(new CutIn(meeting.first().name(), Cheeks.cut(meeting, tongue)));
      if (entry.has("peg-from")) {
        TonguePegs pegs = new TonguePegs(meeting, tongue);
        faults.addAll(pegs.placeFaults());
        cuts.addAll(faults.isEmpty() ? pegs.cuts() : List.of());
      }
    }
    return new JointEffect(cuts, joint(meeting), faults);
  }

  private static Joint joint(Meeting meeting) {
    Entry entry = meeting.entry();
    List<ItemCount> pegs =
        entry.find("peg", String.class).stream()
            .map(peg -> new ItemCount(peg, TonguePegs.count(entry)))
            .toList();
    boolean holds = entry.yes("glue", false) || !pegs.isEmpty();
    return JointKeys.fastened(meeting, holds, pegs, Optional.empty());
  }

  private static Box slot(Meeting meeting) {
    return meeting
        .slot(meeting.entry().length("depth"))
        .with(meeting.first().thickness(), Cheeks.across(meeting));
  }

  private static Box tongue(Meeting meeting, Box slot) {
    Axis width = Axis.other(meeting.axis(), meeting.first().thickness());
    Range reach =
        meeting
            .contact()
            .on(meeting.axis())
            .extended(
                meeting.face().sign(),
                reach(meeting.entry(), meeting.first(), meeting.items().format().unit()));
    return slot.with(width, meeting.first().box().on(width)).with(meeting.axis(), reach);
  }

  private static Cut groove(Meeting meeting, Box slot) {
    return TrenchRole.GROOVE.given(
        new Cut.Trench(
            "groove",
            meeting.touched(),
            slot,
            meeting.entry().length("depth"),
            Optional.of(meeting.first().name()),
            meeting.entry().at()));
  }

  private static List<Diagnostic> edgeFaults(Meeting meeting, Box slot) {
    Axis across = meeting.first().thickness();
    if (Slotted.leavesWood(slot.on(across), meeting.second().box().on(across))) {
      return List.of();
    }
    return List.of(
        Diagnostic.error(
                "slot-at-edge",
                meeting.entry().at("end"),
                "the groove for this tongue has no wood on one side: it lies at the edge of %s"
                    .formatted(meeting.second().name()))
            .also(meeting.second().at(), meeting.second().name() + " is defined here")
            .hint("move the tongue inwards with `setback` and `from`, or move the part"));
  }
}
