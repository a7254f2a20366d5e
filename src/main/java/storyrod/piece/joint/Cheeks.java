package storyrod.piece.joint;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.Entry;
import storyrod.description.Key;
import storyrod.description.ValueType;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Haunch;
import storyrod.piece.Meeting;

/** Where a tenon or a tongue lies in the thickness of its part, and what can be wrong with that. */
final class Cheeks {
  static final Key THICKNESS =
      Key.required("thickness", new ValueType.LengthValue(false), "How thick it is.");
  static final Key SETBACK =
      Key.optional(
          "setback",
          new ValueType.Allowance(),
          "How far it lies from the face that `from` names; in the middle if not said.");
  static final Key FROM =
      Key.optional(
          "from", new ValueType.FaceWord(), "The face of the part from which it is set back.");

  private Cheeks() {}

  /** Its stretch of the thickness of the part that goes in. */
  static Range across(Meeting meeting) {
    Entry entry = meeting.entry();
    Length thick = entry.length("thickness");
    Range whole = meeting.first().shoulder().on(meeting.first().thickness());
    Optional<Face> from = entry.find("from", Face.class);
    if (from.isEmpty()) {
      Length off = whole.length().minus(thick).dividedBy(2, RoundingMode.HALF_EVEN);
      return new Range(whole.from().plus(off), whole.from().plus(off).plus(thick));
    }
    Length setback = entry.length("setback");
    return from.get().sign() < 0
        ? new Range(whole.from().plus(setback), whole.from().plus(setback).plus(thick))
        : new Range(whole.to().minus(setback).minus(thick), whole.to().minus(setback));
  }

  /** The end of the part cut down to it. */
  static Cut.Tenon cut(Meeting meeting, Box tenon) {
    return cut(meeting, tenon, Optional.empty());
  }

  /** The same with a haunch left beside it. */
  static Cut.Tenon cut(Meeting meeting, Box tenon, Optional<Haunch> haunch) {
    Range reach = tenon.on(meeting.axis());
    return new Cut.Tenon(
        meeting.entry().kind(),
        meeting.face(),
        meeting.first().box().with(meeting.axis(), reach),
        tenon,
        haunch,
        Optional.of(meeting.second().name()),
        meeting.entry().at());
  }

  /** Whatever keeps it from being laid out at all; its place must not be asked for then. */
  static List<Diagnostic> faults(Meeting meeting) {
    List<Diagnostic> faults = new ArrayList<>();
    Entry entry = meeting.entry();
    Axis thickness = meeting.first().thickness();
    if (meeting.axis() == thickness) {
      faults.add(onTheFace(meeting));
    }
    if (entry.has("setback") != entry.has("from")) {
      faults.add(half(entry));
    } else if (entry
        .find("from", Face.class)
        .filter(face -> face.axis() != thickness)
        .isPresent()) {
      faults.add(wrongFace(meeting));
    }
    if (!meeting.axis().equals(thickness) && isTooThick(meeting)) {
      faults.add(tooThick(meeting));
    }
    return faults;
  }

  private static boolean isTooThick(Meeting meeting) {
    Length taken =
        meeting
            .entry()
            .findLength("setback")
            .orElse(Length.ZERO)
            .plus(meeting.entry().length("thickness"));
    return taken.isLongerThan(meeting.first().shoulder().size(meeting.first().thickness()));
  }

  private static Diagnostic onTheFace(Meeting meeting) {
    return Diagnostic.error(
            "tenon-face",
            meeting.entry().at("end"),
            "a %s is cut on an end or an edge, but %s is the broad face of %s"
                .formatted(
                    meeting.entry().kind(), meeting.entry().face("end"), meeting.first().name()))
        .also(meeting.first().at(), meeting.first().name() + " is defined here")
        .hint("name one of its ends or edges, or join it with a dado or screws");
  }

  private static Diagnostic half(Entry entry) {
    String have = entry.has("from") ? "from" : "setback";
    String lack = entry.has("from") ? "setback" : "from";
    return Diagnostic.error(
            "tenon-setback", entry.at(have), "`%s` says nothing without `%s`".formatted(have, lack))
        .hint("give both, as in `setback: 1/4 in, from: front`, or neither: then it is centred");
  }

  private static Diagnostic wrongFace(Meeting meeting) {
    Axis thickness = meeting.first().thickness();
    return Diagnostic.error(
            "tenon-setback",
            meeting.entry().at("from"),
            "%s has no broad face at its %s"
                .formatted(
                    meeting.first().name(), meeting.entry().expect("from", Face.class).word()))
        .hint(
            "name one of its faces: `from: %s` or `from: %s`"
                .formatted(Face.of(thickness, -1).word(), Face.of(thickness, 1).word()));
  }

  private static Diagnostic tooThick(Meeting meeting) {
    Length have = meeting.first().shoulder().size(meeting.first().thickness());
    Entry entry = meeting.entry();
    String setBack =
        entry
            .findLength("setback")
            .map(by -> ", set back by %s,".formatted(meeting.print(by)))
            .orElse("");
    return Diagnostic.error(
            "tenon-too-thick",
            entry.at("thickness"),
            "a %s %s thick%s does not fit in %s, which is %s thick"
                .formatted(
                    entry.kind(),
                    meeting.print(entry.length("thickness")),
                    setBack,
                    meeting.first().name(),
                    meeting.print(have)))
        .also(meeting.first().at(), meeting.first().name() + " is defined here")
        .hint("about a third of the thickness is common practice");
  }
}
