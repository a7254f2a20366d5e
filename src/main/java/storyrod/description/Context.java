package storyrod.description;

import java.util.Optional;
import storyrod.description.Cell.Use;
import storyrod.description.Node.Scalar;
import storyrod.description.Value.Kind;
import storyrod.measure.Rational;

/**
 * What reading a value needs: the names around it, the arithmetic, where further files are, and
 * where faults go.
 */
record Context(
    Scope scope,
    Evaluator evaluator,
    Figures figures,
    Vocabulary vocabulary,
    Library library,
    Diagnostics diagnostics) {
  Context in(Scope inner) {
    return new Context(inner, evaluator, figures, vocabulary, library, diagnostics);
  }

  Names names() {
    return new Names(scope);
  }

  /** Reports a fault and gives nothing, in one go. */
  <T> Optional<T> fail(Diagnostic fault) {
    diagnostics.add(fault);
    return Optional.empty();
  }

  /** The exact value of a formula; none if it is faulty, which is reported. */
  Optional<Rational> evaluate(Scalar formula, Kind wanted) {
    Cell cell = new Cell("", formula, Use.whole(scope, wanted));
    return evaluator.valueOf(cell).map(Value::amount);
  }
}
