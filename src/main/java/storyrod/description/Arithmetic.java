package storyrod.description;

import java.util.function.BinaryOperator;
import java.util.function.Function;
import storyrod.description.Expression.Both;
import storyrod.description.Expression.Call;
import storyrod.description.Expression.Comparison;
import storyrod.description.Expression.Either;
import storyrod.description.Expression.Literal;
import storyrod.description.Expression.Name;
import storyrod.description.Expression.Negated;
import storyrod.description.Expression.Not;
import storyrod.description.Expression.Operation;
import storyrod.description.Value.Kind;
import storyrod.measure.LengthFormat;
import storyrod.measure.Rational;
import storyrod.measure.Unit;

/**
 * Works out formulas exactly and watches what is a length and what a number.
 *
 * <p>A bare number becomes a length in the project's unit where it meets a length in a sum, a
 * difference, min or max. A product of a bare number and a plain one is still bare.
 */
final class Arithmetic {
  private static final int MOST_BITS = 2048;
  private static final String DIMENSION = "dimension";

  private final Unit unit;
  private final LengthFormat printed;

  /**
   * Arithmetic in a description.
   *
   * @param unit what its bare numbers are
   * @param printed how the plan set prints lengths, whose figures {@code printable} gives
   */
  Arithmetic(Unit unit, LengthFormat printed) {
    this.unit = unit;
    this.printed = printed;
  }

  /** The value of a formula, all of whose names have values. */
  Value evaluate(Expression formula, Function<Name, Value> names) throws FormulaFault {
    return switch (formula) {
      case Literal literal -> literal.value();
      case Name name -> names.apply(name);
      case Negated negated -> {
        Value value = evaluate(negated.of(), names);
        yield new Value(value.amount().negated(), value.kind());
      }
      case Operation operation -> bounded(operation, operation(operation, names));
      case Call call -> call(call, names);
      case Comparison comparison -> compared(comparison, names);
      case Both both -> Value.truth(holds(both, names));
      case Not not -> Value.truth(!evaluate(not.of(), names).holds());
      case Either either -> either(either, names);
    };
  }

  private boolean holds(Both both, Function<Name, Value> names) throws FormulaFault {
    boolean left = evaluate(both.left(), names).holds();
    return left == both.and() ? evaluate(both.right(), names).holds() : left;
  }

  private Value compared(Comparison comparison, Function<Name, Value> names) throws FormulaFault {
    Operation difference = new Operation('-', comparison.left(), comparison.right());
    int sign = operation(difference, names).amount().signum();
    return Value.truth(
        switch (comparison.sign()) {
          case "<" -> sign < 0;
          case ">" -> sign > 0;
          case "<=" -> sign <= 0;
          case ">=" -> sign >= 0;
          default -> sign == 0;
        });
  }

  /** Only the value that counts is worked out, so that the other may make no sense. */
  private Value either(Either either, Function<Name, Value> names) throws FormulaFault {
    return evaluate(
        evaluate(either.condition(), names).holds() ? either.then() : either.otherwise(), names);
  }

  private static Value bounded(Operation at, Value value) throws FormulaFault {
    if (value.amount().numerator().bitLength() > MOST_BITS
        || value.amount().denominator().bitLength() > MOST_BITS) {
      throw new FormulaFault(
          "too-large", at.at(), "this grows too large to be worked with", "use smaller numbers");
    }
    return value;
  }

  private Value operation(Operation both, Function<Name, Value> names) throws FormulaFault {
    Value left = evaluate(both.left(), names);
    Value right = evaluate(both.right(), names);
    return switch (both.operator()) {
      case '+' -> joined(new Pair(both, left, right), Rational::plus);
      case '-' -> joined(new Pair(both, left, right), Rational::minus);
      case '*' -> product(new Pair(both, left, right));
      case '/' -> quotient(new Pair(both, left, right));
      default -> throw new IllegalStateException("bug: operator " + both.operator());
    };
  }

  private record Pair(Operation at, Value left, Value right) {}

  private Value call(Call call, Function<Name, Value> names) throws FormulaFault {
    Expression soFar = call.arguments().getFirst();
    Value best = evaluate(soFar, names);
    switch (call.function()) {
      case Expression.ROUND_UP -> {
        return roundedUp(best, soFar);
      }
      case Expression.PRINTABLE -> {
        return printable(best, soFar);
      }
      default -> {}
    }
    boolean largest = call.function().equals("max");
    for (Expression next : call.arguments().subList(1, call.arguments().size())) {
      Pair pair = new Pair(new Operation('+', soFar, next), best, evaluate(next, names));
      best = joined(pair, (a, b) -> a.compareTo(b) >= 0 == largest ? a : b);
      soFar = next;
    }
    return best;
  }

  private Value roundedUp(Value value, Expression formula) throws FormulaFault {
    return new Value(number(value, formula).roundedUp(), Kind.NUMBER);
  }

  /** Down, so that half of a thickness does not become more than half of it. */
  private Value printable(Value value, Expression formula) throws FormulaFault {
    Rational step = Rational.of(printed.step().ticks(), 1);
    Rational below = length(value, formula).dividedBy(step).negated().roundedUp();
    return Value.length(below.negated().times(step));
  }

  private Value joined(Pair pair, BinaryOperator<Rational> how) throws FormulaFault {
    Kind kind = joinedKind(pair);
    Rational left = as(kind, pair.left());
    return new Value(how.apply(left, as(kind, pair.right())), kind);
  }

  private static Kind joinedKind(Pair pair) throws FormulaFault {
    Kind left = pair.left().kind();
    Kind right = pair.right().kind();
    if (left == right || right == Kind.BARE) {
      return left;
    }
    if (left == Kind.BARE) {
      return right;
    }
    Expression number = left == Kind.NUMBER ? pair.at().left() : pair.at().right();
    throw new FormulaFault(
        DIMENSION,
        number.at(),
        "this is a plain number and stands beside a length",
        "multiply it by a length, as in `shelves * 2 in`");
  }

  private Rational as(Kind kind, Value value) {
    boolean becomesLength = kind == Kind.LENGTH && value.kind() == Kind.BARE;
    return becomesLength ? inTicks(value.amount()) : value.amount();
  }

  private Rational inTicks(Rational bare) {
    return bare.times(Rational.of(unit.one().ticks(), 1));
  }

  private static Value product(Pair pair) throws FormulaFault {
    if (pair.left().isLength() && pair.right().isLength()) {
      throw new FormulaFault(
          DIMENSION,
          pair.at().at(),
          "a length times a length is no length",
          "multiply a length by a plain number");
    }
    Rational product = pair.left().amount().times(pair.right().amount());
    return new Value(product, scaledKind(pair));
  }

  private static Kind scaledKind(Pair pair) {
    if (pair.left().isLength() || pair.right().isLength()) {
      return Kind.LENGTH;
    }
    return pair.left().kind() == pair.right().kind() ? pair.left().kind() : Kind.BARE;
  }

  private static Value quotient(Pair pair) throws FormulaFault {
    if (pair.right().amount().signum() == 0) {
      throw new FormulaFault(
          "division-by-zero",
          pair.at().right().at(),
          "this is zero and something is divided by it",
          "divide by a number that is not zero");
    }
    Rational quotient = pair.left().amount().dividedBy(pair.right().amount());
    if (!pair.right().isLength()) {
      return new Value(quotient, scaledKind(pair));
    }
    if (!pair.left().isLength()) {
      throw new FormulaFault(
          DIMENSION,
          pair.at().at(),
          "a number divided by a length is neither number nor length",
          "divide a length by a length, or give the first number a unit");
    }
    return new Value(quotient, Kind.NUMBER);
  }

  /** A formula's result as a length in ticks. */
  Rational length(Value value, Expression formula) throws FormulaFault {
    if (value.kind() == Kind.NUMBER) {
      throw new FormulaFault(
          DIMENSION,
          formula.at(),
          "expected a length, found the plain number " + value.amount(),
          "multiply it by a length, as in `shelves * 2 in`");
    }
    return as(Kind.LENGTH, value);
  }

  /** A formula's result as a plain number. */
  Rational number(Value value, Expression formula) throws FormulaFault {
    if (value.isLength()) {
      throw new FormulaFault(
          DIMENSION,
          formula.at(),
          "expected a plain number, found a length",
          "leave the unit away, or divide by a length");
    }
    return value.amount();
  }
}
