package storyrod.planset;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import storyrod.planset.Recorded.Sized;
import storyrod.planset.Recorded.Sums;
import storyrod.planset.TableHeights.Cell;

/**
 * The record set on pages: sections that find room go on below the one before them.
 *
 * @param breaks by the section's name, whether it begins a page
 * @param made the rows of sizes, page by page
 */
record RecordPages(
    Recorded recorded, Map<String, Boolean> breaks, List<List<Sized>> made, PhotoPages photos) {
  /** The folder of its sections. */
  static final String FOLDER = "record/";

  /** The section that tells how the plan has changed. */
  static final String REVISIONS = "revisions";

  private static final String MADE = "made";
  private static final String STEPS = "steps";

  /** A row has room for handwriting. */
  private static final double ROW_MM = 7.8;

  /** Fewer sizes than these look lost over the rows of the steps, which are left to be filled. */
  private static final int FEWEST_ROWS = 9;

  /** The share of a page of sizes that stays there when the rest makes way for the steps. */
  private static final double KEPT = 0.7;

  private static final double LEAD_MM = 11;

  /** Below other sections the sizes begin with so many rows at least. */
  private static final double FEW_SIZES_MM =
      TableHeights.FOLLOWING_H1_MM + LEAD_MM + 2 * TableHeights.ROW_MM + 6 * ROW_MM;

  private static final double PART_MM = 38;
  private static final double WORDS_SHARE = 0.36;
  private static final double STORY_SHARE = 0.3;
  private static final double WHERE_MM = 28;
  private static final double STOCK_MM = 32;

  static RecordPages of(PlanSet set, Print print) {
    Recorded recorded = recorded(set, print);
    Setting setting = new Setting(recorded, print);
    return new RecordPages(recorded, setting.breaks(), setting.made(), PhotoPages.of(set, print));
  }

  private static Recorded recorded(PlanSet set, Print print) {
    return new Recording(set, print.texts(), print.edition().is(Edition.LINES)).recorded();
  }

  /** The height of the revisions below something else, zero if there are none. */
  static double revisionsMm(PlanSet set, Print print) {
    Recorded recorded = recorded(set, print);
    return recorded.revisions().isEmpty() ? 0 : new Setting(recorded, print).heightMm(REVISIONS);
  }

  /** The same with what is known of whether the revisions begin a page. */
  RecordPages withRevisions(List<Boolean> known) {
    Map<String, Boolean> all = new LinkedHashMap<>(breaks);
    known.forEach(each -> all.put(REVISIONS, each));
    return new RecordPages(recorded, all, made, photos);
  }

  /** Whether a section has something to show. */
  boolean has(String section, boolean lines) {
    return switch (section) {
      case REVISIONS -> !recorded.revisions().isEmpty();
      case "hours" -> lines || recorded.hours().any();
      case "costs" -> !recorded.costs().rows().isEmpty() && (lines || recorded.costs().any());
      case "boards" -> !recorded.boards().isEmpty();
      case "test-pieces" -> !recorded.testPieces().isEmpty();
      case "photos" -> !photos.pages().isEmpty();
      default -> true;
    };
  }

  /** Which sections begin a page, and how far down its page the section of sizes begins, in mm. */
  private record Flow(Map<String, Boolean> breaks, double sizesMm) {}

  /** What is set on which paper. */
  private record Setting(Recorded recorded, Print print) {
    Map<String, Boolean> breaks() {
      Flow flow = flow();
      flow.breaks.put(STEPS, !hasRoomForSteps(made()));
      return flow.breaks;
    }

    /** Down the sections in their order; what follows the sizes begins a page. */
    private Flow flow() {
      Map<String, Boolean> breaks = new LinkedHashMap<>();
      PageBreaks pages = new PageBreaks(print.paper().roomMm(), 0);
      double sizesMm = 0;
      boolean follows = false;
      for (String section : print.edition().sections()) {
        String name = section.startsWith(FOLDER) ? section.substring(FOLDER.length()) : "";
        double height = name.equals(MADE) ? FEW_SIZES_MM : name.isEmpty() ? 0 : heightMm(name);
        double above = pages.atMm();
        boolean found = height > 0 && pages.before(height, TableHeights.ABOVE_H1_MM);
        boolean isNew = !follows || found;
        if (!name.isEmpty()) {
          breaks.put(name, isNew);
        }
        if (name.equals(MADE)) {
          sizesMm = isNew ? 0 : above + TableHeights.ABOVE_H1_MM;
        }
        follows = !name.isEmpty() && !name.equals(MADE) && (follows || height > 0);
      }
      return new Flow(breaks, sizesMm);
    }

    private double width() {
      return print.paper().textWidthMm();
    }

    private double heightMm(String section) {
      double head = TableHeights.FOLLOWING_H1_MM + TableHeights.ROW_MM;
      double rows =
          switch (section) {
            case REVISIONS ->
                rows(
                    recorded.revisions(),
                    each -> List.of(words(each.change()), words(each.reason())));
            case "hours" -> sums(recorded.hours());
            case "costs" -> sums(recorded.costs());
            case "boards" ->
                LEAD_MM
                    + rows(
                        recorded.boards(),
                        each ->
                            List.of(
                                new Cell(each.stock(), STOCK_MM),
                                new Cell(each.story(), STORY_SHARE * width()),
                                new Cell(each.where(), WHERE_MM)));
            case "test-pieces" ->
                LEAD_MM
                    + rows(
                        recorded.testPieces(),
                        each ->
                            List.of(
                                new Cell(each.wood(), STOCK_MM),
                                new Cell(each.product(), STOCK_MM),
                                new Cell(each.verdict(), STORY_SHARE * width())));
            default -> -head;
          };
      return head + rows;
    }

    private Cell words(String text) {
      return new Cell(text, WORDS_SHARE * width());
    }

    private double sums(Sums sums) {
      return rows(sums.rows(), each -> List.of(words(each.say()))) + ROW_MM;
    }

    private static <T> double rows(List<T> rows, Function<T, List<Cell>> wide) {
      return rows.stream()
          .mapToDouble(row -> Math.max(ROW_MM, TableHeights.rows(List.of(row), wide)))
          .sum();
    }

    /** The last rows stand on the page of the steps if these find no room below all of them. */
    List<List<Sized>> made() {
      List<List<Sized>> pages = filled();
      List<List<Sized>> more = withRowsOverTheSteps(pages);
      return hasRoomForSteps(pages) || !hasRoomForSteps(more) ? pages : more;
    }

    private static List<List<Sized>> withRowsOverTheSteps(List<List<Sized>> pages) {
      List<Sized> last = pages.getLast();
      int few = Math.min(FEWEST_ROWS, last.size() / 2);
      int kept = Math.min((int) Math.ceil(last.size() * KEPT), last.size() - few);
      return Stream.of(
              pages.subList(0, pages.size() - 1),
              List.of(last.subList(0, kept)),
              kept < last.size()
                  ? List.of(last.subList(kept, last.size()))
                  : List.<List<Sized>>of())
          .flatMap(List::stream)
          .toList();
    }

    private List<List<Sized>> filled() {
      double room = print.paper().roomMm() - 2 * TableHeights.ROW_MM - 1;
      int fewest = Math.min(FEWEST_ROWS, recorded.sizes().size() / 2);
      return new RowPages(room - TableHeights.H1_MM - LEAD_MM - flow().sizesMm, room, fewest)
          .of(recorded.sizes(), row -> rowMm(row));
    }

    private static double rowMm(Sized row) {
      double sizes =
          TableHeights.rows(
              List.of(row), each -> List.of(TableHeights.size(each.planned().length())));
      double words =
          TableHeights.rows(List.of(row), each -> List.of(new Cell(each.say(), PART_MM)));
      double name =
          TableHeights.rows(List.of(row), each -> List.of(new Cell(each.part(), PART_MM)));
      double height = Math.max(ROW_MM, row.say().isEmpty() ? name : name + words - 2);
      return Math.max(height, sizes);
    }

    /** Whether the steps find room below the last of the sizes. */
    private boolean hasRoomForSteps(List<List<Sized>> pages) {
      double above =
          2 * TableHeights.ROW_MM
              + (pages.size() == 1 ? TableHeights.H1_MM + LEAD_MM + flow().sizesMm : 0);
      double sizes = pages.getLast().stream().mapToDouble(Setting::rowMm).sum();
      double steps = rows(recorded.steps(), each -> List.of(words(each.say())));
      double all = above + sizes + TableHeights.H2_MM + TableHeights.ROW_MM + steps;
      return all <= print.paper().roomMm();
    }
  }
}
