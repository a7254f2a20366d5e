package storyrod.piece.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.Entry;
import storyrod.description.EntryType;
import storyrod.description.FaceRef;
import storyrod.description.Key;
import storyrod.description.ValueType;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Joint.ItemCount;
import storyrod.piece.JointEffect;
import storyrod.piece.JointEffect.CutIn;
import storyrod.piece.JointType;
import storyrod.piece.Meeting;

/**
 * A solid top held by fasteners whose tongues slide in a slot of the rail below, so that it can
 * move. The slot is one saw kerf of 1/8 in wide and 1/2 in deep, if not said (common practice).
 */
public final class FastenedTop implements JointType {
  private static final Length SLOT_WIDTH = Length.inch(1, 8);
  private static final Length SLOT_DEPTH = Length.inch(1, 2);
  private static final EntryType WORDS =
      new EntryType(
          "fastened-top",
          "A top held by fasteners that slide in a slot of the rail below, so that it can move.",
          List.of(
              Key.required("top", new ValueType.FaceName(), "The underside of the top."),
              Key.required("rail", new ValueType.FaceName(), "The rail's face that gets the slot."),
              Key.required(
                  "slot-from-top",
                  new ValueType.LengthValue(false),
                  "From the top of the rail to the slot."),
              Key.optional(
                  "slot-depth",
                  new ValueType.LengthValue(false),
                  "How deep the slot is, 1/2 in if not said."),
              JointKeys.item("fastener", "The item of hardware."),
              JointKeys.item("screw", "The screw that holds a fastener to the top."),
              JointKeys.COUNT));

  @Override
  public EntryType words() {
    return WORDS;
  }

  @Override
  public FaceRef meeting(Entry entry) {
    return entry.face("top");
  }

  @Override
  public String into(Entry entry) {
    return entry.face("rail").part();
  }

  @Override
  public JointEffect effect(Meeting meeting) {
    Entry entry = meeting.entry();
    int count = entry.count("count");
    FaceRef rail = entry.face("rail");
    Joint joint =
        JointKeys.fastened(
            meeting,
            true,
            List.of(
                new ItemCount(entry.text("fastener"), count),
                new ItemCount(entry.text("screw"), count)),
            Optional.of(new Joint.Driven(rail.part(), meeting.face())));
    List<Diagnostic> askew =
        JointKeys.squareOnly(meeting, "fasten the top to a rail that stands straight");
    List<Diagnostic> faults = askew.isEmpty() ? faults(meeting, rail.face()) : askew;
    return faults.isEmpty()
        ? new JointEffect(
            List.of(new CutIn(rail.part(), slot(meeting, rail.face()))), joint, faults)
        : new JointEffect(List.of(), joint, faults);
  }

  private static Cut slot(Meeting meeting, Face railFace) {
    Box rail = meeting.second().box();
    Face towardsTop = meeting.touched();
    Length near = rail.at(towardsTop);
    Length offset = meeting.entry().length("slot-from-top");
    Length first = near.minus(signed(offset, towardsTop));
    Length second = first.minus(signed(SLOT_WIDTH, towardsTop));
    Length surface = rail.at(railFace);
    Length inside = surface.minus(signed(slotDepth(meeting), railFace));
    Box removed =
        rail.with(towardsTop.axis(), new Range(first.min(second), first.max(second)))
            .with(railFace.axis(), new Range(surface.min(inside), surface.max(inside)));
    return new Cut.Trench(
        "groove",
        railFace,
        removed,
        slotDepth(meeting),
        Optional.of(meeting.entry().text("fastener")),
        meeting.entry().at());
  }

  private static Length slotDepth(Meeting meeting) {
    return meeting.entry().findLength("slot-depth").orElse(SLOT_DEPTH);
  }

  private static Length signed(Length length, Face face) {
    return face.sign() < 0 ? length.negated() : length;
  }

  private static List<Diagnostic> faults(Meeting meeting, Face railFace) {
    List<Diagnostic> faults = new ArrayList<>();
    Entry entry = meeting.entry();
    if (railFace.axis() == meeting.axis()) {
      faults.add(
          Diagnostic.error(
                  "slot-face",
                  entry.at("rail"),
                  "the slot must be in a face beside the top, not in " + entry.face("rail"))
              .hint("name the rail's front, back, left or right"));
      return faults;
    }
    Axis in = railFace.axis();
    Length height = meeting.second().box().size(meeting.axis());
    Length needed = entry.length("slot-from-top").plus(SLOT_WIDTH);
    if (!needed.isShorterThan(height)
        || !slotDepth(meeting).isShorterThan(meeting.second().box().size(in))) {
      faults.add(
          Diagnostic.error(
                  "slot-outside",
                  entry.at("slot-from-top"),
                  "a slot %s from the top of %s does not fit: the rail is %s high there"
                      .formatted(
                          meeting.print(entry.length("slot-from-top")),
                          meeting.second().name(),
                          meeting.print(height)))
              .hint("move the slot up, or make the rail higher"));
    }
    return faults;
  }
}
