package storyrod.planset;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import storyrod.drawing.FaceShown;
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
   * @param lead how to use it
   */
  public record Sheet(int index, String title, String heading, String lead, DrawingBox drawing) {
    public boolean isFirst() {
      return index == 0;
    }
  }

  static Size room(Paper paper) {
    return new Size(paper.textWidthMm(), paper.roomMm() - BESIDE_MM);
  }

  static FullSizePages of(PlanSet set, Print print) {
    Texts texts = print.texts();
    return new FullSizePages(
        set.drawings().templates().stream()
            .filter(template -> print.chosen().has(template.shape().mark()))
            .flatMap(
                template ->
                    IntStream.range(0, template.tiles().size())
                        .mapToObj(i -> sheet(template, i, texts)))
            .toList());
  }

  private static Sheet sheet(TemplateSheets template, int index, Texts texts) {
    TemplateTile tile = template.tiles().get(index);
    String mark = template.shape().name();
    String title = template.shape().mark().title();
    DrawingBox box =
        new DrawingBox(
            tile.drawing().name(),
            tile.drawing().widthMm(),
            tile.drawing().heightMm(),
            tile.drawing().scale());
    return new Sheet(
        index,
        mark + "  " + title,
        texts.say("fullsize.sheet", mark, title, tile.letter()),
        lead(template, texts),
        box);
  }

  private static String lead(TemplateSheets template, Texts texts) {
    List<TemplateTile> tiles = template.tiles();
    String face = texts.say("part.face." + FaceShown.of(template.shape().mark()).word());
    Optional<String> strip =
        template.shape().cuts().isEmpty()
            ? Optional.of(texts.say("fullsize.strip"))
            : Optional.empty();
    if (tiles.size() == 1) {
      return strip.orElse(texts.say("fullsize.one", face));
    }
    String letters = tiles.getFirst().letter() + "–" + tiles.getLast().letter();
    String join = texts.say("fullsize.join", tiles.size(), letters, face);
    return strip.map(words -> words + " " + join).orElse(join);
  }
}
