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
  /** What the title and the lead take of a page, in mm. */
  private static final double BESIDE_MM = 27;

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

  static Size room(Paper paper) {
    return new Size(paper.textWidthMm(), paper.roomMm() - BESIDE_MM);
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
