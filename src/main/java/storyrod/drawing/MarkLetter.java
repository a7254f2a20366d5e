package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.Arrow;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;

/**
 * The letter that is written on a part, its arrow and the loop of the face mark: on the face, or
 * beside one that is too small for them.
 */
record MarkLetter(String mark) {
  private static final double LOOP_MM = 1.1;

  /** From its middle to its top, and to the ends of its tails. */
  private static final double LOOP_HALF_MM = 1.3 * LOOP_MM;

  private static final double ARROW_MM = 4;
  private static final double ARROW_AT_MM = 1.25;

  /** Up to the letter, clear of the arrow's head. */
  private static final double ARROW_ROOM_MM = 3.2;

  private static final double EDGE_MM = 1.5;
  private static final double CLEAR_MM = 0.4;
  private static final int POINTS = 16;

  /** Between a face, with its edge marks, and what stands beside it. */
  private static final double GAP_MM = 2.5;

  private static final double HIGH_MM =
      TextStyle.MARK.sizeMm() * (TextSetting.ASCENT + TextSetting.DESCENT) + 2 * CLEAR_MM;

  private double wideMm() {
    return TextSetting.of(TextStyle.MARK, mark).width();
  }

  private double rowMm() {
    return ARROW_ROOM_MM + wideMm() + 3.2 * LOOP_MM;
  }

  /** What it takes at the right of a face. */
  double besideMm() {
    return GAP_MM + rowMm();
  }

  /** On a face, in a row or, where that is too long, above the loop; empty without room. */
  Optional<List<Element>> on(Bounds face) {
    double left = face.left() + Math.max(0, Math.min(EDGE_MM, (face.width() - rowMm()) / 2));
    if (rowMm() <= face.width() && HIGH_MM <= face.height()) {
      return Optional.of(row(new At(left, face.middle().y())));
    }
    double third = face.height() / 3;
    At loop = new At(face.middle().x(), face.bottom() - 0.75 * third);
    double room = loop.y() - LOOP_HALF_MM - (face.top() + third);
    return ARROW_ROOM_MM + wideMm() + CLEAR_MM <= face.width() && HIGH_MM / 2 <= room
        ? Optional.of(letter(new At(left, face.top() + third), loop))
        : Optional.empty();
  }

  List<Element> beside(Bounds face) {
    return row(new At(face.right() + GAP_MM, face.middle().y()));
  }

  private List<Element> row(At left) {
    return letter(left, left.plus(ARROW_ROOM_MM + wideMm() + 1.9 * LOOP_MM, 0));
  }

  private List<Element> letter(At left, At loop) {
    double x = left.x() + ARROW_AT_MM;
    double half = ARROW_MM / 2;
    double rise = (TextSetting.ASCENT - TextSetting.DESCENT) / 2;
    At text = left.plus(ARROW_ROOM_MM, TextStyle.MARK.sizeMm() * rise);
    return List.of(
        new Arrow(new At(x, left.y() + half), new At(x, left.y() - half), false),
        new Text(TextStyle.MARK, text, Anchor.START, true, mark),
        new Line(Role.THIN, loop(loop)));
  }

  /** With both its tails crossed below: one with a tail alone reads as the letter Q. */
  private static List<At> loop(At middle) {
    List<At> points = new ArrayList<>();
    points.add(middle.plus(-0.7 * LOOP_MM, 1.3 * LOOP_MM));
    IntStream.rangeClosed(0, POINTS)
        .mapToDouble(i -> Math.toRadians(-25 + 230.0 * i / POINTS))
        .mapToObj(
            turn ->
                middle.plus(
                    0.8 * LOOP_MM * StrictMath.cos(turn),
                    -LOOP_MM * (0.5 + 0.8 * StrictMath.sin(turn))))
        .forEach(points::add);
    points.add(middle.plus(0.7 * LOOP_MM, 1.3 * LOOP_MM));
    return points;
  }
}
