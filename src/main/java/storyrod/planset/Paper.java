package storyrod.planset;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import storyrod.drawing.Drawing;
import storyrod.measure.Unit;

/**
 * A sheet of paper; those with names are upright: US letter and tabloid (ASME Y14.1, A and B: 8 1/2
 * x 11 and 11 x 17 in), A4 and A3 (ISO 216).
 *
 * @param sideMm the margin left and right
 * @param topMm from the paper's edge to the text, the running head between them
 * @param bottomMm from the text to the paper's edge, the foot between them
 */
public record Paper(double widthMm, double heightMm, double sideMm, double topMm, double bottomMm) {
  public static final Paper LETTER = new Paper(215.9, 279.4, 17, 28, 24);
  public static final Paper A4 = new Paper(210, 297, 17, 28, 24);
  public static final Paper TABLOID = new Paper(279.4, 431.8, 17, 28, 24);
  public static final Paper A3 = new Paper(297, 420, 17, 28, 24);

  private static final double ROUNDED_MM = 0.01;

  /** The papers by the names that the trade has for them. */
  public static final Map<String, Paper> BY_NAME = byName();

  private static Map<String, Paper> byName() {
    Map<String, Paper> papers = new LinkedHashMap<>();
    papers.put("letter", LETTER);
    papers.put("a4", A4);
    papers.put("tabloid", TABLOID);
    papers.put("a3", A3);
    return Collections.unmodifiableMap(papers);
  }

  public static Paper usualFor(Unit unit) {
    return switch (unit) {
      case INCH -> LETTER;
      case MM -> A4;
    };
  }

  /** The same sheet turned by a quarter, its head along the longer side of an upright one. */
  Paper turned() {
    return new Paper(heightMm, widthMm, sideMm, topMm, bottomMm);
  }

  /** Whether a drawing needs this sheet turned, as it is wider than the text. */
  public boolean turnsFor(double drawingMm) {
    return drawingMm > textWidthMm() + ROUNDED_MM;
  }

  /** What a drawing takes of a page's room with what stands beside it: on a turned one all. */
  double takenMm(DrawingBox drawing, double besideMm) {
    return turnsFor(drawing.widthMm()) ? roomMm() : besideMm + drawing.heightMm();
  }

  /** This sheet as a drawing needs it. */
  Paper with(Drawing drawing) {
    return turnsFor(drawing.widthMm()) ? turned() : this;
  }

  public double textWidthMm() {
    return widthMm - 2 * sideMm;
  }

  public double textHeightMm() {
    return heightMm - topMm - bottomMm;
  }

  /**
   * The height for things that are set on pages by their measured heights, with a little to spare.
   */
  double roomMm() {
    return textHeightMm() - 3;
  }
}
