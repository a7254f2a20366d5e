package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.words.Words;

/** Two bars drawn true, 100 mm and 4 in, by which a reader sees that a printer kept the scale. */
public final class CheckBars {
  /** What both bars take with their labels, in mm. */
  public static final double WIDTH_MM = 117;

  public static final double HEIGHT_MM = 18;
  private static final double INCH_MM = 25.4;

  private CheckBars() {}

  /** The bars, the left end of the upper one 6 mm below a corner. */
  public static List<Element> at(At corner, Words words) {
    List<Element> elements = new ArrayList<>();
    bar(elements, corner.plus(0, 6), new double[] {10, 10}, words.say("check-bar.mm"));
    bar(elements, corner.plus(0, 17), new double[] {INCH_MM, 4}, words.say("check-bar.inch"));
    return elements;
  }

  private static void bar(List<Element> elements, At left, double[] steps, String label) {
    At end = left.plus(steps[0] * steps[1], 0);
    elements.add(new Line(Role.VISIBLE, List.of(left, end)));
    for (int i = 0; i <= steps[1]; i++) {
      double tick = i == 0 || i == steps[1] ? 3 : 1.5;
      At foot = left.plus(i * steps[0], 0);
      elements.add(new Line(Role.THIN, List.of(foot.plus(0, -tick), foot)));
    }
    elements.add(new Text(TextStyle.NOTE, end.plus(3, 0), Anchor.START, true, label));
  }
}
