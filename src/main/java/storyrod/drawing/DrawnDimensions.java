package storyrod.drawing;

import java.util.List;

/** The dimensions on a drawing: their lines, and the extension lines that lead to these. */
record DrawnDimensions(List<Paper.Stretch> lines, List<Paper.Stretch> extensions) {
  /** What to cross an extension line counts, as a share of a dimension line. */
  private static final double EXTENSION = 0.3;

  DrawnDimensions {
    lines = List.copyOf(lines);
    extensions = List.copyOf(extensions);
  }

  /** Those that a half-line may meet. */
  DrawnDimensions on(HalfLine way) {
    return new DrawnDimensions(way.mayMeet(lines), way.mayMeet(extensions));
  }

  /**
   * How many dimension lines a leader or a landing crosses, an extension line as a share of one.
   */
  double crossed(Paper.Stretch line) {
    return count(line, lines) + EXTENSION * count(line, extensions);
  }

  /** How many of some lines a stretch crosses. */
  static int count(Paper.Stretch line, List<Paper.Stretch> others) {
    int crossed = 0;
    for (Paper.Stretch each : others) {
      crossed += line.crosses(each) ? 1 : 0;
    }
    return crossed;
  }
}
