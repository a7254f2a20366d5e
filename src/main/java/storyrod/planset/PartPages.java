package storyrod.planset;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import storyrod.drawing.Drawing;
import storyrod.drawing.Packing;
import storyrod.piece.Mark;

/** The part drawings, one for each mark, with what stands in their title blocks. */
public record PartPages(List<Entry> entries, List<List<Entry>> pages) {
  /** So many parts share a page at most. */
  private static final int MOST = 3;

  private static final TextMeasure TITLE = new TextMeasure(PdfFonts.LIGHT, 17, 1.2);
  private static final TextMeasure LEAD = new TextMeasure(PdfFonts.REGULAR, 9.5, 1.42);
  private static final TextMeasure FIELD = new TextMeasure(PdfFonts.BOLD, 8.5, 1.25);
  private static final double TITLE_BLOCK_MM = 9.4;

  /** What the fields of the title block leave for their words. */
  private static final double TITLE_MM = 33;

  private static final double STOCK_MM = 31;
  private static final double UNIT_MM = 9;
  private static final double SPACES_MM = 10.3;

  public PartPages {
    entries = List.copyOf(entries);
    pages = List.copyOf(pages);
  }

  /**
   * A part.
   *
   * @param anchor the name by which links find it
   * @param line how many there are and which of them are mirror images
   * @param say the maker's own words, or empty
   */
  public record Entry(
      String anchor,
      String mark,
      String title,
      String line,
      String say,
      String count,
      String stock,
      String grain,
      String scale,
      DrawingBox drawing) {}

  static String drawingName(String mark) {
    return "part-" + mark;
  }

  static PartPages of(PlanSet set, Print print) {
    Texts texts = print.texts();
    Paper paper = print.paper();
    List<Entry> entries = new ArrayList<>();
    List<Packing.Item> items = new ArrayList<>();
    KeptNotes notes = new KeptNotes(set.piece(), texts);
    PartLines lines = new PartLines(set.piece(), set.build().steps(), texts);
    for (Mark mark : set.piece().marks().stream().filter(print.chosen()::has).toList()) {
      Entry entry = entry(set, mark, lines, paper);
      entries.add(entry);
      items.add(Packing.Item.of(paper.takenMm(entry.drawing(), besideMm(mark, lines, paper))));
      for (Entry blank : BlankPages.of(set, notes, mark, paper)) {
        double beside = BlankPages.besideMm(notes, mark, paper);
        entries.add(blank);
        items.add(Packing.Item.of(paper.takenMm(blank.drawing(), beside)));
      }
    }
    return new PartPages(
        entries,
        Packing.evenPages(items, paper.roomMm(), MOST).stream()
            .map(page -> entries.subList(page.first(), page.first() + page.choices().size()))
            .toList());
  }

  /** The height that title, lead and title block take beside a part's drawing, in mm. */
  static double besideMm(Mark mark, PartLines lines, Paper paper) {
    String lead = lines.of(mark) + " " + mark.shown().say().orElse("");
    return besideMm(mark, mark.title(), lead, new Page(lines.texts(), paper));
  }

  /** A page in some words. */
  record Page(Texts texts, Paper paper) {
    double heightMm(TextMeasure measure, String text) {
      return measure.heightMm(text, paper.textWidthMm());
    }
  }

  /** The same for any title and lead. */
  static double besideMm(Mark mark, String title, String lead, Page page) {
    return page.heightMm(TITLE, mark.mark() + "   " + title)
        + page.heightMm(LEAD, lead)
        + fieldsMm(mark, title, page.texts())
        - FIELD.lineMm()
        + TITLE_BLOCK_MM
        + SPACES_MM;
  }

  /** The height of the fullest field of the title block. */
  private static double fieldsMm(Mark mark, String title, Texts texts) {
    return DoubleStream.of(
            FIELD.heightMm(mark.mark() + " " + title, TITLE_MM),
            FIELD.heightMm(texts.stock(mark.shown().stock()), STOCK_MM),
            FIELD.heightMm(texts.unit(), UNIT_MM))
        .max()
        .orElseThrow();
  }

  private static Entry entry(PlanSet set, Mark mark, PartLines lines, Paper paper) {
    DrawingBox box =
        DrawingBox.beside(
            besideMm(mark, lines, paper), drawingName(mark.mark()), drawing(set, mark), paper);
    return new Entry(
        drawingName(mark.mark()),
        mark.mark(),
        mark.title(),
        lines.of(mark),
        mark.shown().say().orElse(""),
        CutList.count(mark),
        lines.texts().stock(mark.shown().stock()),
        CutList.grain(mark.shown().stock(), lines.texts()),
        box.scale().map(Object::toString).orElse(lines.texts().say("scale.none")),
        box);
  }

  private static Drawing drawing(PlanSet set, Mark mark) {
    return Optional.ofNullable(set.drawings().parts().get(mark.mark()))
        .orElseThrow(() -> new IllegalStateException("bug: no drawing of part " + mark.mark()));
  }
}
