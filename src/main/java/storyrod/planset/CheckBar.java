package storyrod.planset;

import java.util.Optional;
import storyrod.drawing.CheckBars;
import storyrod.drawing.Drawing;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Scale;

/** The two bars by which a reader sees that the printer did not change the scale. */
final class CheckBar {
  static final String NAME = "check-bar";
  static final double WIDTH_MM = CheckBars.WIDTH_MM + 1;
  static final double HEIGHT_MM = CheckBars.HEIGHT_MM + 1;

  private CheckBar() {}

  static DrawingBox box() {
    return new DrawingBox(NAME, WIDTH_MM, HEIGHT_MM, Optional.of(new Scale(1, 1)));
  }

  static Drawing drawing(Texts texts) {
    return new Drawing(
        NAME,
        WIDTH_MM,
        HEIGHT_MM,
        Optional.of(new Scale(1, 1)),
        CheckBars.at(new At(1, 0), texts.words()));
  }
}
