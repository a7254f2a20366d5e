package storyrod.piece.joint;

import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.description.Key;
import storyrod.description.ValueType;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Blank;
import storyrod.piece.Cut;
import storyrod.piece.JointEffect.CutIn;
import storyrod.piece.Meeting;

/**
 * Two parts cut into each other so that they lie in one plane: the first is cut away below a plane,
 * the second above it. The plane lies in the middle of what both are thick unless a depth is given.
 *
 * @param onto the face of the second part from which it is cut, on which the first part lies
 */
record Halving(Meeting meeting, Face onto) {
  static final Key DEPTH =
      Key.optional(
          "depth",
          new ValueType.LengthValue(false),
          "How deep the part that takes it is cut; half of what both are thick if not said.");

  Axis across() {
    return onto.axis();
  }

  /** Where the two meet, on the axis across the halves. */
  Length plane() {
    Range shared =
        meeting.first().shoulder().on(across()).shared(meeting.second().shoulder().on(across()));
    return meeting
        .entry()
        .findLength("depth")
        .map(depth -> meeting.second().shoulder().at(onto).minus(depth.times(onto.sign())))
        .orElseGet(() -> shared.from().plus(shared.length().dividedBy(2, RoundingMode.HALF_EVEN)));
  }

  /** Both cuts, over a place that both parts take. */
  List<CutIn> cuts(Box place) {
    return List.of(
        cut(meeting.first(), onto.opposite(), meeting.second(), place),
        cut(meeting.second(), onto, meeting.first(), place));
  }

  private CutIn cut(Blank part, Face from, Blank other, Box place) {
    Length top = part.box().at(from);
    Box removed = place.with(across(), new Range(plane().min(top), plane().max(top)));
    return new CutIn(
        part.name(),
        new Cut.Trench(
            meeting.entry().kind(),
            from,
            removed,
            removed.size(across()),
            Optional.of(other.name()),
            meeting.entry().at()));
  }

  /** A depth must leave something of both parts, and reach into both. */
  List<Diagnostic> faults() {
    return Stream.of(meeting.second(), meeting.first())
        .filter(
            part -> !Slotted.leavesWood(new Range(plane(), plane()), part.shoulder().on(across())))
        .limit(1)
        .map(this::nothingLeft)
        .toList();
  }

  private Diagnostic nothingLeft(Blank part) {
    Range range = part.shoulder().on(across());
    return Diagnostic.error(
            "lap-depth",
            meeting.entry().at("depth"),
            "a %s %s deep from the %s of %s leaves nothing of %s, which is %s there"
                .formatted(
                    meeting.entry().kind(),
                    meeting.print(meeting.entry().length("depth")),
                    onto.word(),
                    meeting.second().name(),
                    part.name(),
                    meeting.print(range.length())))
        .also(part.at(), part.name() + " is defined here")
        .hint("leave `depth` out: then each part loses half of what both are thick");
  }
}
