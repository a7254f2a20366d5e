package storyrod.description;

import java.util.List;
import java.util.Optional;
import storyrod.description.Expression.Both;
import storyrod.description.Expression.Comparison;
import storyrod.description.Expression.Not;
import storyrod.description.Expression.Stretch;

/** Parses a condition: {@code not} before a comparison, {@code and} before {@code or}. */
final class ConditionParser {
  /** The longer signs first, for they begin like the shorter ones. */
  private static final List<String> SIGNS = List.of("<=", ">=", "<", ">", "=");

  private final FormulaScanner scanner;
  private final Sum sum;

  ConditionParser(FormulaScanner scanner, Sum sum) {
    this.scanner = scanner;
    this.sum = sum;
  }

  /** How a value on one side of a comparison is parsed. */
  interface Sum {
    Expression parse() throws FormulaFault;
  }

  Expression condition() throws FormulaFault {
    Expression left = all();
    while (scanner.takeWord("or")) {
      left = new Both(false, left, all());
    }
    return left;
  }

  private Expression all() throws FormulaFault {
    Expression left = one();
    while (scanner.takeWord("and")) {
      left = new Both(true, left, one());
    }
    return left;
  }

  private Expression one() throws FormulaFault {
    int start = scanner.at();
    if (scanner.takeWord("not")) {
      Expression of = one();
      return new Not(of, new Stretch(start, of.at().to()));
    }
    Expression left = sum.parse();
    Optional<String> sign = scanner.takeSign(SIGNS);
    if (sign.isEmpty()) {
      throw scanner.unexpected("a comparison", "compare it: `shelves > 0` or `front = inset`");
    }
    return new Comparison(sign.get(), left, sum.parse());
  }
}
