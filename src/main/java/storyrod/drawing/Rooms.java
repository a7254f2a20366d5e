package storyrod.drawing;

import java.util.LinkedHashMap;
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

  /**
   * The room for the pictures of steps, by their number.
   *
   * @param heights for each step, the height in mm that its picture fills at a width in mm
   */
  Map<Integer, Size> steps(Map<Integer, DoubleUnaryOperator> heights);

  /** Rooms on a page about whose texts nothing is known. */
  static Rooms on(Size page) {
    return new Rooms() {
      @Override
      public Size page() {
        return page;
      }

      @Override
      public Size cover() {
        return share(0.58);
      }

      @Override
      public Size exploded() {
        return share(0.74);
      }

      @Override
      public Size layout() {
        return share(0.42);
      }

      @Override
      public double besidePartMm(Mark mark) {
        return 32;
      }

      @Override
      public Map<Integer, Size> steps(Map<Integer, DoubleUnaryOperator> heights) {
        Map<Integer, Size> rooms = new LinkedHashMap<>();
        heights.keySet().forEach(step -> rooms.put(step, share(0.36)));
        return rooms;
      }

      private Size share(double share) {
        return new Size(page.widthMm(), page.heightMm() * share);
      }
    };
  }
}
