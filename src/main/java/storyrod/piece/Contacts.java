package storyrod.piece;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.Entry;
import storyrod.description.FaceRef;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;

/** Finds where the two parts of a joint touch, or says why they do not. */
final class Contacts {
  private final Map<String, Blank> blanks;
  private final LengthFormat format;

  private final SlantedCuts slants;
  private final SolidContacts solids;

  Contacts(Map<String, Blank> blanks, LengthFormat format, SlantedCuts slants) {
    this.blanks = blanks;
    this.format = format;
    this.slants = slants;
    this.solids = new SolidContacts(slants, format);
  }

  /**
   * Either the contact or the fault.
   *
   * @param contact a box in the frame of the first part, flat on one axis unless its end is slanted
   * @param askew more about it, where the boxes of the parts do not say it all
   */
  record Found(Optional<Box> contact, Optional<Askew> askew, Optional<Diagnostic> fault) {}

  Found find(Entry entry, JointType type) {
    FaceRef meeting = type.meeting(entry);
    Blank first = blanks.get(meeting.part());
    Blank second = blanks.get(type.into(entry));
    if (first.name().equals(second.name())) {
      return fault(
          Diagnostic.error("joint-to-itself", entry.at(), first.name() + " is joined to itself")
              .hint("name two different parts"));
    }
    if (type.crosses()) {
      return new Crossings(slants, format).find(entry, first, meeting.face(), second);
    }
    return solids.isAskew(first, meeting.face(), second)
        ? solids.find(entry, first, meeting.face(), second)
        : touch(entry, first, meeting.face(), second);
  }

  private Found touch(Entry entry, Blank first, Face face, Blank second) {
    Length from = first.shoulder().at(face);
    Length to = second.shoulder().at(face.opposite());
    if (!from.equals(to)) {
      return fault(apart(entry, first, face, second));
    }
    Box contact = first.shoulder().with(face.axis(), new Range(from, from));
    for (Axis axis : Axis.values()) {
      if (axis != face.axis()) {
        Range one = first.shoulder().on(axis);
        Range two = second.shoulder().on(axis);
        if (!one.overlaps(two)) {
          return fault(beside(entry, first, second, axis));
        }
        contact = contact.with(axis, one.shared(two));
      }
    }
    return new Found(Optional.of(contact), Optional.empty(), Optional.empty());
  }

  static Found fault(Diagnostic diagnostic) {
    return new Found(Optional.empty(), Optional.empty(), Optional.of(diagnostic));
  }

  private Diagnostic apart(Entry entry, Blank first, Face face, Blank second) {
    Axis axis = face.axis();
    Length from = first.shoulder().at(face);
    Length to = second.shoulder().at(face.opposite());
    Length gap = to.minus(from).times(face.sign());
    String how = gap.isPositive() ? "%s short of it" : "%s past it";
    return Diagnostic.error(
            "parts-do-not-meet",
            entry.at(),
            "%s: %s.%s is at %s = %s, %s: %s.%s is at %s"
                .formatted(
                    entry.kind(),
                    first.name(),
                    face.word(),
                    axis.word(),
                    format.formatWithUnit(from),
                    how.formatted(format.formatWithUnit(gap.abs())),
                    second.name(),
                    face.opposite().word(),
                    format.formatWithUnit(to)))
        .also(first.entry().on(axis).at(), first.name() + " is placed here")
        .also(second.entry().on(axis).at(), second.name() + " is placed here")
        .hint(
            touching(first, second)
                .map(meeting -> otherFace(entry, first, meeting))
                .orElse(
                    "let %s end at `%s.%s` (shoulder to shoulder; the joint itself lengthens it)"
                        .formatted(first.name(), second.name(), face.opposite().word())));
  }

  /** The face with which a part touches another, if there is one. */
  private static Optional<Face> touching(Blank first, Blank second) {
    return Arrays.stream(Face.values())
        .filter(
            face ->
                first.shoulder().at(face).equals(second.shoulder().at(face.opposite()))
                    && Arrays.stream(Axis.values())
                        .filter(axis -> axis != face.axis())
                        .allMatch(
                            axis -> first.shoulder().on(axis).overlaps(second.shoulder().on(axis))))
        .findFirst();
  }

  private static String otherFace(Entry entry, Blank first, Face meeting) {
    Face named = entry.has("through") ? meeting.opposite() : meeting;
    return "they meet at `%s.%s`; did you mean `%s.%s` here?"
        .formatted(first.name(), meeting.word(), first.name(), named.word());
  }

  private Diagnostic beside(Entry entry, Blank first, Blank second, Axis axis) {
    Range one = first.shoulder().on(axis);
    Range two = second.shoulder().on(axis);
    return Diagnostic.error(
            "parts-do-not-meet",
            entry.at(),
            "%s: %s and %s lie beside each other on %s, from %s to %s and from %s to %s"
                .formatted(
                    entry.kind(),
                    first.name(),
                    second.name(),
                    axis.word(),
                    format.formatWithUnit(one.from()),
                    format.formatWithUnit(one.to()),
                    format.formatWithUnit(two.from()),
                    format.formatWithUnit(two.to())))
        .also(first.entry().on(axis).at(), first.name() + " is placed here")
        .also(second.entry().on(axis).at(), second.name() + " is placed here")
        .hint("move one of them, or join it to the part that it really meets");
  }
}
