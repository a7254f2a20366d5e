package storyrod.piece.joint;

import java.util.List;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.description.Key;
import storyrod.description.StockKind;
import storyrod.description.ValueType;
import storyrod.geometry.Axis;
import storyrod.geometry.Point;
import storyrod.measure.Length;
import storyrod.piece.Blank;
import storyrod.piece.Cut;
import storyrod.piece.Meeting;
import storyrod.piece.ScrewHoles;
import storyrod.piece.Slots;

/** Clearance holes that are slots, so that a solid part can move across its grain on its screws. */
final class SlottedHoles {
  static final Key SLOTTED =
      Key.optional(
          "slotted",
          new ValueType.LengthValue(false),
          "How much longer than wide their clearance holes are, across the grain of the wood they"
              + " hold, so that it can move; their heads then lie on the face.");

  static final Key WASHER =
      Key.optional(
          "washer",
          new ValueType.ItemName(),
          "The washers under their heads, one for each slotted screw.");

  private SlottedHoles() {}

  /** What keeps holes from being slotted. */
  static List<Diagnostic> faults(Meeting meeting) {
    if (!meeting.entry().has("slotted")) {
      return List.of();
    }
    if (isStill(meeting)) {
      return List.of();
    }
    Blank held = meeting.second();
    if (width(held) == meeting.axis() || meeting.askew().isPresent()) {
      return List.of(
          Diagnostic.error(
                  "slots-for-nothing",
                  meeting.entry().at("slotted"),
                  "%s does not move across its grain along this joint".formatted(held.name()))
              .also(held.at(), held.name() + " is defined here")
              .hint("leave `slotted` out; it is for wood with its grain along the face"));
    }
    return meeting.entry().has("plug") || meeting.entry().yes("countersink", false)
        ? List.of(
            Diagnostic.error(
                    "slots-for-nothing",
                    meeting.entry().at("slotted"),
                    "a sunk head cannot slide in its slot")
                .hint("leave out `plug` and `countersink`: the heads lie on washers"))
        : List.of();
  }

  /** What washers the screws take; none where the holes stay round. */
  static Optional<String> washer(Meeting meeting) {
    return meeting.entry().find("washer", String.class).filter(item -> !isStill(meeting));
  }

  /** What keeps a washer from lying over its slot. */
  static List<Diagnostic> washerFaults(Meeting meeting, ItemEntry screw) {
    Optional<ItemEntry> washer = meeting.item("washer");
    if (washer.isEmpty()) {
      return List.of();
    }
    if (!meeting.entry().has("slotted")) {
      return List.of(
          washerFault(meeting, "a washer is for a screw in a slot, and these have round holes")
              .hint("write `slotted:` with the room to move, or leave `washer` out"));
    }
    Length slot = ScrewHoles.forShank(screw.diameter().orElseThrow()).clearance();
    if (washer.get().kind() != ItemKind.WASHER || washer.get().diameter().isEmpty()) {
      return List.of(
          washerFault(meeting, washer.get().name() + " is no washer with a diameter")
              .also(washer.get().at(), washer.get().name() + " is defined here")
              .hint("name an item with `kind: washer` and a `diameter:`"));
    }
    return washer.get().diameter().get().isLongerThan(slot)
        ? List.of()
        : List.of(
            washerFault(
                    meeting,
                    "%s is %s wide and falls into the slot, which is %s wide"
                        .formatted(
                            washer.get().name(),
                            meeting.print(washer.get().diameter().get()),
                            meeting.print(slot)))
                .also(washer.get().at(), washer.get().name() + " is defined here")
                .hint("take a wider washer"));
  }

  private static Diagnostic washerFault(Meeting meeting, String message) {
    return Diagnostic.error("screw-washer", meeting.entry().at("washer"), message);
  }

  /** A sheet does not move: its holes stay round, so that wood and sheet can be options. */
  private static boolean isStill(Meeting meeting) {
    return meeting.second().stock().kind() == StockKind.SHEET;
  }

  private static Axis width(Blank part) {
    return Axis.other(part.length(), part.thickness());
  }

  /** A row of holes as it is, or a slot for each of them. */
  static List<Cut> of(Meeting meeting, Cut.Holes row) {
    return meeting
        .entry()
        .findLength("slotted")
        .filter(longer -> !isStill(meeting))
        .map(longer -> row.centres().stream().map(at -> slot(meeting, row, at, longer)).toList())
        .orElseGet(() -> List.of(row));
  }

  private static Cut slot(Meeting meeting, Cut.Holes row, Point at, Length longer) {
    return new Slots(
        "screw slot",
        Slots.Form.ROUND_ENDS,
        row.from(),
        at,
        width(meeting.second()),
        Length.ZERO,
        1,
        new Slots.Size(row.diameter().plus(longer), row.diameter(), row.depth()),
        true,
        row.forWhat(),
        row.at());
  }
}
