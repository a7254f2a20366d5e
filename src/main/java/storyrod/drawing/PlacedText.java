package storyrod.drawing;

import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.Text;

/**
 * A text with the room it takes on the paper, in mm.
 *
 * @param sizeMm the size of its font
 */
record PlacedText(
    String text, double sizeMm, double left, double top, double right, double bottom) {
  static PlacedText of(Text text) {
    double width = TextSetting.of(text.style(), text.text()).width();
    double start = -startOf(text.anchor()) * width;
    double size = text.style().sizeMm();
    double above = size * TextSetting.ASCENT;
    double below = size * TextSetting.DESCENT;
    double x = text.at().x();
    double y = text.at().y();
    return text.upright()
        ? new PlacedText(text.text(), size, x + start, y - above, x + start + width, y + below)
        : new PlacedText(text.text(), size, x - above, y - start - width, x + below, y - start);
  }

  /** How much of a text's width lies before its anchor. */
  static double startOf(Anchor anchor) {
    return switch (anchor) {
      case START -> 0;
      case MIDDLE -> 0.5;
      case END -> 1;
    };
  }

  PlacedText widened(double by) {
    return new PlacedText(text, sizeMm, left - by, top - by, right + by, bottom + by);
  }

  public boolean overlaps(PlacedText other) {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
  }

  boolean meets(Paper.Stretch line) {
    return meets(line.from(), line.to());
  }

  /** Whether a stretch of a line runs through it. */
  public boolean meets(Drawing.At from, Drawing.At to) {
    boolean apart =
        Math.max(from.x(), to.x()) < left
            || Math.min(from.x(), to.x()) > right
            || Math.max(from.y(), to.y()) < top
            || Math.min(from.y(), to.y()) > bottom;
    return !apart
        && new java.awt.geom.Rectangle2D.Double(left, top, right - left, bottom - top)
            .intersectsLine(from.x(), from.y(), to.x(), to.y());
  }
}
