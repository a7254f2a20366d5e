package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import storyrod.drawing.SawnPiece;

/**
 * The pieces of one stock, those that look the same shown once.
 *
 * @param name for the names of drawings
 * @param noun the key of what its pieces are called: sheet, board or length
 * @param bound a sentence on how few there could be, and what else is to be said of them
 */
record SawnStock(
    String name, String noun, String title, String size, String bound, List<Alike> sheets) {
  SawnStock {
    sheets = List.copyOf(sheets);
  }

  /** Pieces that look the same, by their numbers, of which the first is shown. */
  record Alike(List<Integer> numbers, SawnPiece piece) {
    int first() {
      return numbers.getFirst();
    }

    /** The numbers as a reader takes them: {@code 1–3, 5}. */
    String range() {
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

  static List<Alike> alike(List<SawnPiece> pieces) {
    Map<SawnPiece, List<Integer>> groups = new LinkedHashMap<>();
    for (int i = 0; i < pieces.size(); i++) {
      groups.computeIfAbsent(pieces.get(i).withoutNames(), piece -> new ArrayList<>()).add(i + 1);
    }
    return groups.values().stream()
        .map(numbers -> new Alike(List.copyOf(numbers), pieces.get(numbers.getFirst() - 1)))
        .toList();
  }

  /** The same with more said below its title. */
  SawnStock telling(String more) {
    return new SawnStock(name, noun, title, size, bound + more, sheets);
  }

  /** How many pieces there are. */
  int count() {
    return sheets.stream().mapToInt(each -> each.numbers().size()).sum();
  }

  String drawingName(Alike sheet) {
    return "layout-" + name + "-" + sheet.first();
  }
}
