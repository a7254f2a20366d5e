package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import storyrod.drawing.Drawing.At;

/** Lines at 45° that fill an area by the even-odd rule. */
final class Hatching {
  private static final double PITCH = 1.8;
  private static final double SQRT2 = 1.4142135623730951;

  private Hatching() {}

  /** Pairs of points in mm; the lines lie on one grid for the whole paper. */
  static List<List<At>> lines(List<List<At>> rings) {
    return lines(rings, PITCH);
  }

  /** The same with lines at another distance, in mm. */
  static List<List<At>> lines(List<List<At>> rings, double pitchMm) {
    double step = pitchMm * SQRT2;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (List<At> ring : rings) {
      for (At at : ring) {
        low = Math.min(low, at.x() + at.y());
        high = Math.max(high, at.x() + at.y());
      }
    }
    List<List<At>> lines = new ArrayList<>();
    for (double sum = (Math.floor(low / step) + 0.5) * step; sum < high; sum += step) {
      addLines(rings, sum, lines);
    }
    return lines;
  }

  private static void addLines(List<List<At>> rings, double sum, List<List<At>> lines) {
    List<At> crossings = new ArrayList<>();
    for (List<At> ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        addCrossing(ring.get(i), ring.get((i + 1) % ring.size()), sum, crossings);
      }
    }
    crossings.sort(java.util.Comparator.comparingDouble(At::x));
    for (int i = 0; i + 1 < crossings.size(); i += 2) {
      lines.add(List.of(crossings.get(i), crossings.get(i + 1)));
    }
  }

  private static void addCrossing(At from, At to, double sum, List<At> crossings) {
    double before = from.x() + from.y() - sum;
    double after = to.x() + to.y() - sum;
    if (before < 0 != after < 0) {
      double part = before / (before - after);
      crossings.add(from.plus((to.x() - from.x()) * part, (to.y() - from.y()) * part));
    }
  }
}
