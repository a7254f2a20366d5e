package storyrod.planset;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import storyrod.drawing.FullSize;
import storyrod.drawing.Size;
import storyrod.drawing.TemplateSheets;
import storyrod.drawing.TemplateTile;

/** The sheets of the full-size templates, each on a page of its own and never shrunk. */
public record FullSizePages(List<Sheet> sheets) {
  /** What the title takes of a page, in mm, with the spaces round it. */
  private static final double TITLE_MM = 14.2;

  private static final TextMeasure LEAD = new TextMeasure(PdfFonts.REGULAR, 8.5, 1.42);
  private static final int MANY = 99;

  public FullSizePages {
    sheets = List.copyOf(sheets);
  }

  /**
   * A sheet.
   *
   * @param index its number among the sheets of its template, from 0
   * @param title the parts of which it shows something
   * @param lead how to use it
   */
  public record Sheet(int index, String title, String heading, String lead, DrawingBox drawing) {}

  /** The sheets that show other parts than the one before them. */
  List<Sheet> firsts() {
    return IntStream.range(0, sheets.size())
        .filter(
            i ->
                sheets.get(i).index() == 0
                    || !sheets.get(i).title().equals(sheets.get(i - 1).title()))
        .mapToObj(sheets::get)
        .toList();
  }

  /** The room for a sheet of some templates, under the longest lead that one of them can have. */
  static Size room(List<FullSize> shapes, Paper paper, Texts texts) {
    double width = paper.textWidthMm();
    String lead = texts.say("fullsize.caution") + " " + longest(shapes, texts);
    return new Size(width, paper.roomMm() - TITLE_MM - LEAD.heightMm(lead, width));
  }

  private static String longest(List<FullSize> shapes, Texts texts) {
    List<String> said = new ArrayList<>();
    if (shapes.stream().anyMatch(FullSize::isStrip)) {
      said.add(texts.say("fullsize.strip"));
    }
    said.add(texts.say("fullsize.join", MANY, "A1–A" + MANY));
    if (shapes.size() > 1) {
      said.add(texts.say("fullsize.shared", shapes.size()));
    }
    return String.join(" ", said);
  }

  static FullSizePages of(PlanSet set, Print print) {
    Texts texts = print.texts();
    return new FullSizePages(
        set.drawings().templates().stream()
            .filter(
                template ->
                    template.shapes().stream().anyMatch(shape -> print.chosen().has(shape.mark())))
            .flatMap(
                template ->
                    IntStream.range(0, template.tiles().size())
                        .mapToObj(i -> sheet(template, i, texts)))
            .toList());
  }

  private static Sheet sheet(TemplateSheets sheets, int index, Texts texts) {
    TemplateTile tile = sheets.tiles().get(index);
    DrawingBox box =
        new DrawingBox(
            tile.drawing().name(),
            tile.drawing().widthMm(),
            tile.drawing().heightMm(),
            tile.drawing().scale());
    return new Sheet(
        index,
        names(tile.shapes()),
        texts.say("fullsize.sheet", names(tile.shapes()), tile.letter()),
        lead(sheets, texts),
        box);
  }

  private static String names(List<FullSize> shapes) {
    return shapes.stream()
        .map(shape -> shape.name() + " " + shape.mark().title())
        .collect(Collectors.joining(", "));
  }

  private static String lead(TemplateSheets sheets, Texts texts) {
    List<TemplateTile> tiles = sheets.tiles();
    List<String> said = new ArrayList<>();
    if (sheets.shapes().stream().anyMatch(FullSize::isStrip)) {
      said.add(texts.say("fullsize.strip"));
    }
    if (tiles.size() > 1) {
      String letters = tiles.getFirst().letter() + "–" + tiles.getLast().letter();
      said.add(texts.say("fullsize.join", tiles.size(), letters));
    } else {
      said.add(texts.say("fullsize.one"));
    }
    if (sheets.shapes().size() > 1) {
      said.add(texts.say("fullsize.shared", sheets.shapes().size()));
    }
    return String.join(" ", said);
  }
}
