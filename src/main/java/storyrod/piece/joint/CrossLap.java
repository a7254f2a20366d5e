package storyrod.piece.joint;

import java.util.List;
import storyrod.description.Diagnostic;
import storyrod.description.EntryType;
import storyrod.description.Key;
import storyrod.description.ValueType;
import storyrod.geometry.Range;
import storyrod.piece.Joint;
import storyrod.piece.JointEffect;
import storyrod.piece.JointEffect.CutIn;
import storyrod.piece.JointType;
import storyrod.piece.Meeting;

/**
 * Two parts that run through each other, each notched half: in their thickness where they lie flat,
 * in their width where they stand on edge.
 */
public final class CrossLap implements JointType {
  private static final EntryType WORDS =
      new EntryType(
          "cross-lap",
          "Two parts that cross are each notched half; they are described right through each other.",
          List.of(
              Key.required(
                  "end",
                  new ValueType.FaceName(),
                  "The face of the part that goes in; it leads, and the notch opens there."),
              JointKeys.INTO,
              Halving.DEPTH,
              JointKeys.GLUE));

  @Override
  public EntryType words() {
    return WORDS;
  }

  @Override
  public boolean crosses() {
    return true;
  }

  @Override
  public JointEffect effect(Meeting meeting) {
    Halving halving = new Halving(meeting, meeting.touched());
    List<Diagnostic> faults = halving.faults();
    List<CutIn> cuts = faults.isEmpty() ? halving.cuts(meeting.contact()) : List.of();
    return new JointEffect(cuts, joint(meeting, halving), faults);
  }

  private static Joint joint(Meeting meeting, Halving halving) {
    Range plane = new Range(halving.plane(), halving.plane());
    return JointKeys.entering(
        meeting, meeting.face(), meeting.contact().with(meeting.axis(), plane));
  }
}
