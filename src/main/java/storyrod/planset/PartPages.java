package storyrod.planset;

import java.util.List;
import java.util.Optional;
import storyrod.drawing.Drawing;
import storyrod.piece.Mark;

/** The part drawings, one for each mark, with what stands in their title blocks. */
public record PartPages(List<Entry> entries) {
  /** What a title and a title block take of a page's height beside the drawing. */
  private static final double FRAME_MM = 52;

  public PartPages {
    entries = List.copyOf(entries);
  }

  /**
   * A part.
   *
   * @param line how many there are and which of them are mirror images
   * @param say the maker's own words, or empty
   */
  public record Entry(
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

  static PartPages of(PlanSet set, Texts texts, Paper paper) {
    return new PartPages(
        set.piece().marks().stream().map(mark -> entry(set, mark, texts, paper)).toList());
  }

  private static Entry entry(PlanSet set, Mark mark, Texts texts, Paper paper) {
    DrawingBox box =
        DrawingBox.within(
            drawingName(mark.mark()),
            drawing(set, mark),
            paper.textWidthMm(),
            paper.textHeightMm() - FRAME_MM);
    return new Entry(
        mark.mark(),
        mark.title(),
        line(mark, texts),
        mark.shown().say().orElse(""),
        CutList.count(mark),
        texts.stock(mark.shown().stock()),
        CutList.grain(mark.shown().stock(), texts),
        box.scale().map(Object::toString).orElse(texts.say("scale.none")),
        box);
  }

  private static Drawing drawing(PlanSet set, Mark mark) {
    return Optional.ofNullable(set.drawings().parts().get(mark.mark()))
        .orElseThrow(() -> new IllegalStateException("bug: no drawing of part " + mark.mark()));
  }

  private static String line(Mark mark, Texts texts) {
    if (mark.mirrored() == 0) {
      return mark.same() == 1
          ? texts.say("part.one")
          : texts.say("part.same", number(mark.same(), texts));
    }
    return mark.same() == 1 && mark.mirrored() == 1
        ? texts.say("part.pair")
        : texts.say(
            "part.handed",
            Texts.capital(number(mark.same(), texts)),
            number(mark.mirrored(), texts));
  }

  private static String number(int count, Texts texts) {
    String key = "number." + count;
    return texts.words().has(key) ? texts.say(key) : Integer.toString(count);
  }
}
