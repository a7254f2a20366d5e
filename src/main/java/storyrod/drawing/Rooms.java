package storyrod.drawing;

import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import storyrod.piece.Mark;

/** The room that pages have for drawings. */
public interface Rooms {
  /** The room for text and drawings on a page. */
  Size page();

  /** The room for text and drawings on a page that is wider than high. */
  Size turnedPage();

  Size cover();

  Size exploded();

  /** The room for the exploded view with balloons for hardware, beside the list of that. */
  default Size explodedHardware() {
    return exploded();
  }

  /**
   * The rooms for exploded views of sub-assemblies, in order.
   *
   * @param heights for each, the height in mm that it fills at a width in mm
   */
  List<Size> opened(List<DoubleUnaryOperator> heights);

  /** The room for the layout of a sheet below the title of the layouts. */
  Size layout();

  /** The room for the layout of a further sheet, which leaves more if its cuts are few. */
  Size layout(int cuts);

  /** The room for one sheet of full-size templates. */
  Size fullSize(List<FullSize> templates);

  /** The same on a page that is wider than high. */
  Size turnedFullSize(List<FullSize> templates);

  /** What stands beside a part's drawing on its page, in mm of the page's height. */
  double besidePartMm(Mark mark);

  /** What stands beside the drawing of a part's blank on its page, in mm of the page's height. */
  default double besideBlankMm(Mark mark) {
    return besidePartMm(mark);
  }

  /** The room for the drawing of a joint. */
  Size joint();

  /** What stands beside a general drawing on its page, in mm of the page's height. */
  double besideGeneralMm();

  /** The room for a drawing beside the sentences of a step. */
  Size besideSentences();

  /**
   * The room for the pictures of steps, by their number.
   *
   * @param heights for each step, the height in mm that its picture fills at a width in mm
   */
  Map<Integer, Size> steps(Map<Integer, DoubleUnaryOperator> heights);
}
