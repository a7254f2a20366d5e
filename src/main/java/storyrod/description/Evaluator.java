package storyrod.description;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import storyrod.description.Cell.Derivation;
import storyrod.description.Cell.State;
import storyrod.description.Expression.Name;
import storyrod.description.Node.Scalar;
import storyrod.description.Value.Kind;
import storyrod.measure.Rational;

/**
 * Works cells out, each once, whatever it depends on first. It keeps its own stack, so that a long
 * chain of names is no deeper than a short one. A cell that depends on a faulty one stays without a
 * value and without a message of its own.
 */
final class Evaluator {
  private final Diagnostics diagnostics;
  private final Set<Scalar> givenUp = Collections.newSetFromMap(new IdentityHashMap<>());

  Evaluator(Diagnostics diagnostics) {
    this.diagnostics = diagnostics;
  }

  /** No more is told of a formula whose fault is known from before the parts had their places. */
  void giveUp(Scalar formula) {
    givenUp.add(formula);
  }

  Optional<Value> valueOf(Cell wanted) {
    if (givenUp.contains(wanted.text())) {
      return Optional.empty();
    }
    Deque<Work> path = new ArrayDeque<>();
    if (wanted.state == State.NEW) {
      path.push(start(wanted));
    }
    while (!path.isEmpty()) {
      step(path);
    }
    return wanted.value;
  }

  /** A cell in work, how its value is found, and the cells that have to be worked out first. */
  private record Work(Cell cell, Optional<Result> result, List<Cell> needs, Iterator<Cell> open) {
    Work(Cell cell, Optional<Result> result, List<Cell> needs) {
      this(cell, result, needs, needs.iterator());
    }
  }

  private interface Result {
    Value value() throws FormulaFault;
  }

  private void step(Deque<Work> path) {
    Work work = path.element();
    if (work.cell().state == State.DONE) {
      path.pop();
    } else if (work.open().hasNext()) {
      visit(work.open().next(), path);
    } else {
      finish(work);
      path.pop();
    }
  }

  private void visit(Cell next, Deque<Work> path) {
    switch (next.state) {
      case NEW -> path.push(start(next));
      case OPEN -> closeCycle(next, path);
      case DONE -> {}
    }
  }

  private Work start(Cell cell) {
    cell.state = State.OPEN;
    return cell.derivation().map(how -> derived(cell, how)).orElseGet(() -> formula(cell));
  }

  private static Work derived(Cell cell, Derivation how) {
    return new Work(cell, Optional.of(() -> value(how)), how.needs());
  }

  private static Value value(Derivation how) throws FormulaFault {
    List<Rational> amounts =
        how.needs().stream().map(need -> need.value.orElseThrow().amount()).toList();
    return Value.length(how.working().of(amounts));
  }

  private Work formula(Cell cell) {
    try {
      Expression formula = Choices.settled(cell.parse(), cell.scope());
      Map<String, Cell> needs = new LinkedHashMap<>();
      boolean allKnown =
          formula.names().map(name -> resolve(name, cell, needs)).reduce(true, Boolean::logicalAnd);
      return new Work(
          cell,
          Optional.<Result>of(() -> value(cell, formula, needs)).filter(result -> allKnown),
          List.copyOf(needs.values()));
    } catch (FormulaFault fault) {
      diagnostics.add(fault.in(cell.text()));
      return new Work(cell, Optional.empty(), List.of());
    }
  }

  private boolean resolve(Name name, Cell cell, Map<String, Cell> needs) {
    Lookup<Cell> lookup = new Names(cell.scope()).value(name.path());
    if (lookup.found().isEmpty()) {
      diagnostics.add(lookup.at(cell.text().part(name.at().from(), name.at().to())));
      return false;
    }
    needs.put(name.path(), lookup.found().get());
    return true;
  }

  private void finish(Work work) {
    work.cell().state = State.DONE;
    boolean ready = work.needs().stream().allMatch(need -> need.value.isPresent());
    if (ready && work.result().isPresent()) {
      try {
        work.cell().value = Optional.of(work.result().get().value()).filter(work.cell()::accepts);
      } catch (FormulaFault fault) {
        diagnostics.add(fault.in(work.cell().text()));
      }
    }
  }

  private static Value value(Cell cell, Expression formula, Map<String, Cell> needs)
      throws FormulaFault {
    Arithmetic arithmetic = new Arithmetic(cell.scope().unit(), cell.scope().pool().printed());
    Value value = arithmetic.evaluate(formula, name -> needs.get(name.path()).value.orElseThrow());
    return switch (cell.wanted()) {
      case LENGTH -> Value.length(arithmetic.length(value, formula));
      case TRUTH -> value;
      case NUMBER, BARE -> new Value(arithmetic.number(value, formula), Kind.NUMBER);
    };
  }

  /** Reports the names that depend on each other, and gives all of them up. */
  private void closeCycle(Cell first, Deque<Work> path) {
    List<Cell> cycle = new ArrayList<>();
    for (Work work : path) {
      cycle.addFirst(work.cell());
      if (work.cell() == first) {
        break;
      }
    }
    cycle.forEach(cell -> cell.state = State.DONE);
    diagnostics.add(CycleFault.of(cycle));
  }
}
