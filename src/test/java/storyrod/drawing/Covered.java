package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Ellipse;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.Tone;

/** A drawing in its order of painting: a line under a text counts only where nothing covers it. */
final class Covered {
  private static final int SAMPLES = 8;

  private final List<Element> painted;

  private Covered(List<Element> painted) {
    this.painted = painted;
  }

  /** The texts with the lines that run through them and can be seen there. */
  static List<String> textsOnLines(Drawing drawing) {
    List<Element> painted =
        drawing.elements().stream().flatMap(each -> Lowering.simple(each).stream()).toList();
    return new Covered(painted).faults();
  }

  private List<String> faults() {
    List<String> faults = new ArrayList<>();
    for (Element element : painted) {
      if (element instanceof Text text) {
        PlacedText placed = box(text);
        for (int i = 0; i < painted.size(); i++) {
          for (Paper.Stretch line : Paper.stretches(painted.get(i))) {
            if (placed.meets(line.from(), line.to()) && isSeen(i, line, placed)) {
              faults.add("'" + placed.text() + "' lies on a line " + line);
            }
          }
        }
      }
    }
    return faults;
  }

  /** The room of a text; figures, as those in a ring, reach neither below nor above capitals. */
  private static PlacedText box(Text text) {
    PlacedText box = PlacedText.of(text);
    boolean figures = text.upright() && text.text().chars().allMatch(Character::isDigit);
    return figures
        ? new PlacedText(
            box.text(),
            box.sizeMm(),
            box.left(),
            text.at().y() - Lowering.CAPITAL * box.sizeMm(),
            box.right(),
            text.at().y())
        : box;
  }

  /** Whether any point of a line inside a text's box is left bare by all that is painted later. */
  private boolean isSeen(int index, Paper.Stretch line, PlacedText text) {
    return inside(line, text)
        .map(
            within ->
                between(within).stream()
                    .anyMatch(
                        at ->
                            painted.subList(index + 1, painted.size()).stream()
                                .noneMatch(later -> covers(later, at))))
        .orElse(true);
  }

  private static List<At> between(Paper.Stretch line) {
    List<At> points = new ArrayList<>();
    for (int i = 0; i <= SAMPLES; i++) {
      double part = i / (double) SAMPLES;
      points.add(
          line.from()
              .plus(
                  part * (line.to().x() - line.from().x()),
                  part * (line.to().y() - line.from().y())));
    }
    return points;
  }

  /** What of a line lies in a text's box (clipping by its four sides in turn). */
  private static Optional<Paper.Stretch> inside(Paper.Stretch line, PlacedText box) {
    double dx = line.to().x() - line.from().x();
    double dy = line.to().y() - line.from().y();
    double[] towards = {-dx, dx, -dy, dy};
    double[] room = {
      line.from().x() - box.left(),
      box.right() - line.from().x(),
      line.from().y() - box.top(),
      box.bottom() - line.from().y()
    };
    double first = 0;
    double last = 1;
    for (int i = 0; i < 4; i++) {
      if (towards[i] < 0) {
        first = Math.max(first, room[i] / towards[i]);
      } else if (towards[i] > 0) {
        last = Math.min(last, room[i] / towards[i]);
      }
    }
    return first <= last
        ? Optional.of(
            new Paper.Stretch(
                line.from().plus(first * dx, first * dy), line.from().plus(last * dx, last * dy)))
        : Optional.empty();
  }

  private static boolean covers(Element element, At at) {
    return switch (element) {
      case Ellipse e when e.fill().filter(tone -> tone == Tone.WHITE).isPresent() -> {
        double x = (at.x() - e.centre().x()) / e.rx();
        double y = (at.y() - e.centre().y()) / e.ry();
        yield e.turned() == 0 && x * x + y * y <= 1;
      }
      case Area area when area.tone() != Tone.INK && area.tone() != Tone.HATCH ->
          isIn(area.rings(), at);
      default -> false;
    };
  }

  /** By the even-odd rule. */
  static boolean isIn(List<List<At>> rings, At at) {
    boolean in = false;
    for (List<At> ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        At one = ring.get(i);
        At two = ring.get((i + 1) % ring.size());
        boolean spans = one.y() <= at.y() != two.y() <= at.y();
        if (spans
            && at.x() < one.x() + (at.y() - one.y()) / (two.y() - one.y()) * (two.x() - one.x())) {
          in = !in;
        }
      }
    }
    return in;
  }
}
