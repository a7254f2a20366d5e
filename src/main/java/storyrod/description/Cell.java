package storyrod.description;

import java.util.List;
import java.util.Optional;
import storyrod.description.Node.Scalar;
import storyrod.description.Value.Kind;
import storyrod.measure.Rational;

/** A value with its place, which the {@link Evaluator} works out once. */
final class Cell {
  /** Which of a range's two formulas is meant, the whole of a single one, or a condition. */
  enum Side {
    WHOLE,
    FROM,
    TO,
    CONDITION
  }

  /** How far the work on a cell is. */
  enum State {
    NEW,
    OPEN,
    DONE
  }

  private final String name;
  private final Scalar text;
  private final Use use;
  private final Optional<Derivation> derivation;
  State state = State.NEW;
  Optional<Value> value = Optional.empty();

  Cell(String name, Scalar text, Use use) {
    this(name, text, use, Optional.empty());
  }

  private Cell(String name, Scalar text, Use use, Optional<Derivation> derivation) {
    this.name = name;
    this.text = text;
    this.use = use;
    this.derivation = derivation;
  }

  /** Where a formula's names are looked up, and what it is to give. */
  record Use(Scope scope, Side side, Kind wanted, boolean aboveZero) {
    Use(Scope scope, Side side, Kind wanted) {
      this(scope, side, wanted, false);
    }

    static Use thickness(Scope scope) {
      return new Use(scope, Side.WHOLE, Kind.LENGTH, true);
    }

    static Use whole(Scope scope, Kind wanted) {
      return new Use(scope, Side.WHOLE, wanted);
    }

    static Use condition(Scope scope) {
      return new Use(scope, Side.CONDITION, Kind.TRUTH);
    }
  }

  /** A value that is worked out from other cells without a formula of its own. */
  record Derivation(List<Cell> needs, Working working) {
    Derivation {
      needs = List.copyOf(needs);
    }
  }

  /** From the amounts of the cells needed to an amount. */
  interface Working {
    Rational of(List<Rational> amounts) throws FormulaFault;
  }

  /** A cell whose formula is missing or of the wrong shape, which is reported elsewhere. */
  static Cell broken(String name, Span at, Scope scope) {
    Cell cell = new Cell(name, new Scalar("", false, at), Use.whole(scope, Kind.LENGTH));
    cell.state = State.DONE;
    return cell;
  }

  /** A length worked out from others. */
  static Cell length(String name, Scalar text, Scope scope, Derivation derivation) {
    return new Cell(name, text, Use.whole(scope, Kind.LENGTH), Optional.of(derivation));
  }

  /** A cell with a value from the start. */
  static Cell of(String name, Scalar text, Scope scope, Value value) {
    Cell cell = new Cell(name, text, Use.whole(scope, value.kind()));
    cell.state = State.DONE;
    cell.value = Optional.of(value);
    return cell;
  }

  String name() {
    return name;
  }

  Scalar text() {
    return text;
  }

  Scope scope() {
    return use.scope();
  }

  Kind wanted() {
    return use.wanted();
  }

  Optional<Derivation> derivation() {
    return derivation;
  }

  /** Whether others may build on a value; where not, it is reported where it is read. */
  boolean accepts(Value result) {
    return !use.aboveZero() || result.amount().signum() > 0;
  }

  Expression parse() throws FormulaFault {
    return switch (use.side()) {
      case WHOLE -> FormulaParser.formula(text.text());
      case FROM -> FormulaParser.range(text.text()).from();
      case TO -> FormulaParser.range(text.text()).to();
      case CONDITION -> FormulaParser.condition(text.text());
    };
  }
}
