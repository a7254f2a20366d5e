package storyrod.drawing;

import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.measure.Unit;
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
      return format.format(total);
    }
    for (LengthFormat figures : new LengthFormat[] {format, format.forBits()}) {
      if (figures.rounded(step).times(steps).equals(format.rounded(total))) {
        return words.say("part.chain", steps, figures.format(step), format.format(total));
      }
    }
    LengthFormat other = otherUnit();
    LengthFormat fine = format.forBits();
    return other.rounded(step).equals(step) && step.times(steps).equals(total)
        ? words.say("part.chain-exact", steps, other.formatWithUnit(step), fine.format(total))
        : words.say("part.chain-equal", steps, format.format(total));
  }

  private LengthFormat otherUnit() {
    Unit other = format.unit() == Unit.INCH ? Unit.MM : Unit.INCH;
    return format.in(other).forBits();
  }
}
