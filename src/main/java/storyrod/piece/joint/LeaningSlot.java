package storyrod.piece.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.description.Diagnostic;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Askew;
import storyrod.piece.Blank;
import storyrod.piece.JointEffect;
import storyrod.piece.JointEffect.CutIn;
import storyrod.piece.Meeting;
import storyrod.piece.Slanted;

/**
 * The slot for a part that goes in at an angle, its end bevelled to the face it meets: the walls
 * lean as the part does, the bottom is level, and it runs right across.
 */
final class LeaningSlot {
  private static final double SQUARE = 1e-6;

  private final Meeting meeting;
  private final Askew askew;
  private final String term;
  private final Blank second;

  /** The face of the second part, in its own frame, that is met. */
  private final Face from;

  LeaningSlot(Meeting meeting, Askew askew, String term) {
    this.meeting = meeting;
    this.askew = askew;
    this.term = term;
    this.second = meeting.second();
    this.from = Face.nearest(askew.intoSecond().negate());
  }

  JointEffect effect() {
    Vector3D thick = askew.seenBySecond(Face.of(meeting.first().thickness(), 1).normal());
    Optional<Axis> across =
        List.of(Axis.values()).stream()
            .filter(axis -> axis != from.axis())
            .filter(axis -> liesAlong(thick, Axis.other(axis, from.axis())))
            .findFirst();
    boolean flat = -askew.intoSecond().dot(from.normal()) > 1 - SQUARE;
    if (across.isEmpty() || !flat) {
      return failed(List.of(impossible()));
    }
    Slanted.Housing slot = slot(across.get());
    List<Diagnostic> faults = new ArrayList<>(depthFaults());
    faults.addAll(edgeFaults(slot));
    return faults.isEmpty()
        ? new JointEffect(
            List.of(new CutIn(second.name(), slot)),
            JointKeys.plain(meeting, meeting.entry().yes("glue", false)),
            faults)
        : failed(faults);
  }

  private JointEffect failed(List<Diagnostic> faults) {
    return new JointEffect(List.of(), JointKeys.plain(meeting, false), faults);
  }

  /** Whether the slot can run along an axis: the part's thickness has no share in it. */
  private static boolean liesAlong(Vector3D thick, Axis run) {
    return Math.abs(thick.dot(Face.of(run, 1).normal())) < SQUARE;
  }

  private Slanted.Housing slot(Axis across) {
    Length depth = meeting.entry().length("depth");
    double[] at =
        askew.cornersInSecond().stream()
            .mapToDouble(corner -> corner.dot(Face.of(across, 1).normal()))
            .sorted()
            .toArray();
    Vector3D inwards = askew.seenBySecond(meeting.face().normal());
    double lean = inwards.dot(Face.of(across, 1).normal()) / -inwards.dot(from.normal());
    return new Slanted.Housing(
        term,
        from,
        across,
        new Range(Length.nearest(at[0]), Length.nearest(at[at.length - 1])),
        second.box().on(Axis.other(from.axis(), across)),
        second.box().at(from),
        depth,
        Length.nearest(depth.toMm() * lean),
        Optional.of(meeting.first().name()),
        meeting.entry().at());
  }

  private List<Diagnostic> depthFaults() {
    Length depth = meeting.entry().length("depth");
    Length have = second.box().size(from.axis());
    return depth.isShorterThan(have)
        ? List.of()
        : List.of(
            Diagnostic.error(
                    "cut-too-deep",
                    meeting.entry().at("depth"),
                    "%s is %s deep, but %s is only %s there"
                        .formatted(term, meeting.print(depth), second.name(), meeting.print(have)))
                .also(second.at(), second.name() + " is defined here")
                .hint("make it shallower; a third to a half of the thickness is common practice"));
  }

  private List<Diagnostic> edgeFaults(Slanted.Housing slot) {
    Range have = second.box().on(slot.across());
    Box removed = slot.removed();
    boolean inside =
        removed.on(slot.across()).from().isLongerThan(have.from())
            && removed.on(slot.across()).to().isShorterThan(have.to());
    return inside
        ? List.of()
        : List.of(
            Diagnostic.error(
                    "slot-at-edge",
                    meeting.entry().at("end"),
                    "this %s leans, and breaks out at the edge of %s"
                        .formatted(term, second.name()))
                .also(second.at(), second.name() + " is defined here")
                .hint(
                    "move the part inwards; a slot for a part that leans needs wood on both sides"));
  }

  private Diagnostic impossible() {
    return Diagnostic.error(
            "joint-askew",
            meeting.entry().at(),
            "%s leans the wrong way for a %s in %s: its thickness must lean across the slot"
                .formatted(meeting.first().name(), term, second.name()))
        .hint("write `screws`, or `butt` with glue");
  }
}
