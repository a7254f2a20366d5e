package storyrod.description;

import storyrod.description.Expression.Stretch;

/** What is wrong with a formula, and with which stretch of it; never leaves the package. */
final class FormulaFault extends Exception {
  private static final long serialVersionUID = 1L;

  private final String code;
  private final transient Stretch at;
  private final String hint;

  FormulaFault(String code, Stretch at, String message, String hint) {
    super(message);
    this.code = code;
    this.at = at;
    this.hint = hint;
  }

  Diagnostic in(Node.Scalar formula) {
    Span place = formula.part(at.from(), at.to());
    return Diagnostic.error(code, place, getMessage()).hint(hint);
  }
}
