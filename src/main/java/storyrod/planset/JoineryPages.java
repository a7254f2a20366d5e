package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Operation;
import storyrod.description.ItemEntry;
import storyrod.drawing.JointKind;
import storyrod.drawing.JointLine;
import storyrod.drawing.JointPlace;
import storyrod.drawing.JointSheet;
import storyrod.drawing.Packing;
import storyrod.drawing.Size;
import storyrod.piece.Joint;
import storyrod.piece.Piece;

/**
 * The joints of a piece, each kind once, in rows of a grid.
 *
 * @param widthMm the width of a cell
 * @param columns how many stand side by side
 */
public record JoineryPages(
    List<Entry> entries, List<List<List<Entry>>> pages, double widthMm, int columns) {
  static final JoineryPages NONE = new JoineryPages(List.of(), List.of(), 0, 1);

  /** The name of the section, under which its template looks for what it shows. */
  static final String KEY = "joinery";

  private static final double LEAST_WIDTH_MM = 80;
  private static final double HEIGHT_MM = 39;
  private static final double GAP_MM = 6;

  /** What stands between the texts of a cell and below them. */
  private static final double SPACES_MM = 5.5;

  /** The heading and the lead, above the first row alone. */
  private static final double HEAD_MM = TableHeights.H1_MM + 10.5;

  private static final int MOST_ROWS = 12;
  private static final TextMeasure TITLE = new TextMeasure(PdfFonts.BOLD, 10, 1.25);
  private static final TextMeasure TEXT = new TextMeasure(PdfFonts.REGULAR, 8.5, 1.3);

  public JoineryPages {
    entries = List.copyOf(entries);
    pages = List.copyOf(pages);
  }

  /**
   * Joints that are alike.
   *
   * @param anchor the name by which links find it
   * @param between the marks that it joins
   * @param marks the same as they are told
   * @param lines the cuts that make it
   * @param cut the steps that make them
   * @param fit the steps that close it
   */
  public record Entry(
      String anchor,
      String title,
      List<Pair> between,
      JoinedPairs marks,
      List<JointLine> lines,
      StepRuns cut,
      StepRuns fit,
      DrawingBox drawing) {
    /** How many joints it stands for. */
    public int count() {
      return between.stream().mapToInt(Pair::count).sum();
    }
  }

  /** Two marks that are joined, and how many times. */
  public record Pair(String first, String second, int count) {}

  private static int columns(Paper paper) {
    return Math.max(2, (int) ((paper.textWidthMm() + GAP_MM) / (LEAST_WIDTH_MM + GAP_MM)));
  }

  private static double width(Paper paper) {
    int columns = columns(paper);
    return (paper.textWidthMm() - (columns - 1) * GAP_MM) / columns;
  }

  /** The room for the drawing of a joint. */
  static Size room(Paper paper) {
    return new Size(width(paper), HEIGHT_MM);
  }

  /** Those of an edition, none where it leaves them out. */
  static JoineryPages shown(PlanSet set, Print print) {
    return print.edition().has(KEY) ? of(set, print) : NONE;
  }

  static JoineryPages of(PlanSet set, Print print) {
    List<Entry> entries =
        set.drawings().joints().stream()
            .filter(sheet -> isShown(sheet.kind(), set.piece(), print.chosen()))
            .map(sheet -> entry(set, sheet, print))
            .toList();
    Paper paper = print.paper();
    List<List<Entry>> rows = new ArrayList<>();
    for (int from = 0; from < entries.size(); from += columns(paper)) {
      rows.add(entries.subList(from, Math.min(from + columns(paper), entries.size())));
    }
    return new JoineryPages(entries, pages(rows, print), width(paper), columns(paper));
  }

  private static List<List<List<Entry>>> pages(List<List<Entry>> rows, Print print) {
    List<Packing.Item> items =
        IntStream.range(0, rows.size())
            .mapToObj(i -> heightMm(rows.get(i), print) + (i == 0 ? HEAD_MM : 0))
            .map(Packing.Item::of)
            .toList();
    return Packing.evenPages(items, print.paper().roomMm(), MOST_ROWS).stream()
        .map(page -> rows.subList(page.first(), page.first() + page.choices().size()))
        .toList();
  }

  private static boolean isShown(JointKind kind, Piece piece, Chosen chosen) {
    return kind.places().stream()
        .flatMap(place -> place.parts().stream())
        .anyMatch(part -> chosen.has(piece.mark(part.part().mark())));
  }

  private static double heightMm(List<Entry> row, Print print) {
    return row.stream().mapToDouble(each -> heightMm(each, print)).max().orElse(0);
  }

  private static double heightMm(Entry entry, Print print) {
    double width = width(print.paper());
    Texts texts = print.texts();
    String steps =
        Stream.of(entry.cut().told("joinery.cut", texts), entry.fit().told("joinery.fit", texts))
            .collect(Collectors.joining(" "));
    String between = texts.say("joinery.times", entry.count()) + " " + entry.marks().text();
    return TITLE.heightMm(entry.title(), width)
        + TEXT.heightMm(between, width)
        + entry.drawing().heightMm()
        + entry.lines().stream()
            .mapToDouble(line -> TEXT.heightMm(line.mark() + " " + line.words(), width))
            .sum()
        + TEXT.heightMm(steps, width)
        + SPACES_MM;
  }

  private static Entry entry(PlanSet set, JointSheet sheet, Print print) {
    Size room = room(print.paper());
    List<Pair> between = between(sheet.kind());
    return new Entry(
        sheet.drawing().name(),
        title(set.piece(), sheet.kind().shown().joint(), print.texts()),
        between,
        JoinedPairs.of(between, TEXT, room.widthMm()),
        sheet.kind().lines(),
        StepRuns.of(
            steps(
                set,
                print,
                step -> step.operations().stream().anyMatch(each -> cuts(each, sheet.kind())))),
        StepRuns.of(
            steps(
                set,
                print,
                step -> step.operations().stream().anyMatch(each -> closes(each, sheet.kind())))),
        DrawingBox.within(
            sheet.drawing().name(), sheet.drawing(), room.widthMm(), room.heightMm()));
  }

  private static List<Integer> steps(PlanSet set, Print print, Predicate<Step> wanted) {
    return set.build().steps().stream()
        .filter(print.chosen()::has)
        .filter(wanted)
        .map(Step::number)
        .toList();
  }

  /** On the bench, or in place when the joint is closed: there the other part is what is worked. */
  private static boolean cuts(Operation operation, JointKind kind) {
    return kind.places().stream().anyMatch(place -> cuts(operation, place));
  }

  private static boolean cuts(Operation operation, JointPlace place) {
    boolean isClosed = operation.joints().contains(place.joint());
    return place.parts().stream()
        .filter(part -> isClosed || operation.target().equals(part.part().name()))
        .anyMatch(part -> part.cuts().stream().anyMatch(operation.cuts()::contains));
  }

  private static boolean closes(Operation operation, JointKind kind) {
    return kind.places().stream().map(JointPlace::joint).anyMatch(operation.joints()::contains);
  }

  /** The trade's name, whether it is glued, and what fastens it. */
  private static String title(Piece piece, Joint joint, Texts texts) {
    String named = texts.say("joint." + joint.type());
    String glued = joint.glued() ? texts.say("general.glued", named) : named;
    String fastened =
        joint.fasteners().stream()
            .map(
                each ->
                    texts.say(
                        "general.fasteners",
                        each.count(),
                        piece.item(each.item()).map(ItemEntry::title).orElse(each.item())))
            .reduce(glued, (one, next) -> texts.say("general.joint-with", one, next));
    return Texts.capital(fastened);
  }

  private static List<Pair> between(JointKind kind) {
    Map<List<String>, Integer> counts = new LinkedHashMap<>();
    for (JointPlace place : kind.places()) {
      List<String> marks = place.parts().stream().map(each -> each.part().mark()).toList();
      counts.merge(marks, 1, Integer::sum);
    }
    return counts.entrySet().stream()
        .map(each -> new Pair(each.getKey().getFirst(), each.getKey().getLast(), each.getValue()))
        .toList();
  }
}
