package storyrod.planset;

import java.util.List;
import storyrod.planset.CutList.Row;
import storyrod.planset.TableHeights.Cell;

/**
 * Where the lists behind the cut list begin a page, so that a table's head stays with its rows. A
 * list longer than a page breaks between rows.
 *
 * @param cutList the rows of the cut list, page by page
 * @param endMm how far down the last page is filled
 */
public record ListPages(
    List<List<Row>> cutList,
    boolean glueUps,
    boolean boards,
    boolean sheets,
    boolean items,
    boolean supplies,
    boolean hardware,
    double endMm) {
  private static final double H1 = TableHeights.ABOVE_H1_MM;
  private static final double H2 = TableHeights.ABOVE_H2_MM;
  private static final double TOP_MM = 1;
  private static final double PART_SHARE = 0.16;
  private static final double GLUE_UP_SHARE = 0.15;
  private static final double STOCK_SHARE = 0.2;
  private static final double SUPPLY_SHARE = 0.2;
  private static final double NAME_SHARE = 0.4;

  /** The column of marks of the hardware schedule. */
  private static final double MARK_MM = 12;

  private static final double MARKS_SHARE = 0.28;
  private static final double HEAD_MM = 2 * TableHeights.ROW_MM;

  static ListPages of(Lengths lengths) {
    Shopping shopping = lengths.shopping();
    double width = lengths.paper().textWidthMm();
    List<List<Row>> cutList = cutList(lengths, width);
    double last = TOP_MM + (cutList.size() == 1 ? title(lengths, width) : 0);
    PageBreaks breaks =
        new PageBreaks(
            lengths.paper().roomMm(), last + HEAD_MM + heightMm(cutList.getLast(), width));
    return new ListPages(
        cutList,
        !lengths.glueUps().rows().isEmpty() && breaks.before(glueUps(lengths.glueUps(), width), H1),
        !shopping.equals(Shopping.NONE)
            && breaks.before(boards(shopping, width), H1, behindGlueUps(lengths, width)),
        !shopping.sheets().isEmpty() && breaks.before(sheets(shopping, width), H2),
        breaks.before(items(shopping, width), H2),
        breaks.before(supplies(lengths, width), H2),
        !lengths.hardware().rows().isEmpty()
            && breaks.before(hardware(lengths.hardware(), width), H1),
        breaks.atMm());
  }

  /** The lists, what the cut list begins with, and what stands below all that is to be bought. */
  record Lengths(
      Paper paper,
      CutList cutList,
      GlueUpList glueUps,
      Shopping shopping,
      HardwareList hardware,
      String lead,
      String below) {
    /** The same without the lists that an edition leaves out. */
    Lengths in(Edition edition) {
      return new Lengths(
          paper,
          cutList,
          edition.has("lists/glue-ups") ? glueUps : new GlueUpList(List.of()),
          edition.has("lists/shopping") ? shopping : Shopping.NONE,
          edition.has("lists/hardware") ? hardware : new HardwareList(List.of()),
          lead,
          edition.has("lists/shopping") ? below : "");
    }
  }

  private static List<List<Row>> cutList(Lengths lengths, double width) {
    double room = lengths.paper().roomMm() - TOP_MM - HEAD_MM;
    return new RowPages(room - title(lengths, width), room)
        .of(lengths.cutList().rows(), row -> heightMm(List.of(row), width));
  }

  private static double title(Lengths lengths, double width) {
    return TableHeights.H1_MM + TableHeights.lead(lengths.lead(), width);
  }

  private static double heightMm(List<Row> rows, double width) {
    return TableHeights.rows(
        rows,
        row ->
            List.of(
                TableHeights.size(row.finished().length()),
                new Cell(row.part() + " " + row.note(), PART_SHARE * width),
                new Cell(row.stock(), STOCK_SHARE * width)));
  }

  private static double glueUps(GlueUpList list, double width) {
    double rows =
        TableHeights.rows(
            list.rows(),
            row ->
                List.of(
                    TableHeights.size(row.blank()),
                    new Cell(row.part(), PART_SHARE * width),
                    new Cell(row.of(), GLUE_UP_SHARE * width),
                    new Cell(row.laid(), GLUE_UP_SHARE * width)));
    return TableHeights.FOLLOWING_H1_MM + 2 * TableHeights.LINE_MM + TableHeights.ROW_MM + rows;
  }

  private static double behindGlueUps(Lengths lengths, double width) {
    Shopping shopping = lengths.shopping();
    return boards(shopping, width)
        + (shopping.sheets().isEmpty() ? 0 : sheets(shopping, width))
        + items(shopping, width)
        + supplies(lengths, width)
        + (lengths.hardware().rows().isEmpty() ? 0 : hardware(lengths.hardware(), width));
  }

  private static double boards(Shopping shopping, double width) {
    if (shopping.equals(Shopping.NONE)) {
      return 0;
    }
    double table = table(TableHeights.rows(shopping.boards(), row -> name(row.stock(), width)));
    return TableHeights.FOLLOWING_H1_MM + (shopping.boards().isEmpty() ? 0 : table);
  }

  private static double sheets(Shopping shopping, double width) {
    return table(TableHeights.rows(shopping.sheets(), row -> name(row.stock(), width)));
  }

  private static double items(Shopping shopping, double width) {
    double rows = TableHeights.rows(shopping.items(), row -> name(row.item() + row.note(), width));
    return rows > 0 ? table(rows) : 0;
  }

  private static double supplies(Lengths lengths, double width) {
    Shopping shopping = lengths.shopping();
    double rows =
        TableHeights.rows(
            shopping.supplies().rows(),
            row ->
                List.of(
                    new Cell(row.product(), NAME_SHARE * width),
                    new Cell(row.area(), SUPPLY_SHARE * width)));
    double ranges = shopping.supplies().ranges() ? 2 * TableHeights.LINE_MM : 0;
    double total = shopping.total().isEmpty() ? 0 : TableHeights.ROW_MM;
    double below = TableHeights.small(lengths.below(), width);
    String besides = shopping.besides().sentence();
    double used = besides.isEmpty() ? 0 : TableHeights.text(besides, width);
    return (rows > 0 ? table(rows) : 0) + ranges + used + total + below;
  }

  private static double hardware(HardwareList list, double width) {
    double rows =
        TableHeights.rows(
            list.rows(),
            row ->
                List.of(
                    new Cell(row.item(), NAME_SHARE * width - MARK_MM),
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
