package storyrod.drawing;

import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.words.Words;

/**
 * What a dimension over equal steps says. A printed step always comes to the printed total, or is
 * exact; otherwise the row is divided, not stepped off, for steps that are off by little are off by
 * much in the end. The total of steps that are exact in the other unit is told as finely as holes
 * are, for it is what the row is checked by.
 */
record EqualSteps(LengthFormat format, Words words) {
  String said(int steps, Length step, Length total) {
    if (steps == 1) {
      return format.told(total);
    }
    for (LengthFormat figures : new LengthFormat[] {format, format.forBits()}) {
      if (adds(steps, step, total, figures)) {
        LengthFormat each = stepsInBoth(steps, step, total) ? figures : figures.alone();
        return words.say("part.chain", steps, each.format(step), format.format(total));
      }
    }
    LengthFormat other = format.other().forBits();
    LengthFormat fine = format.forBits();
    return other.rounded(step).equals(step) && step.times(steps).equals(total)
        ? words.say("part.chain-exact", steps, other.formatWithUnit(step), fine.format(total))
        : words.say("part.chain-equal", steps, format.format(total));
  }

  private boolean adds(int steps, Length step, Length total, LengthFormat figures) {
    return figures.rounded(step).times(steps).equals(format.rounded(total));
  }

  /** The step in the other unit is left out where it would not come to the total in brackets. */
  private boolean stepsInBoth(int steps, Length step, Length total) {
    LengthFormat other = format.other();
    return other.rounded(step).times(steps).equals(other.rounded(total));
  }
}
