package storyrod.description;

import java.util.List;
import java.util.stream.Stream;

/** A formula as parsed; each part of it knows the stretch of the formula's text it came from. */
sealed interface Expression {
  /** The function that gives the next whole number. */
  String ROUND_UP = "round-up";

  /** The function that gives the largest length, not above, that the plan set prints exactly. */
  String PRINTABLE = "printable";

  Stretch at();

  /** From one position in a formula up to but not including another. */
  record Stretch(int from, int to) {}

  /** A number that is written out. */
  record Literal(Value value, Stretch at) implements Expression {}

  /** A name, such as {@code width} or {@code left-side.right}. */
  record Name(String path, Stretch at) implements Expression {}

  /** Two values with one of {@code + - * /} between them. */
  record Operation(char operator, Expression left, Expression right) implements Expression {
    @Override
    public Stretch at() {
      return new Stretch(left.at().from(), right.at().to());
    }
  }

  /** A value with a minus before it. */
  record Negated(Expression of, Stretch at) implements Expression {}

  /** Two values with one of {@code < > <= >= =} between them. */
  record Comparison(String sign, Expression left, Expression right) implements Expression {
    @Override
    public Stretch at() {
      return new Stretch(left.at().from(), right.at().to());
    }
  }

  /** Two conditions with {@code and} or {@code or} between them. */
  record Both(boolean and, Expression left, Expression right) implements Expression {
    @Override
    public Stretch at() {
      return new Stretch(left.at().from(), right.at().to());
    }
  }

  /** A condition with {@code not} before it. */
  record Not(Expression of, Stretch at) implements Expression {}

  /** {@code A when CONDITION else B}. */
  record Either(Expression then, Expression condition, Expression otherwise) implements Expression {
    @Override
    public Stretch at() {
      return new Stretch(then.at().from(), otherwise.at().to());
    }
  }

  /**
   * {@code min} or {@code max} of one or more values, {@code round-up} or {@code printable} of one.
   */
  record Call(String function, List<Expression> arguments, Stretch at) implements Expression {
    public Call {
      arguments = List.copyOf(arguments);
    }
  }

  /** All names in it, in the order of the text. */
  default Stream<Name> names() {
    return switch (this) {
      case Literal literal -> Stream.empty();
      case Name name -> Stream.of(name);
      case Operation both -> Stream.concat(both.left().names(), both.right().names());
      case Negated negated -> negated.of().names();
      case Comparison both -> Stream.concat(both.left().names(), both.right().names());
      case Both both -> Stream.concat(both.left().names(), both.right().names());
      case Not not -> not.of().names();
      case Either either ->
          Stream.of(either.then(), either.condition(), either.otherwise())
              .flatMap(Expression::names);
      case Call call -> call.arguments().stream().flatMap(Expression::names);
    };
  }
}
