package storyrod.planset;

import java.util.List;
import storyrod.planset.TableHeights.Cell;

/**
 * Where the lists behind the cut list begin a page, so that a table's head stays with its rows. A
 * list longer than a page breaks between rows.
 */
public record ListPages(boolean boards, boolean sheets, boolean items, boolean hardware) {
  private static final double H1 = TableHeights.ABOVE_H1_MM;
  private static final double H2 = TableHeights.ABOVE_H2_MM;
  private static final double TOP_MM = 1;
  private static final double PART_SHARE = 0.16;
  private static final double STOCK_SHARE = 0.2;
  private static final double NAME_SHARE = 0.4;
  private static final double MARKS_SHARE = 0.28;

  static ListPages of(Lengths lengths) {
    Shopping shopping = lengths.shopping();
    double width = lengths.paper().textWidthMm();
    PageBreaks breaks =
        new PageBreaks(lengths.paper().roomMm(), cutList(lengths.cutList(), lengths, width));
    return new ListPages(
        breaks.before(boards(shopping, width), H1),
        !shopping.sheets().isEmpty() && breaks.before(sheets(shopping, width), H2),
        breaks.before(items(shopping, width), H2),
        !lengths.hardware().rows().isEmpty()
            && breaks.before(hardware(lengths.hardware(), width), H1));
  }

  /** The lists and what the cut list begins with. */
  record Lengths(
      Paper paper, CutList cutList, Shopping shopping, HardwareList hardware, String lead) {}

  private static double cutList(CutList list, Lengths lengths, double width) {
    return TOP_MM
        + TableHeights.H1_MM
        + TableHeights.lead(lengths.lead(), width)
        + 2 * TableHeights.ROW_MM
        + TableHeights.rows(
            list.rows(),
            row ->
                List.of(
                    new Cell(row.part() + " " + row.note(), PART_SHARE * width),
                    new Cell(row.stock(), STOCK_SHARE * width)));
  }

  private static double boards(Shopping shopping, double width) {
    double table = table(TableHeights.rows(shopping.boards(), row -> name(row.stock(), width)));
    return TableHeights.FOLLOWING_H1_MM + (shopping.boards().isEmpty() ? 0 : table);
  }

  private static double sheets(Shopping shopping, double width) {
    return table(TableHeights.rows(shopping.sheets(), row -> name(row.stock(), width)));
  }

  private static double items(Shopping shopping, double width) {
    double rows = TableHeights.rows(shopping.items(), row -> name(row.item(), width));
    double total = shopping.total().isEmpty() ? 0 : TableHeights.ROW_MM;
    double open = shopping.complete() ? 0 : TableHeights.LINE_MM;
    return (rows > 0 ? table(rows) : 0) + total + open;
  }

  private static double hardware(HardwareList list, double width) {
    double rows =
        TableHeights.rows(
            list.rows(),
            row ->
                List.of(
                    new Cell(row.item(), NAME_SHARE * width),
                    new Cell(row.parts(), MARKS_SHARE * width),
                    new Cell(row.steps(), MARKS_SHARE * width)));
    return TableHeights.FOLLOWING_H1_MM + TableHeights.ROW_MM + rows;
  }

  private static List<Cell> name(String name, double width) {
    return List.of(new Cell(name, NAME_SHARE * width));
  }

  private static double table(double rows) {
    return TableHeights.H2_MM + TableHeights.ROW_MM + rows;
  }
}
