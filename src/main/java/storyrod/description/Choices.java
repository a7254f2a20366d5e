package storyrod.description;

import java.util.List;
import java.util.Optional;
import storyrod.description.Expression.Both;
import storyrod.description.Expression.Comparison;
import storyrod.description.Expression.Either;
import storyrod.description.Expression.Literal;
import storyrod.description.Expression.Name;
import storyrod.description.Expression.Not;

/** Settles what conditions say about choices, which are made before anything is worked out. */
final class Choices {
  private Choices() {}

  /**
   * A choice between words.
   *
   * @param words all of them, the usual one first
   */
  record Choice(List<String> words, String chosen) {
    Choice {
      words = List.copyOf(words);
    }
  }

  /** A formula in which every {@code CHOICE = WORD} has become true or false. */
  static Expression settled(Expression formula, Scope scope) throws FormulaFault {
    return switch (formula) {
      case Comparison comparison -> comparison(comparison, scope);
      case Both both ->
          new Both(both.and(), settled(both.left(), scope), settled(both.right(), scope));
      case Not not -> new Not(settled(not.of(), scope), not.at());
      case Either either -> either(either, scope);
      case Expression.Operation sum ->
          new Expression.Operation(
              sum.operator(), settled(sum.left(), scope), settled(sum.right(), scope));
      case Expression.Negated negated ->
          new Expression.Negated(settled(negated.of(), scope), negated.at());
      case Expression.Call call -> call(call, scope);
      case Name name -> name(name, scope);
      case Literal literal -> literal;
    };
  }

  private static Expression call(Expression.Call call, Scope scope) throws FormulaFault {
    java.util.ArrayList<Expression> settled = new java.util.ArrayList<>();
    for (Expression argument : call.arguments()) {
      settled.add(settled(argument, scope));
    }
    return new Expression.Call(call.function(), settled, call.at());
  }

  /** Where a condition is settled, only the value that counts is looked at. */
  private static Expression either(Either either, Scope scope) throws FormulaFault {
    Expression condition = settled(either.condition(), scope);
    if (condition instanceof Literal literal) {
      return settled(literal.value().holds() ? either.then() : either.otherwise(), scope);
    }
    return new Either(settled(either.then(), scope), condition, settled(either.otherwise(), scope));
  }

  private static Expression comparison(Comparison comparison, Scope scope) throws FormulaFault {
    Optional<Choice> choice =
        comparison.left() instanceof Name name
            ? scope.find(Scope::choices, name.path())
            : Optional.empty();
    if (choice.isEmpty()) {
      return new Comparison(
          comparison.sign(), settled(comparison.left(), scope), settled(comparison.right(), scope));
    }
    String word = word(comparison, choice.get());
    return new Literal(Value.truth(choice.get().chosen().equals(word)), comparison.at());
  }

  private static String word(Comparison comparison, Choice choice) throws FormulaFault {
    if (!comparison.sign().equals("=")) {
      throw new FormulaFault(
          FormulaScanner.SYNTAX,
          comparison.at(),
          "a choice is one of some words and can only be compared by `=`",
          "write `choice = word`, or `not choice = word`");
    }
    String word = comparison.right() instanceof Name name ? name.path() : "";
    if (!choice.words().contains(word)) {
      throw new FormulaFault(
          "unknown-word",
          comparison.right().at(),
          "expected one of "
              + String.join(", ", choice.words())
              + (word.isEmpty() ? ", found a formula" : ", found '" + word + "'"),
          Names.suggest(word, choice.words().stream()));
    }
    return word;
  }

  private static Expression name(Name name, Scope scope) throws FormulaFault {
    Optional<Choice> choice = scope.find(Scope::choices, name.path());
    if (choice.isPresent()) {
      throw new FormulaFault(
          "dimension",
          name.at(),
          "'" + name.path() + "' is a choice between words, not a value",
          "compare it: `1/2 when " + name.path() + " = " + choice.get().chosen() + " else 3/4`");
    }
    return name;
  }
}
