package storyrod.planset;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Breaks the rows of a long table into pages.
 *
 * @param firstMm the room for rows on the first page
 * @param roomMm that on each further page
 * @param fewest no page has fewer rows
 */
record RowPages(double firstMm, double roomMm, int fewest) {
  /** Fewer rows than these look lost on a page. */
  private static final int FEWEST_ROWS = 3;

  /** Pages of which none has a row or two alone. */
  RowPages(double firstMm, double roomMm) {
    this(firstMm, roomMm, FEWEST_ROWS);
  }

  /** The rows that each page has room for. */
  <R> List<List<R>> of(List<R> rows, ToDoubleFunction<R> heightMm) {
    double left = firstMm;
    List<List<R>> pages = new ArrayList<>(List.of(new ArrayList<>()));
    for (R row : rows) {
      double height = heightMm.applyAsDouble(row);
      if (height > left && !pages.getLast().isEmpty()) {
        pages.add(new ArrayList<>());
        left = roomMm;
      }
      pages.getLast().add(row);
      left -= height;
    }
    while (pages.size() > 1 && pages.getLast().size() < fewest) {
      pages.getLast().addFirst(pages.get(pages.size() - 2).removeLast());
    }
    return pages.stream().map(List::copyOf).toList();
  }
}
