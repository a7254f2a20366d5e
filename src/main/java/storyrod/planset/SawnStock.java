package storyrod.planset;

import java.util.List;
import storyrod.drawing.SawnAlike;

/**
 * The pieces of one stock, those that look the same shown once.
 *
 * @param name for the names of drawings
 * @param noun the key of what its pieces are called: sheet, board or length
 * @param bound a sentence on how few there could be, and what else is to be said of them
 */
record SawnStock(
    String name, String noun, String title, String size, String bound, List<SawnAlike> sheets) {
  SawnStock {
    sheets = List.copyOf(sheets);
  }

  /** The same with more said below its title. */
  SawnStock telling(String more) {
    return new SawnStock(name, noun, title, size, bound + more, sheets);
  }

  /** How many pieces there are. */
  int count() {
    return sheets.stream().mapToInt(each -> each.numbers().size()).sum();
  }

  String drawingName(SawnAlike sheet) {
    return "layout-" + name + "-" + sheet.first();
  }
}
