package storyrod.piece.joint;

import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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

/**
 * A square haunch: at one edge the tenon is cut back, so that its mortise does not break out at the
 * end of the part that takes it, and a stub stays there that keeps the first part from twisting. It
 * is as deep as the tenon is thick and a third of its width if not said (both common practice).
 */
record TenonHaunch(Meeting meeting) {
  static final Key SIDE =
      Key.optional(
          "haunch",
          new ValueType.FaceWord(),
          "The edge at which the tenon is cut back to a square haunch; it reaches to that edge.");
  static final Key DEPTH =
      Key.optional(
          "haunch-depth",
          new ValueType.LengthValue(false),
          "How deep the haunch goes in; as deep as the tenon is thick if not said. Where a groove"
              + " runs there, give it the depth of the groove.");
  static final Key WIDTH =
      Key.optional(
          "haunch-width",
          new ValueType.LengthValue(false),
          "How far the tenon is cut back for it; a third of the width of both if not said.");

  private Entry entry() {
    return meeting.entry();
  }

  /** The edge where it stays; none without a haunch. */
  private Optional<Face> side() {
    return entry().find("haunch", Face.class);
  }

  boolean isAt(Face edge) {
    return side().filter(edge::equals).isPresent();
  }

  private Length depth() {
    return entry().findLength("haunch-depth").orElseGet(() -> entry().length("thickness"));
  }

  private Axis across() {
    return Axis.other(meeting.axis(), meeting.first().thickness());
  }

  private Length partWidth() {
    return meeting.first().shoulder().size(across());
  }

  /** How wide it is, beside a tenon with some shoulder at its other edge. */
  Length width(Length shoulder) {
    return entry()
        .findLength("haunch-width")
        .orElseGet(
            () ->
                partWidth().minus(shoulder).dividedBy(3, RoundingMode.HALF_EVEN).max(Length.ZERO));
  }

  /** What stays at its edge, beside a tenon; nothing without a haunch. */
  Optional<Haunch> beside(Box tenon) {
    return side().map(side -> new Haunch(side, box(tenon, side)));
  }

  private Box box(Box tenon, Face side) {
    Length inner = tenon.at(side);
    Length outer = meeting.first().shoulder().at(side);
    Range reach = meeting.contact().on(meeting.axis()).extended(meeting.face().sign(), depth());
    return tenon
        .with(side.axis(), new Range(inner.min(outer), inner.max(outer)))
        .with(meeting.axis(), reach);
  }

  /** The shallow socket that it fills, beside the mortise. */
  Cut.Trench socket(Haunch haunch) {
    return new Cut.Trench(
        Cut.Trench.HAUNCH_SOCKET,
        meeting.touched(),
        haunch.box(),
        depth(),
        Optional.of(meeting.first().name()),
        entry().at());
  }

  /** What is wrong with it, beside a tenon of some length with a shoulder at its other edge. */
  List<Diagnostic> faults(Length tenon, Length shoulder) {
    if (side().isEmpty()) {
      return Stream.of("haunch-depth", "haunch-width")
          .filter(entry()::has)
          .map(this::noHaunch)
          .toList();
    }
    if (side().get().axis() != across()) {
      return List.of(notAnEdge());
    }
    if (entry().has("top-shoulder") && isAt(entry().placed(Face.TOP))) {
      return List.of(twoWidths());
    }
    Length width = width(shoulder);
    boolean leavesTenon = width.plus(shoulder).isShorterThan(partWidth());
    return Stream.of(
            depth().isShorterThan(tenon) ? Optional.<Diagnostic>empty() : Optional.of(deep(tenon)),
            leavesTenon || !entry().has("haunch-width")
                ? Optional.<Diagnostic>empty()
                : Optional.of(wide(width, shoulder)))
        .flatMap(Optional::stream)
        .toList();
  }

  /** Its socket must lie inside the part that takes it; a tenon's own place is asked elsewhere. */
  List<Diagnostic> outsideFaults(Haunch haunch) {
    Face side = haunch.side();
    Length out = haunch.box().at(side).minus(meeting.second().box().at(side)).times(side.sign());
    return out.isPositive() ? List.of(outside(side, out)) : List.of();
  }

  private static Diagnostic fault(Entry entry, String key, String message) {
    return Diagnostic.error("tenon-haunch", entry.at(key), message);
  }

  private Diagnostic noHaunch(String key) {
    return fault(entry(), key, "`%s` says nothing without `haunch`".formatted(key))
        .hint("say at which edge the haunch is, as in `haunch: top`, or leave it out");
  }

  private Diagnostic notAnEdge() {
    return fault(
            entry(),
            "haunch",
            "the tenon of %s has no edge at its %s"
                .formatted(meeting.first().name(), side().orElseThrow().word()))
        .hint(
            "write `haunch: %s` or `haunch: %s`"
                .formatted(Face.of(across(), -1).word(), Face.of(across(), 1).word()));
  }

  private Diagnostic twoWidths() {
    return fault(
            entry(),
            "top-shoulder",
            "at the top of this tenon is a haunch, which reaches to the edge and leaves no shoulder")
        .hint("leave `top-shoulder` out; `haunch-width` says how far the tenon is cut back there");
  }

  private Diagnostic deep(Length tenon) {
    return fault(
            entry(),
            entry().has("haunch-depth") ? "haunch-depth" : "haunch",
            "the haunch is %s deep, but its tenon is only %s long"
                .formatted(meeting.print(depth()), meeting.print(tenon)))
        .hint(
            "make it shallower: as deep as the groove it fills, or as the tenon is thick, is common"
                + " practice");
  }

  private Diagnostic wide(Length width, Length shoulder) {
    return fault(
            entry(),
            "haunch-width",
            "a haunch of %s beside a shoulder of %s leaves no tenon: %s is %s wide"
                .formatted(
                    meeting.print(width),
                    meeting.print(shoulder),
                    meeting.first().name(),
                    meeting.print(partWidth())))
        .also(meeting.first().at(), meeting.first().name() + " is defined here")
        .hint("a third of the tenon's width is common practice; leave `haunch-width` out for it");
  }

  private Diagnostic outside(Face side, Length out) {
    return fault(
            entry(),
            "haunch",
            "the haunch of %s reaches %s past the %s of %s"
                .formatted(
                    meeting.first().name(),
                    meeting.print(out),
                    side.word(),
                    meeting.second().name()))
        .also(meeting.second().at(), meeting.second().name() + " is defined here")
        .hint("a haunch reaches to the edge of its part: move or narrow one of the two");
  }
}
