package storyrod.planset;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.drawing.Drawing;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.Scale;

/** Two bars drawn true, by which a reader sees that the printer did not change the scale. */
final class CheckBar {
  static final String NAME = "check-bar";
  static final double WIDTH_MM = 118;
  static final double HEIGHT_MM = 19;
  private static final double LEFT = 1;
  private static final double INCH_MM = 25.4;

  private CheckBar() {}

  static DrawingBox box() {
    return new DrawingBox(NAME, WIDTH_MM, HEIGHT_MM, Optional.of(new Scale(1, 1)));
  }

  static Drawing drawing(Texts texts) {
    List<Element> elements = new ArrayList<>();
    bar(elements, 6, 10, 10, texts.say("check-bar.mm"));
    bar(elements, 17, INCH_MM, 4, texts.say("check-bar.inch"));
    return new Drawing(NAME, WIDTH_MM, HEIGHT_MM, Optional.of(new Scale(1, 1)), elements);
  }

  private static void bar(List<Element> elements, double y, double step, int steps, String label) {
    double end = LEFT + steps * step;
    elements.add(new Line(Role.VISIBLE, List.of(new At(LEFT, y), new At(end, y))));
    for (int i = 0; i <= steps; i++) {
      double tick = i == 0 || i == steps ? 3 : 1.5;
      double x = LEFT + i * step;
      elements.add(new Line(Role.THIN, List.of(new At(x, y - tick), new At(x, y))));
    }
    elements.add(new Text(TextStyle.NOTE, new At(end + 3, y), Anchor.START, true, label));
  }
}
