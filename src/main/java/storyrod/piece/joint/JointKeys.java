package storyrod.piece.joint;

import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.Entry;
import storyrod.description.FaceRef;
import storyrod.description.Key;
import storyrod.description.StockKind;
import storyrod.description.ValueType;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.Unit;
import storyrod.piece.Blank;
import storyrod.piece.Extension;
import storyrod.piece.Joint;
import storyrod.piece.Joint.ItemCount;
import storyrod.piece.Meeting;

/** What kinds of joint have in common: their usual keys, and the joint in its plainest form. */
final class JointKeys {
  static final Key END =
      Key.required("end", new ValueType.FaceName(), "The face of the part that goes in.");
  static final Key INTO = Key.required("into", new ValueType.PartName(), "The part that takes it.");
  static final Key DEPTH =
      Key.required("depth", new ValueType.LengthValue(false), "How deep it goes in.");
  static final Key GLUE =
      Key.optional("glue", new ValueType.YesNo(), "Whether it is glued.").standard("no");
  static final Key ROOM =
      Key.optional(
          "room",
          new ValueType.Allowance(),
          "What it ends short of the bottom of the slot, so that it can move; 1/32 in or 0.5 mm"
              + " if not said for a sheet without glue, so that it goes in, and else nothing.");
  static final Key COUNT =
      Key.required("count", new ValueType.Count(1), "How many, spread evenly.");

  private JointKeys() {}

  /**
   * What the first part ends short of the bottom of its slot. A sheet as large as from groove to
   * groove holds the joints round it open; 1/16 in or 1 mm clear in all is common practice.
   */
  static Length room(Entry entry, Blank first, Unit unit) {
    boolean slipsIn =
        first.stock().kind() == StockKind.SHEET && !entry.yes("glue", false) && !entry.has("peg");
    Length usual = unit == Unit.INCH ? Length.inch(1, 32) : Length.micrometres(500);
    Length half = entry.length("depth").dividedBy(2, RoundingMode.FLOOR);
    return entry.findLength("room").orElse(slipsIn ? usual.min(half) : Length.ZERO);
  }

  /** A slot of which its room leaves nothing holds nothing. */
  static List<Diagnostic> roomFaults(Meeting meeting) {
    Entry entry = meeting.entry();
    if (!entry.has("room") || entry.length("depth").isLongerThan(entry.length("room"))) {
      return List.of();
    }
    return List.of(
        Diagnostic.error(
                "joint-room",
                entry.at("room"),
                "a room of %s leaves nothing of a %s that is %s deep"
                    .formatted(
                        meeting.print(entry.length("room")),
                        entry.kind(),
                        meeting.print(entry.length("depth"))))
            .hint("leave a little of the depth, or make it deeper"));
  }

  static Key item(String name, String help) {
    return Key.required(name, new ValueType.ItemName(), help);
  }

  /** What is wrong with a joint that can only be made square, if its parts are not. */
  static List<Diagnostic> squareOnly(Meeting meeting, String instead) {
    return meeting.askew().stream()
        .map(
            askew ->
                Diagnostic.error(
                        "joint-askew",
                        meeting.entry().at(),
                        "%s cannot join %s and %s, of which one is turned or cut at an angle"
                            .formatted(
                                meeting.entry().kind(),
                                meeting.first().name(),
                                meeting.second().name()))
                    .hint(instead))
        .toList();
  }

  /** A joint in which the first part is pushed home face first and nothing is driven. */
  static Joint plain(Meeting meeting, boolean holding) {
    return fastened(meeting, holding, List.of(), Optional.empty());
  }

  static Joint fastened(
      Meeting meeting, boolean holding, List<ItemCount> items, Optional<Joint.Driven> driven) {
    return new Joint(
        meeting.entry().kind(),
        meeting.first().name(),
        meeting.face(),
        meeting.second().name(),
        meeting.face(),
        meeting.contact(),
        meeting.entry().yes("glue", false),
        holding,
        items,
        driven,
        meeting.entry().at());
  }

  /** The end made as much longer as the other part is thick there. */
  static Extension rightAcross(Entry entry, Blank second) {
    FaceRef end = entry.face("end");
    return new Extension(end, second.shoulder().size(end.face().axis()));
  }

  /** The whole end that lies in the other part, as far as it reaches right across it. */
  static Box place(Meeting meeting) {
    return meeting
        .first()
        .box()
        .with(meeting.axis(), meeting.second().shoulder().on(meeting.axis()));
  }

  /** An end that lies in another part may not stand out beside it. */
  static List<Diagnostic> outsideFaults(Meeting meeting, Axis along) {
    Range own = meeting.first().box().on(along);
    Range its = meeting.second().box().on(along);
    if (its.contains(own)) {
      return List.of();
    }
    boolean low = own.from().isShorterThan(its.from());
    Length out = low ? its.from().minus(own.from()) : own.to().minus(its.to());
    return List.of(
        Diagnostic.error(
                "lap-outside",
                meeting.entry().at("end"),
                "the end of %s stands out %s past the %s of %s"
                    .formatted(
                        meeting.first().name(),
                        meeting.print(out),
                        Face.of(along, low ? -1 : 1).word(),
                        meeting.second().name()))
            .also(meeting.second().at(), meeting.second().name() + " is defined here")
            .hint("move or narrow one of them, so that the joint ends with the part"));
  }

  /** A joint that the first part enters towards another face than the one that meets. */
  static Joint entering(Meeting meeting, Face towards, Box contact) {
    boolean glued = meeting.entry().yes("glue", false);
    return new Joint(
        meeting.entry().kind(),
        meeting.first().name(),
        meeting.face(),
        meeting.second().name(),
        towards,
        contact,
        glued,
        glued,
        List.of(),
        Optional.empty(),
        meeting.entry().at());
  }
}
