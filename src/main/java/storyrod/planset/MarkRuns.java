package storyrod.planset;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import storyrod.piece.Mark;
import storyrod.piece.Piece;

/**
 * Marks as a cell of a table tells them: each, or of more than a cell should hold those that follow
 * each other by the first and the last.
 *
 * @param order all marks of the piece
 */
record MarkRuns(List<String> order) {
  private static final int MANY = 40;

  /** Two that follow each other are no shorter with a dash. */
  private static final int LEAST = 3;

  static MarkRuns of(Piece piece) {
    return new MarkRuns(piece.marks().stream().map(Mark::mark).toList());
  }

  String text(Collection<String> marks) {
    return marks.size() > MANY
        ? runs(marks).stream().map(MarkRuns::text).collect(Collectors.joining(", "))
        : String.join(", ", marks);
  }

  private List<List<String>> runs(Collection<String> marks) {
    List<List<String>> runs = new ArrayList<>();
    int last = -1;
    for (int i = 0; i < order.size(); i++) {
      if (marks.contains(order.get(i))) {
        if (runs.isEmpty() || last != i - 1) {
          runs.add(new ArrayList<>());
        }
        runs.getLast().add(order.get(i));
        last = i;
      }
    }
    return runs;
  }

  private static String text(List<String> run) {
    return run.size() < LEAST ? String.join(", ", run) : run.getFirst() + "–" + run.getLast();
  }
}
