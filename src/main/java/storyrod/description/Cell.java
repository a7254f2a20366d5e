package storyrod.description;

import java.util.Optional;
import storyrod.description.Node.Scalar;
import storyrod.description.Value.Kind;

/** A formula with its place, which the {@link Evaluator} works out once. */
final class Cell {
  /** Which of a range's two formulas is meant, or the whole of a single one. */
  enum Side {
    WHOLE,
    FROM,
    TO
  }

  /** How far the work on a cell is. */
  enum State {
    NEW,
    OPEN,
    DONE
  }

  private final String name;
  private final Scalar text;
  private final Scope scope;
  private final Side side;
  private final Kind wanted;
  private final boolean aboveZero;
  State state = State.NEW;
  Optional<Value> value = Optional.empty();

  Cell(String name, Scalar text, Use use) {
    this.name = name;
    this.text = text;
    this.scope = use.scope();
    this.side = use.side();
    this.wanted = use.wanted();
    this.aboveZero = use.aboveZero();
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
  }

  /** A cell whose formula is missing or of the wrong shape, which is reported elsewhere. */
  static Cell broken(String name, Span at, Scope scope) {
    Cell cell = new Cell(name, new Scalar("", false, at), Use.whole(scope, Kind.LENGTH));
    cell.state = State.DONE;
    return cell;
  }

  String name() {
    return name;
  }

  Scalar text() {
    return text;
  }

  Scope scope() {
    return scope;
  }

  Kind wanted() {
    return wanted;
  }

  /** Whether others may build on a value; where not, it is reported where it is read. */
  boolean accepts(Value result) {
    return !aboveZero || result.amount().signum() > 0;
  }

  Expression parse() throws FormulaFault {
    return switch (side) {
      case WHOLE -> FormulaParser.formula(text.text());
      case FROM -> FormulaParser.range(text.text()).from();
      case TO -> FormulaParser.range(text.text()).to();
    };
  }
}
