package storyrod.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Pieces of one stock that look the same, by their numbers, of which the first is shown. */
public record SawnAlike(List<Integer> numbers, SawnPiece piece) {
  public SawnAlike {
    numbers = List.copyOf(numbers);
  }

  /** In the order of the first of each; what is shown for several bears no number of its own. */
  public static List<SawnAlike> of(List<SawnPiece> pieces) {
    Map<SawnPiece, List<Integer>> groups = new LinkedHashMap<>();
    for (int i = 0; i < pieces.size(); i++) {
      groups.computeIfAbsent(pieces.get(i).withoutNames(), piece -> new ArrayList<>()).add(i + 1);
    }
    return groups.values().stream()
        .map(numbers -> new SawnAlike(numbers, shown(pieces.get(numbers.getFirst() - 1), numbers)))
        .toList();
  }

  private static SawnPiece shown(SawnPiece first, List<Integer> numbers) {
    return numbers.size() == 1 ? first : first.withSharedTitles();
  }

  public int first() {
    return numbers.getFirst();
  }

  /** The numbers as a reader takes them: {@code 1–3, 5}. */
  public String range() {
    List<List<Integer>> runs = new ArrayList<>();
    for (int number : numbers) {
      if (runs.isEmpty() || runs.getLast().getLast() != number - 1) {
        runs.add(new ArrayList<>());
      }
      runs.getLast().add(number);
    }
    return runs.stream()
        .map(run -> run.size() == 1 ? "" + run.getFirst() : run.getFirst() + "–" + run.getLast())
        .collect(Collectors.joining(", "));
  }
}
