package storyrod.stock;

import java.util.List;

/** Rectangles to saw out of as few equal sheets as possible; all sizes in whole ticks. */
record SheetProblem(Sheet sheet, List<Rectangle> parts) {
  SheetProblem {
    parts = List.copyOf(parts);
  }

  /** A sheet before its edges are trimmed, and the saw that cuts it. */
  record Sheet(long length, long width, long kerf, Trim trim) {
    /** What is left to saw parts from. */
    long usableLength() {
      return length - trim.left() - trim.right();
    }

    long usableWidth() {
      return width - trim.bottom() - trim.top();
    }
  }

  /** What is cut off each edge first: left and right along x, bottom and top along y. */
  record Trim(long left, long right, long bottom, long top) {
    static Trim all(long each) {
      return new Trim(each, each, each, each);
    }
  }

  /** A part's finished size, its length along the sheet's length unless it is turned. */
  record Rectangle(long length, long width, boolean mayTurn) {}

  /** Whether a part fits on an empty sheet in one of its allowed positions. */
  boolean fits(Rectangle part) {
    return fits(part.length(), part.width()) || part.mayTurn() && fits(part.width(), part.length());
  }

  private boolean fits(long length, long width) {
    return length <= sheet.usableLength() && width <= sheet.usableWidth();
  }
}
