package storyrod.description;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Tells of names that depend on each other in a circle. */
final class CycleFault {
  private static final int MOST_SHOWN = 12;
  private static final int MOST_PLACES = 5;

  private CycleFault() {}

  static Diagnostic of(List<Cell> cycle) {
    Cell first = cycle.getFirst();
    Diagnostic fault =
        Diagnostic.error("cycle", first.text().at(), "a size depends on itself: " + path(cycle))
            .hint("give one of them a value that does not need the others");
    for (Cell cell : cycle.stream().skip(1).limit(MOST_PLACES).toList()) {
      fault = fault.also(cell.text().at(), "'" + cell.name() + "' is here");
    }
    return fault;
  }

  private static String path(List<Cell> cycle) {
    Stream<String> names = cycle.stream().limit(MOST_SHOWN).map(Cell::name);
    Stream<String> left = cycle.size() > MOST_SHOWN ? Stream.of("…") : Stream.empty();
    Stream<String> again = Stream.of(cycle.getFirst().name());
    return Stream.of(names, left, again).flatMap(each -> each).collect(Collectors.joining(" -> "));
  }
}
