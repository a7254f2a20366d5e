package storyrod.piece.joint;

import java.util.List;
import storyrod.description.Description.StockKind;
import storyrod.description.Diagnostic;
import storyrod.description.Key;
import storyrod.description.ValueType;
import storyrod.geometry.Axis;
import storyrod.geometry.Point;
import storyrod.measure.Length;
import storyrod.piece.Blank;
import storyrod.piece.Cut;
import storyrod.piece.Meeting;
import storyrod.piece.Slots;

/** Clearance holes that are slots, so that a solid part can move across its grain on its screws. */
final class SlottedHoles {
  static final Key SLOTTED =
      Key.optional(
          "slotted",
          new ValueType.LengthValue(false),
          "How much longer than wide their clearance holes are, across the grain of the wood they"
              + " hold, so that it can move; the screws then have washers.");

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
