package storyrod.planset;

import java.util.Optional;
import storyrod.measure.Length;
import storyrod.measure.Rational;

/** What was done less what was planned, with a sign: of the two as they are printed. */
record Differences(Texts texts) {
  private static final String LESS = "\u2212";
  private static final String MORE = "+";

  /** Of two lengths; empty where nothing was measured. */
  String of(Length planned, Optional<Length> made) {
    return made.map(found -> printed(found).minus(printed(planned)))
        .map(
            difference ->
                difference.isZero()
                    ? texts.say("record.exact")
                    : texts.inUnits(in -> signed(difference, in)))
        .orElse("");
  }

  /** In both units each figure has the sign, not the first alone, unless it is printed as none. */
  private static String signed(Length difference, Texts in) {
    String sign = difference.isNegative() ? LESS : MORE;
    boolean isNone = in.format().rounded(difference).isZero();
    return (isNone ? "" : sign) + in.length(difference.abs());
  }

  private Length printed(Length length) {
    return texts.format().rounded(length);
  }

  /** Of two numbers with so many decimals; empty where one of them is not known. */
  String of(Optional<Rational> planned, Optional<Rational> done, int places) {
    return planned
        .flatMap(plan -> done.map(found -> found.plus(plan.negated())))
        .map(difference -> signed(difference, places))
        .orElse("");
  }

  private String signed(Rational difference, int places) {
    boolean less = difference.signum() < 0;
    String figures = texts.figures(less ? difference.negated() : difference, places);
    boolean none = figures.matches("[0.,]*");
    return none ? figures : (less ? LESS : MORE) + figures;
  }
}
