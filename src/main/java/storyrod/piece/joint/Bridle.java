package storyrod.piece.joint;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.description.Entry;
import storyrod.description.EntryType;
import storyrod.description.Key;
import storyrod.description.ValueType;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Blank;
import storyrod.piece.Cut;
import storyrod.piece.Extension;
import storyrod.piece.JointEffect;
import storyrod.piece.JointEffect.CutIn;
import storyrod.piece.JointType;
import storyrod.piece.Meeting;

/**
 * The end of one part, with an open mortise, sits astride another that is cut down on both sides to
 * a tongue: at its end a corner, elsewhere a T. The tongue is a third of what both are thick if not
 * said (common practice), and lies in the middle of that.
 */
public final class Bridle implements JointType {
  private static final EntryType WORDS =
      new EntryType(
          "bridle",
          "The end of one part, open in the middle, sits astride another that is thinned there.",
          List.of(
              JointKeys.END,
              JointKeys.INTO,
              Key.optional(
                  "thickness",
                  new ValueType.LengthValue(false),
                  "How thick the tongue in the middle is; a third of what both parts are thick if"
                      + " not said."),
              JointKeys.GLUE));

  @Override
  public EntryType words() {
    return WORDS;
  }

  @Override
  public List<Extension> extensions(Entry entry, Pair parts) {
    return List.of(JointKeys.rightAcross(entry, parts.second()));
  }

  @Override
  public JointEffect effect(Meeting meeting) {
    List<Diagnostic> faults =
        new ArrayList<>(
            JointKeys.squareOnly(meeting, "join them with screws or a tenon, or lay them square"));
    if (faults.isEmpty() && meeting.second().length() == meeting.axis()) {
      faults.add(endToEnd(meeting));
    }
    List<CutIn> cuts = new ArrayList<>();
    if (faults.isEmpty()) {
      Range tongue = tongue(meeting);
      faults.addAll(thicknessFaults(meeting, tongue));
      faults.addAll(JointKeys.outsideFaults(meeting, meeting.second().length()));
      cuts.addAll(faults.isEmpty() ? cuts(meeting, tongue) : List.of());
    }
    return new JointEffect(
        cuts, JointKeys.entering(meeting, meeting.face(), meeting.contact()), faults);
  }

  private static Axis across(Meeting meeting) {
    return Axis.other(meeting.axis(), meeting.second().length());
  }

  /** Where the tongue lies between the two cheeks of the open mortise, which are equal. */
  private static Range tongue(Meeting meeting) {
    Range shared = meeting.contact().on(across(meeting));
    Length thick =
        meeting
            .entry()
            .findLength("thickness")
            .orElseGet(() -> shared.length().dividedBy(3, RoundingMode.HALF_EVEN));
    Length cheek = shared.length().minus(thick).dividedBy(2, RoundingMode.HALF_EVEN);
    return thick.isShorterThan(shared.length())
        ? new Range(shared.from().plus(cheek), shared.to().minus(cheek))
        : shared;
  }

  private static List<CutIn> cuts(Meeting meeting, Range tongue) {
    Box place = JointKeys.place(meeting).with(across(meeting), tongue);
    CutIn mortise =
        new CutIn(
            meeting.first().name(),
            trench(meeting, "open mortise", meeting.face(), place, meeting.second()));
    return Stream.concat(
            Stream.of(mortise),
            Stream.of(Face.of(across(meeting), 1), Face.of(across(meeting), -1))
                .map(side -> cheek(meeting, place, side)))
        .toList();
  }

  /** What the second part loses on one side of the tongue. */
  private static CutIn cheek(Meeting meeting, Box tongue, Face side) {
    Length inner = tongue.at(side);
    Length outer = meeting.second().box().at(side);
    Box removed = tongue.with(side.axis(), new Range(inner.min(outer), inner.max(outer)));
    return new CutIn(
        meeting.second().name(), trench(meeting, "bridle cheek", side, removed, meeting.first()));
  }

  private static Cut trench(Meeting meeting, String term, Face from, Box removed, Blank other) {
    return new Cut.Trench(
        term,
        from,
        removed,
        removed.size(from.axis()),
        Optional.of(other.name()),
        meeting.entry().at());
  }

  private static List<Diagnostic> thicknessFaults(Meeting meeting, Range tongue) {
    return Stream.of(meeting.first(), meeting.second())
        .filter(part -> !Slotted.leavesWood(tongue, part.shoulder().on(across(meeting))))
        .limit(1)
        .map(part -> noCheeks(meeting, part))
        .toList();
  }

  private static Diagnostic noCheeks(Meeting meeting, Blank part) {
    Entry entry = meeting.entry();
    Length shared = meeting.contact().size(across(meeting));
    return Diagnostic.error(
            "bridle-too-thick",
            entry.at("thickness"),
            "a tongue %s thick leaves %s no cheek: both parts share only %s there"
                .formatted(
                    meeting.print(entry.findLength("thickness").orElse(shared)),
                    part.name(),
                    meeting.print(shared)))
        .also(part.at(), part.name() + " is defined here")
        .hint("a third of the thickness is common practice; leave `thickness` out for it");
  }

  private static Diagnostic endToEnd(Meeting meeting) {
    return Diagnostic.error(
            "bridle-in-line",
            meeting.entry().at("end"),
            "a bridle sits astride a side of a part, but %s meets an end of %s"
                .formatted(meeting.entry().face("end"), meeting.second().name()))
        .also(meeting.second().at(), meeting.second().name() + " is defined here")
        .hint(
            "name the part whose end goes astride: `end: %s.%s, into: %s`"
                .formatted(
                    meeting.second().name(), meeting.touched().word(), meeting.first().name()));
  }
}
