package storyrod.planset;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import storyrod.build.Trials;
import storyrod.build.Verb;
import storyrod.piece.HardwareUse;
import storyrod.piece.Mark;
import storyrod.piece.Piece;
import storyrod.planset.PdfText.Glyph;

/** What the pages count alike: pieces of wood and hardware. */
final class CountChecks {
  private static final double SAME_LINE_MM = 0.6;
  private static final double BETWEEN_CELLS_MM = 1.2;
  private static final double LABEL_PT = 20;

  /** As PDFBox reads it, in whole points. */
  private static final double LIST_PT = 8.5;

  private CountChecks() {}

  /** Each label begins with a large mark. */
  static List<String> labels(FinishedPdf pdf) {
    List<Integer> pages = section(pdf, "label.title");
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (int page : pages) {
      List<Glyph> large =
          pdf.pages().get(page).stream().filter(each -> each.size() > LABEL_PT).toList();
      lines(large).stream()
          .flatMap(List::stream)
          .filter(pieces(pdf)::containsKey)
          .forEach(mark -> counts.merge(mark, 1, Integer::sum));
    }
    return pages.isEmpty() ? List.of() : differences(pieces(pdf), counts);
  }

  /** The title block of a mark's drawing states its count; a mark may have two drawings. */
  static List<String> drawings(FinishedPdf pdf) {
    if (pdf.isPreview()) {
      return List.of();
    }
    List<String> faults = new ArrayList<>();
    String text = String.join("", section(pdf, "parts.title").stream().map(pdf::text).toList());
    String count = FinishedPdf.squeezed(pdf.words().say("block.count"));
    String part = FinishedPdf.squeezed(pdf.words().say("block.part"));
    pieces(pdf)
        .forEach(
            (mark, pieces) -> {
              String title = FinishedPdf.squeezed(title(pdf, mark));
              String block = part + mark + title + count;
              boolean handed =
                  IntStream.range(1, pieces)
                      .anyMatch(same -> text.contains(block + same + "+" + (pieces - same)));
              if (!handed && !text.contains(block + pieces)) {
                faults.add(block + pieces + " is not in the drawings");
              }
            });
    return faults;
  }

  private static String title(FinishedPdf pdf, String mark) {
    return pdf.set().piece().mark(mark).title();
  }

  /** How many pieces of each mark the cut list states. */
  private static Map<String, Integer> pieces(FinishedPdf pdf) {
    List<String> marks = pdf.set().piece().marks().stream().map(Mark::mark).toList();
    Map<String, Integer> counts = counts(pdf, section(pdf, "cutlist.title"), marks::contains);
    marks.forEach(mark -> counts.putIfAbsent(mark, 0));
    return counts;
  }

  static List<String> hardware(FinishedPdf pdf) {
    List<Integer> schedule = section(pdf, "hardware.title");
    Predicate<String> mark = word -> word.matches("H\\d+");
    Map<String, Integer> used = new LinkedHashMap<>();
    for (int page = schedule.isEmpty() ? 1 : schedule.getLast() + 1; page <= pdf.count(); page++) {
      if (isOfSteps(pdf, page)) {
        rows(pdf, page, mark).forEach(row -> used.merge(row.mark, row.count, Integer::sum));
      }
    }
    Map<String, Integer> counts = counts(pdf, schedule, mark);
    onTrial(pdf).forEach((each, count) -> used.computeIfPresent(each, (k, n) -> n - count));
    return schedule.isEmpty() ? List.of() : differences(counts, used);
  }

  /** What is hung on trial, by its mark: it is named there and again where it is put back. */
  private static Map<String, Integer> onTrial(FinishedPdf pdf) {
    Piece piece = pdf.set().piece();
    Map<String, Integer> tried = new LinkedHashMap<>();
    pdf.set().build().steps().stream()
        .filter(step -> step.verb() == Verb.TRIAL_FIT)
        .flatMap(step -> step.operations().stream())
        .flatMap(each -> Trials.onTrial(piece, each.target()).stream())
        .forEach(
            item ->
                tried.merge(HardwareUse.of(piece).mark(item.item()), item.count(), Integer::sum));
    return tried;
  }

  private static boolean isOfSteps(FinishedPdf pdf, int page) {
    return pdf.bookmarks().stream()
        .anyMatch(
            each -> each.level() == 1 && each.target() == page && each.text().matches("\\d+\\D.*"));
  }

  private static List<String> differences(Map<String, Integer> a, Map<String, Integer> b) {
    Map<String, Integer> both = new LinkedHashMap<>(a);
    b.forEach((mark, count) -> both.merge(mark, -count, Integer::sum));
    return both.entrySet().stream()
        .filter(each -> each.getValue() != 0)
        .map(each -> each.getKey() + ": " + a.get(each.getKey()) + ", " + b.get(each.getKey()))
        .toList();
  }

  /** A row that begins with a mark and states a count. */
  private record Row(String mark, int count) {}

  /** The counts of the first rows for each mark; lists that follow have marks too. */
  private static Map<String, Integer> counts(
      FinishedPdf pdf, List<Integer> pages, Predicate<String> mark) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (int page : pages) {
      rows(pdf, page, mark).forEach(row -> counts.putIfAbsent(row.mark, row.count));
    }
    return counts;
  }

  private static List<Row> rows(FinishedPdf pdf, int page, Predicate<String> mark) {
    List<Row> rows = new ArrayList<>();
    List<Glyph> listed =
        pdf.pages().get(page).stream()
            .filter(each -> Math.abs(each.size() - LIST_PT) < 0.6)
            .toList();
    for (List<String> line : lines(listed)) {
      for (int i = 0; i < line.size(); i++) {
        String marked = line.get(i);
        if (mark.test(marked)) {
          line.subList(i + 1, line.size()).stream()
              .filter(each -> each.matches("\\d+(\\+\\d+)?"))
              .findFirst()
              .map(CountChecks::sum)
              .map(count -> new Row(marked, count))
              .ifPresent(rows::add);
          break;
        }
      }
    }
    return rows;
  }

  private static int sum(String count) {
    return Arrays.stream(count.split("\\+")).mapToInt(Integer::parseInt).sum();
  }

  /** The pages from the start of a section to that of the next. */
  private static List<Integer> section(FinishedPdf pdf, String title) {
    String text = FinishedPdf.squeezed(pdf.words().say(title));
    List<FinishedPdf.Link> sections =
        pdf.bookmarks().stream().filter(each -> each.level() == 0).toList();
    List<Integer> pages = new ArrayList<>();
    for (int i = 0; i < sections.size(); i++) {
      if (sections.get(i).text().equals(text)) {
        int next = i + 1 < sections.size() ? sections.get(i + 1).target() : pdf.count() + 1;
        int last = Math.min(next, pdf.count());
        for (int page = sections.get(i).target(); page <= last; page++) {
          pages.add(page);
        }
      }
    }
    return pages;
  }

  /** The lines of a page, each as its cells from left to right, without spaces. */
  private static List<List<String>> lines(List<Glyph> glyphs) {
    List<Glyph> sorted = glyphs.stream().sorted(Comparator.comparing(Glyph::bottom)).toList();
    List<List<String>> lines = new ArrayList<>();
    int from = 0;
    for (int to = 1; to <= sorted.size(); to++) {
      if (to == sorted.size()
          || sorted.get(to).bottom() - sorted.get(to - 1).bottom() > SAME_LINE_MM) {
        lines.add(cells(sorted.subList(from, to)));
        from = to;
      }
    }
    return lines;
  }

  private static List<String> cells(List<Glyph> line) {
    List<Glyph> sorted = line.stream().sorted(Comparator.comparing(Glyph::left)).toList();
    List<String> cells = new ArrayList<>();
    int from = 0;
    for (int to = 1; to <= sorted.size(); to++) {
      if (to == sorted.size()
          || sorted.get(to).left() - sorted.get(to - 1).right() > BETWEEN_CELLS_MM) {
        cells.add(FinishedPdf.text(sorted.subList(from, to)));
        from = to;
      }
    }
    return cells;
  }
}
