package storyrod.piece;

import java.util.List;
import storyrod.description.Diagnostic;

/**
 * All that a joint does.
 *
 * @param faults what is wrong with it; if any is an error the cuts and the joint are not used
 */
public record JointEffect(List<CutIn> cuts, Joint joint, List<Diagnostic> faults) {
  public JointEffect {
    cuts = List.copyOf(cuts);
    faults = List.copyOf(faults);
  }

  /** A cut and the full name of the part it is made in. */
  public record CutIn(String part, Cut cut) {}
}
