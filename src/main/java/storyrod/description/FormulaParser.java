package storyrod.description;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.description.Expression.Call;
import storyrod.description.Expression.Either;
import storyrod.description.Expression.Literal;
import storyrod.description.Expression.Name;
import storyrod.description.Expression.Negated;
import storyrod.description.Expression.Operation;
import storyrod.description.Expression.Stretch;

/** Parses a formula: {@code * /} before {@code + -}, from left to right. */
final class FormulaParser {
  private static final int DEEPEST = 100;
  private static final String TO = "to";
  private static final List<String> FUNCTIONS =
      List.of("min", "max", Expression.ROUND_UP, Expression.PRINTABLE);

  private final FormulaScanner scanner;
  private int depth;

  private FormulaParser(String text) throws FormulaFault {
    this.scanner = new FormulaScanner(text);
  }

  static Expression formula(String text) throws FormulaFault {
    FormulaParser parser = new FormulaParser(text);
    Expression formula = parser.value();
    parser.refuseTo("the end", "one length is asked for here, not from where to where");
    parser.expectEnd("an operator");
    return formula;
  }

  /** A condition: comparisons joined by {@code and} before {@code or}. */
  static Expression condition(String text) throws FormulaFault {
    FormulaParser parser = new FormulaParser(text);
    Expression condition = new ConditionParser(parser.scanner, parser::sum).condition();
    parser.expectEnd("`and` or `or`");
    return condition;
  }

  /** The two formulas of {@code A to B}. */
  static Ends range(String text) throws FormulaFault {
    FormulaParser parser = new FormulaParser(text);
    Expression from = parser.value();
    if (!parser.scanner.takeWord(TO)) {
      throw RangeFaults.noEnd(text, from, parser.scanner);
    }
    Expression to = parser.value();
    parser.refuseTo("the end", "`to` can stand once: it runs from one place to one other");
    parser.expectEnd("an operator");
    return new Ends(from, to);
  }

  /** Where a range starts and ends. */
  record Ends(Expression from, Expression to) {}

  private void refuseTo(String expected, String hint) throws FormulaFault {
    int start = scanner.at();
    if (scanner.takeWord(TO)) {
      throw fault(start, start + TO.length(), "expected " + expected + ", found 'to'", hint);
    }
  }

  private void expectEnd(String otherwise) throws FormulaFault {
    if (!scanner.atEnd()) {
      throw scanner.unexpected(otherwise);
    }
  }

  /** A sum, or {@code A when CONDITION else B}. */
  private Expression value() throws FormulaFault {
    Expression then = sum();
    if (!scanner.takeWord("when")) {
      return then;
    }
    Expression condition = new ConditionParser(scanner, this::sum).condition();
    if (!scanner.takeWord("else")) {
      throw scanner.unexpected(
          "`else` and another value", "write both values: `3/4 when height > 30 else 1/2`");
    }
    return new Either(then, condition, value());
  }

  private Expression sum() throws FormulaFault {
    Expression left = product();
    while (true) {
      if (scanner.takeSpaced('+')) {
        left = new Operation('+', left, product());
      } else if (scanner.takeSpaced('-')) {
        left = new Operation('-', left, product());
      } else {
        return left;
      }
    }
  }

  private Expression product() throws FormulaFault {
    Expression left = operand();
    while (true) {
      if (scanner.take('*')) {
        left = new Operation('*', left, operand());
      } else if (scanner.take('/')) {
        left = new Operation('/', left, divisor());
      } else {
        return left;
      }
    }
  }

  /** In {@code 12 / 3/4} nobody can tell which division comes first. */
  private Expression divisor() throws FormulaFault {
    boolean written = Character.isDigit(scanner.peek());
    int start = scanner.at();
    Expression right = operand();
    if (written && scanner.isFraction(start, right.at().to())) {
      throw new FormulaFault(
          FormulaScanner.SYNTAX,
          right.at(),
          "it is not clear what is divided first here",
          "put the fraction in parentheses, or divide by one number at a time");
    }
    return right;
  }

  private Expression operand() throws FormulaFault {
    if (++depth > DEEPEST) {
      throw scanner.unexpected("at most " + DEEPEST + " parentheses in each other");
    }
    int start = scanner.at();
    Expression operand = scanner.take('-') ? negated(start) : positive(start);
    depth--;
    return operand;
  }

  private Expression negated(int start) throws FormulaFault {
    Expression of = operand();
    return new Negated(of, new Stretch(start, of.at().to()));
  }

  private Expression positive(int start) throws FormulaFault {
    if (scanner.take('(')) {
      Expression inner = value();
      close();
      return inner;
    }
    Optional<Literal> number = scanner.takeNumber();
    if (number.isPresent()) {
      return number.get();
    }
    return nameOrCall(start);
  }

  private Expression nameOrCall(int start) throws FormulaFault {
    if (scanner.takeWord(TO)) {
      throw fault(
          start,
          start + 2,
          "expected a value, found 'to'",
          "write where it starts and ends: `0 to 12`");
    }
    String name = scanner.takeName().orElseThrow(() -> scanner.unexpected("a value"));
    Stretch at = new Stretch(start, start + name.length());
    return scanner.take('(') ? call(name, at) : new Name(name, at);
  }

  private Expression call(String function, Stretch at) throws FormulaFault {
    if (!FUNCTIONS.contains(function)) {
      throw fault(
          at.from(),
          at.to(),
          "there is no function '" + Quote.of(function) + "'",
          "there are min, max, round-up and printable; for a product write `*`");
    }
    List<Expression> arguments = new ArrayList<>();
    do {
      arguments.add(value());
    } while (scanner.take(','));
    close();
    Call call = new Call(function, arguments, new Stretch(at.from(), scanner.at()));
    if (arguments.size() > 1) {
      checkTakesMany(call);
    }
    return call;
  }

  private static void checkTakesMany(Call call) throws FormulaFault {
    int count = call.arguments().size();
    switch (call.function()) {
      case Expression.ROUND_UP ->
          throw fault(
              call.at().from(),
              call.at().to(),
              "round-up takes one number, found " + count,
              "write one of them, as in `round-up(depth / widest)`");
      case Expression.PRINTABLE ->
          throw fault(
              call.at().from(),
              call.at().to(),
              "printable takes one length, found " + count,
              "write one of them, as in `printable(ply.thickness / 2)`");
      default -> {}
    }
  }

  private void close() throws FormulaFault {
    if (!scanner.take(')')) {
      throw scanner.unexpected(
          "a closing parenthesis",
          "close it; between braces a formula with a comma in it needs quotes");
    }
  }

  private static FormulaFault fault(int from, int to, String message, String hint) {
    return new FormulaFault(FormulaScanner.SYNTAX, new Stretch(from, to), message, hint);
  }
}
