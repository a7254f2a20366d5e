package storyrod.planset;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Sets tables one below the other on pages. A table is broken between rows, never so that a row or
 * two stand alone, and its head stays with its first rows.
 */
final class TableFlow {
  /** Fewer rows stand on no page alone. */
  private static final int FEWEST = 3;

  /** A last page that is less full gets more of the rows before it. */
  private static final double LEAST_SHARE = 0.43;

  private static final double STEP_MM = 4;

  private final double roomMm;
  private double atMm;
  private int pages = 1;

  /** Starts on a page that is filled down to a height in mm. */
  TableFlow(double roomMm, double atMm) {
    this.roomMm = roomMm;
    this.atMm = atMm;
  }

  /**
   * A table.
   *
   * @param aboveMm what of its head falls away at the top of a page
   * @param headMm the height of its titles and of its columns' heads
   * @param againMm what of these stands again on each further page
   */
  record Table<T>(
      double aboveMm, double headMm, double againMm, List<T> rows, ToDoubleFunction<T> rowMm) {
    Table {
      rows = List.copyOf(rows);
    }
  }

  /**
   * The rows of a table on one page.
   *
   * @param breaks whether they begin the page
   * @param first whether they are the table's first, under its title
   */
  public record Part<T>(boolean breaks, boolean first, List<T> rows) {
    public Part {
      rows = List.copyOf(rows);
    }
  }

  /**
   * A flow of which the last page is not nearly empty, where leaving something of the others free
   * helps. It takes the same tables in the same order.
   */
  static TableFlow balanced(double roomMm, double atMm, List<? extends Table<?>> tables) {
    TableFlow usual = filled(roomMm, atMm, tables);
    for (double room = roomMm; room > roomMm / 2; room -= STEP_MM) {
      TableFlow tried = filled(room, atMm, tables);
      if (tried.pages == usual.pages && tried.isWellFilled(roomMm)) {
        return new TableFlow(room, atMm);
      }
    }
    return new TableFlow(roomMm, atMm);
  }

  private boolean isWellFilled(double allMm) {
    return pages == 1 || atMm >= LEAST_SHARE * allMm;
  }

  private static TableFlow filled(double roomMm, double atMm, List<? extends Table<?>> tables) {
    TableFlow flow = new TableFlow(roomMm, atMm);
    tables.forEach(flow::place);
    return flow;
  }

  /** How far down the last page is filled so far, in mm. */
  double atMm() {
    return atMm;
  }

  <T> List<Part<T>> place(Table<T> table) {
    List<Part<T>> parts = new ArrayList<>();
    int from = 0;
    while (from < table.rows().size()) {
      double head = from == 0 ? table.headMm() : table.againMm();
      int left = table.rows().size() - from;
      boolean breaks = atMm > 0 && fitting(table, from, head) < Math.min(FEWEST, left);
      if (breaks) {
        pages++;
        atMm = from == 0 ? -table.aboveMm() : 0;
      }
      int count = kept(fitting(table, from, head), left);
      parts.add(new Part<>(breaks, from == 0, table.rows().subList(from, from + count)));
      atMm += head + heightMm(table, from, count);
      from += count;
    }
    return parts;
  }

  /** At least one row, and never so many that fewer than {@value #FEWEST} are left over. */
  private static int kept(int fitting, int left) {
    int over = left - fitting;
    int kept = over > 0 && over < FEWEST ? fitting - (FEWEST - over) : fitting;
    return Math.clamp(kept, 1, left);
  }

  private <T> int fitting(Table<T> table, int from, double headMm) {
    int count = 0;
    double room = roomMm - atMm - headMm;
    while (from + count < table.rows().size() && heightMm(table, from, count + 1) <= room) {
      count++;
    }
    return count;
  }

  private static <T> double heightMm(Table<T> table, int from, int count) {
    return table.rows().subList(from, from + count).stream().mapToDouble(table.rowMm()).sum();
  }
}
