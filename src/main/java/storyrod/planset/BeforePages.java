package storyrod.planset;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import storyrod.planset.Notes.Caution;

/**
 * The cautions of all steps on the pages before the start. They stand below what holds for every
 * plan if that page has room for all of them, and otherwise on pages of their own.
 *
 * @param contentsFollow whether the contents go on below the last caution
 * @param checkAtReading whether the bars stand below how to read the plan, where the cautions have
 *     pages of their own
 * @param checkFirst whether the bars stand below the last caution and not below the contents
 * @param findingsHere whether the findings find room below the contents, with the bars or without
 * @param contents the lines of the contents, page by page in one or two columns
 */
public record BeforePages(
    List<CautionPage> pages,
    boolean contentsFollow,
    boolean checkAtReading,
    boolean checkFirst,
    boolean findingsHere,
    List<List<List<Outline.Entry>>> contents) {
  /** Before anything is known of them. */
  static final BeforePages NONE = new BeforePages(List.of(), false, false, false, false, List.of());

  private static final TextMeasure TEXT = new TextMeasure(PdfFonts.REGULAR, 9.5, 1.42);
  private static final TextMeasure SMALL = new TextMeasure(PdfFonts.REGULAR, 8.5, 1.34);
  private static final double COLUMN_SHARE = 0.47;
  private static final double FRAME_MM = 7.2;
  private static final double BELOW_ENTRY_MM = 1;
  private static final double MAIN_MM = 5.3;
  private static final TextMeasure CONTENTS = new TextMeasure(PdfFonts.REGULAR, 7.5, 1.25);
  private static final double CONTENTS_FIGURES_MM = 17;
  private static final double LINE_GAP_MM = 0.45;

  /** Fewer lines than these stand in one column. */
  private static final int ONE_COLUMN = 24;

  private static final double CHECK_MM = 29;
  private static final int SAFETY = 6;

  public BeforePages {
    pages = List.copyOf(pages);
    contents = List.copyOf(contents);
  }

  /** Cautions in two columns of about the same height; {@code breaks} if they begin a page. */
  public record CautionPage(boolean breaks, List<List<Caution>> columns) {}

  /** Findings that stand on the page of the contents are not named by them. */
  static BeforePages of(Notes notes, List<Outline.Entry> contents, Print print) {
    BeforePages placed = laid(notes, contents, print);
    return placed.findingsHere
        ? laid(notes, contents.stream().filter(each -> !isOfFindings(each)).toList(), print)
        : placed;
  }

  private static boolean isOfFindings(Outline.Entry entry) {
    return entry.anchor().equals(Sections.FINDINGS);
  }

  private static BeforePages laid(Notes notes, List<Outline.Entry> contents, Print print) {
    Paper paper = print.paper();
    List<Caution> cautions = notes.cautions();
    Below below =
        new Below(
            spreads(contents, paper),
            contentsMm(contents, paper) - CHECK_MM,
            CHECK_MM,
            EndPages.findingsMm(notes.findings(), paper),
            paper.roomMm());
    double column = COLUMN_SHARE * paper.textWidthMm();
    double fixed = fixedMm(print, column) + TableHeights.H2_MM;
    double own = higherMm(halves(cautions, column), column);
    if (cautions.isEmpty() || fixed + own <= paper.roomMm()) {
      List<CautionPage> here =
          cautions.isEmpty()
              ? List.of()
              : List.of(new CautionPage(false, halves(cautions, column)));
      return of(here, false, fixed + own, below);
    }
    int count = (int) Math.ceil((own + TableHeights.H2_MM) / paper.roomMm());
    List<CautionPage> pages = new ArrayList<>();
    int perPage = Math.ceilDiv(cautions.size(), count);
    for (int from = 0; from < cautions.size(); from += perPage) {
      List<Caution> some = cautions.subList(from, Math.min(from + perPage, cautions.size()));
      pages.add(new CautionPage(true, halves(some, column)));
    }
    double last = TableHeights.H2_MM + higherMm(pages.getLast().columns(), column);
    boolean atReading = fixedMm(print, column) + CHECK_MM <= paper.roomMm();
    Below rest = atReading ? below.withoutBars() : below;
    boolean follow = last + TableHeights.ABOVE_H1_MM + rest.all() <= paper.roomMm();
    return of(pages, follow, last, rest);
  }

  private static BeforePages of(
      List<CautionPage> pages, boolean follow, double lastMm, Below below) {
    boolean checkFirst = !follow && below.checkFirst(lastMm);
    double here = below.all() - (checkFirst ? below.barsMm() : 0);
    return new BeforePages(
        pages, follow, below.barsMm() == 0, checkFirst, here <= below.roomMm(), below.contents());
  }

  /** What goes below the cautions: the contents, the bars if they stand nowhere, the findings. */
  private record Below(
      List<List<List<Outline.Entry>>> contents,
      double contentsMm,
      double barsMm,
      double findingsMm,
      double roomMm) {
    double all() {
      return contentsMm + barsMm + findingsMm;
    }

    Below withoutBars() {
      return new Below(contents, contentsMm, 0, findingsMm, roomMm);
    }

    /** Whether the bars find room above the contents only, where they would take a page below. */
    boolean checkFirst(double lastMm) {
      boolean wouldHelp = all() - barsMm <= roomMm || contentsMm + barsMm > roomMm;
      return barsMm > 0 && all() > roomMm && wouldHelp && lastMm + barsMm <= roomMm;
    }
  }

  private static double fixedMm(Print print, double column) {
    Texts texts = print.texts();
    double first =
        TEXT.heightMm(texts.say("caution.label") + " " + texts.say("before.first"), textMm(print));
    double safety =
        listMm(
            IntStream.rangeClosed(1, SAFETY).mapToObj(i -> texts.say("before.safety." + i)),
            column);
    double reading = listMm(print.reading().stream(), column);
    return 1
        + TableHeights.H1_MM
        + first
        + FRAME_MM
        + TableHeights.H2_MM
        + Math.max(safety, reading);
  }

  private static double textMm(Print print) {
    return print.paper().textWidthMm() - FRAME_MM;
  }

  private static double listMm(Stream<String> list, double column) {
    return list.mapToDouble(each -> SMALL.heightMm(each, column) + BELOW_ENTRY_MM).sum();
  }

  /** Two columns in order, broken where the higher of them is lowest. */
  private static List<List<Caution>> halves(List<Caution> cautions, double column) {
    List<List<Caution>> best = List.of(cautions);
    for (int at = 1; at < cautions.size(); at++) {
      List<List<Caution>> halves =
          List.of(cautions.subList(0, at), cautions.subList(at, cautions.size()));
      if (higherMm(halves, column) < higherMm(best, column)) {
        best = halves;
      }
    }
    return best;
  }

  private static double higherMm(List<List<Caution>> columns, double column) {
    return columns.stream().mapToDouble(each -> heightMm(each, column)).max().orElse(0);
  }

  private static double heightMm(List<Caution> cautions, double column) {
    return cautions.stream()
        .mapToDouble(
            each ->
                SMALL.heightMm(each.text() + " (steps " + each.steps() + ")", column)
                    + BELOW_ENTRY_MM)
        .sum();
  }

  /** The contents with the bars below them. */
  static double contentsMm(List<Outline.Entry> contents, Paper paper) {
    double spreads =
        spreads(contents, paper).stream().mapToDouble(each -> spreadMm(each, paper)).sum();
    return 1 + TableHeights.H1_MM + spreads + CHECK_MM;
  }

  /** Nearly as many lines on each page, in two columns, on as few pages as have room for them. */
  private static List<List<List<Outline.Entry>>> spreads(
      List<Outline.Entry> contents, Paper paper) {
    List<List<List<Outline.Entry>>> filled = filled(contents, paper);
    List<List<List<Outline.Entry>>> even =
        IntStream.range(0, filled.size())
            .mapToObj(page -> share(contents, page, filled.size()))
            .map(lines -> columns(lines, paper))
            .toList();
    return even.stream().allMatch(spread -> fits(spread, paper)) ? even : filled;
  }

  private static List<Outline.Entry> share(List<Outline.Entry> contents, int page, int pages) {
    return contents.subList(contents.size() * page / pages, contents.size() * (page + 1) / pages);
  }

  /** As many lines on each page as it has room for, in two columns. */
  private static List<List<List<Outline.Entry>>> filled(List<Outline.Entry> contents, Paper paper) {
    List<List<List<Outline.Entry>>> spreads = new ArrayList<>();
    int from = 0;
    while (from < contents.size()) {
      int to = contents.size();
      while (to > from + 1 && !fits(columns(contents.subList(from, to), paper), paper)) {
        to--;
      }
      spreads.add(columns(contents.subList(from, to), paper));
      from = to;
    }
    return List.copyOf(spreads);
  }

  private static boolean fits(List<List<Outline.Entry>> spread, Paper paper) {
    return 1 + TableHeights.H1_MM + spreadMm(spread, paper) <= paper.roomMm();
  }

  /** Broken where the higher of the columns is lowest: titles take one line or several. */
  private static List<List<Outline.Entry>> columns(List<Outline.Entry> lines, Paper paper) {
    if (lines.size() <= ONE_COLUMN) {
      return List.of(List.copyOf(lines));
    }
    double[] ends = lines.stream().mapToDouble(each -> lineMm(each, lineWidthMm(paper))).toArray();
    Arrays.parallelPrefix(ends, Double::sum);
    double all = ends[ends.length - 1];
    int first =
        IntStream.range(1, lines.size())
            .boxed()
            .min(Comparator.comparingDouble(at -> Math.max(ends[at - 1], all - ends[at - 1])))
            .orElseThrow();
    return List.of(
        List.copyOf(lines.subList(0, first)), List.copyOf(lines.subList(first, lines.size())));
  }

  private static double lineWidthMm(Paper paper) {
    return COLUMN_SHARE * paper.textWidthMm() - CONTENTS_FIGURES_MM;
  }

  private static double lineMm(Outline.Entry line, double column) {
    return line.number().isEmpty()
        ? MAIN_MM
        : CONTENTS.heightMm(line.title(), column) + LINE_GAP_MM;
  }

  /** The height of the higher column. */
  private static double spreadMm(List<List<Outline.Entry>> columns, Paper paper) {
    double width = lineWidthMm(paper);
    return columns.stream()
        .mapToDouble(column -> column.stream().mapToDouble(each -> lineMm(each, width)).sum())
        .max()
        .orElse(0);
  }
}
