package storyrod.piece.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.Entry;
import storyrod.description.EntryType;
import storyrod.description.FaceRef;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.description.Key;
import storyrod.description.ValueType;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Joint.ItemCount;
import storyrod.piece.JointEffect;
import storyrod.piece.JointEffect.CutIn;
import storyrod.piece.JointType;
import storyrod.piece.Meeting;

/**
 * A solid top held by fasteners on which it can move: ones whose tongues slide in a slot of the
 * rail below, wooden buttons that do the same, or rotating ones let into the rail's upper edge.
 */
public final class FastenedTop implements JointType {
  private static final EntryType WORDS =
      new EntryType(
          "fastened-top",
          "A top held by fasteners on which it can move, in slots or recesses of the rail below.",
          List.of(
              Key.required("top", new ValueType.FaceName(), "The underside of the top."),
              Key.required(
                  "rail",
                  new ValueType.FaceName(),
                  "The rail's face that gets the slots, or to which rotating fasteners swing out."),
              Key.optional(
                  "slot-from-top",
                  new ValueType.LengthValue(false),
                  "From the top of the rail to the slot; rotating fasteners have none."),
              TopSlots.SLOTS,
              TopSlots.DEPTH,
              TopSlots.LENGTH,
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
    FaceRef rail = entry.face("rail");
    ItemEntry fastener = meeting.item("fastener").orElseThrow();
    boolean isRotating = fastener.kind() == ItemKind.ROTATING_FASTENER;
    List<Diagnostic> faults = new ArrayList<>(faults(meeting, isRotating));
    Optional<Cut> cut = Optional.empty();
    if (faults.isEmpty()) {
      TopRecesses recesses = new TopRecesses(meeting, rail.face(), fastener);
      TopSlots slots = new TopSlots(meeting, rail.face(), fastener);
      faults.addAll(isRotating ? recesses.faults() : slots.faults());
      cut =
          faults.stream().anyMatch(Diagnostic::isError)
              ? Optional.empty()
              : Optional.of(isRotating ? recesses.cut() : slots.cut());
    }
    List<CutIn> cuts = cut.stream().map(each -> new CutIn(rail.part(), each)).toList();
    return new JointEffect(cuts, joint(meeting, isRotating), faults);
  }

  /** A rotating fastener has one screw down into the rail and one up into the top. */
  private static Joint joint(Meeting meeting, boolean isRotating) {
    Entry entry = meeting.entry();
    int count = entry.count("count");
    return JointKeys.fastened(
        meeting,
        true,
        List.of(
            new ItemCount(entry.text("fastener"), count),
            new ItemCount(entry.text("screw"), isRotating ? 2 * count : count)),
        Optional.of(new Joint.Driven(entry.face("rail").part(), meeting.face())));
  }

  private static List<Diagnostic> faults(Meeting meeting, boolean isRotating) {
    List<Diagnostic> askew =
        JointKeys.squareOnly(meeting, "fasten the top to a rail that stands straight");
    if (!askew.isEmpty()) {
      return askew;
    }
    Entry entry = meeting.entry();
    if (entry.face("rail").face().axis() == meeting.axis()) {
      return List.of(
          Diagnostic.error(
                  "slot-face",
                  entry.at("rail"),
                  "the slot must be in a face beside the top, not in " + entry.face("rail"))
              .hint("name the rail's front, back, left or right"));
    }
    if (isRotating != entry.has("slot-from-top")) {
      return List.of();
    }
    return List.of(
        Diagnostic.error(
                "top-slot",
                entry.at("slot-from-top"),
                isRotating
                    ? "a rotating fastener lies in a recess of the rail's upper edge, not in a slot"
                    : "this fastener needs a slot, but not how far from the top it is cut")
            .hint(
                isRotating
                    ? "leave `slot-from-top` out"
                    : "add `slot-from-top:`, as the fastener's maker gives it"));
  }
}
