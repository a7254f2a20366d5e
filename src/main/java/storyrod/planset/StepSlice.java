package storyrod.planset;

import java.util.List;
import storyrod.planset.StepEntry.SizeRow;

/**
 * What of a step stands on one page: all of it, or where it is higher than a page, some.
 *
 * @param from its first sentence here, counted from 0
 * @param to the sentence after its last here
 * @param below whether the step's sizes stand below the sentences of its pages, not beside them
 * @param sizes those that stand here, in rows
 * @param besides whether what stands beside its sentences stands here
 * @param begins whether its title, its picture and its lists stand here
 * @param ends whether it ends here
 */
public record StepSlice(
    int from,
    int to,
    boolean below,
    List<List<SizeRow>> sizes,
    boolean besides,
    boolean begins,
    boolean ends,
    double heightMm) {
  public StepSlice {
    sizes = List.copyOf(sizes);
  }

  /** The same page of the step with what stands beside its sentences, so much higher. */
  StepSlice withBesides(double moreMm) {
    return new StepSlice(from, to, below, sizes, true, begins, ends, heightMm + moreMm);
  }

  static StepSlice whole(StepEntry step, boolean besides, double heightMm) {
    int sentences = step.text().sentences().size();
    return new StepSlice(0, sentences, false, List.of(), besides, true, true, heightMm);
  }
}
