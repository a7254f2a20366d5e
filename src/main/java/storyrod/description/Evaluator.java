package storyrod.description;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.description.Cell.State;
import storyrod.description.Expression.Name;
import storyrod.description.Value.Kind;
import storyrod.measure.Unit;

/**
 * Works cells out, each once, whatever it depends on first. It keeps its own stack, so that a long
 * chain of names is no deeper than a short one. A cell that depends on a faulty one stays without a
 * value and without a message of its own.
 */
final class Evaluator {
  private final Arithmetic arithmetic;
  private final Diagnostics diagnostics;

  Evaluator(Unit unit, Diagnostics diagnostics) {
    this.arithmetic = new Arithmetic(unit);
    this.diagnostics = diagnostics;
  }

  Optional<Value> valueOf(Cell wanted) {
    Deque<Work> path = new ArrayDeque<>();
    if (wanted.state == State.NEW) {
      path.push(start(wanted));
    }
    while (!path.isEmpty()) {
      step(path);
    }
    return wanted.value;
  }

  /** A cell in work, its formula, and the cells it depends on. */
  private record Work(
      Cell cell, Optional<Expression> formula, Map<String, Cell> needs, Iterator<Cell> open) {}

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
    try {
      Expression formula = cell.parse();
      Map<String, Cell> needs = new LinkedHashMap<>();
      boolean allKnown =
          formula.names().map(name -> resolve(name, cell, needs)).reduce(true, Boolean::logicalAnd);
      Iterator<Cell> open = List.copyOf(needs.values()).iterator();
      return new Work(cell, Optional.of(formula).filter(f -> allKnown), needs, open);
    } catch (FormulaFault fault) {
      diagnostics.add(fault.in(cell.text()));
      return new Work(cell, Optional.empty(), Map.of(), List.<Cell>of().iterator());
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
    boolean ready = work.needs().values().stream().allMatch(need -> need.value.isPresent());
    if (ready && work.formula().isPresent()) {
      try {
        Value result = result(work, work.formula().get());
        work.cell().value = Optional.of(result).filter(work.cell()::accepts);
      } catch (FormulaFault fault) {
        diagnostics.add(fault.in(work.cell().text()));
      }
    }
  }

  private Value result(Work work, Expression formula) throws FormulaFault {
    Value value =
        arithmetic.evaluate(formula, name -> work.needs().get(name.path()).value.orElseThrow());
    return work.cell().wanted() == Kind.LENGTH
        ? Value.length(arithmetic.length(value, formula))
        : new Value(arithmetic.number(value, formula), Kind.NUMBER);
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
