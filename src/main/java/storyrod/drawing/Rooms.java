package storyrod.drawing;

import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import storyrod.piece.Mark;

/** The room that pages have for drawings. */
public interface Rooms {
  /** The room for text and drawings on a page. */
  Size page();

  Size cover();

  Size exploded();

  Size layout();

  /** What stands beside a part's drawing on its page, in mm of the page's height. */
  double besidePartMm(Mark mark);

  /** What stands beside the drawing of a part's blank on its page, in mm of the page's height. */
  default double besideBlankMm(Mark mark) {
    return besidePartMm(mark);
  }

  /**
   * The room for the pictures of steps, by their number.
   *
   * @param heights for each step, the height in mm that its picture fills at a width in mm
   */
  Map<Integer, Size> steps(Map<Integer, DoubleUnaryOperator> heights);
}
