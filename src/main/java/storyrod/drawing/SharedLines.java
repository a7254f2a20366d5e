package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Seen.Stroke;
import storyrod.geometry.Intervals;
import storyrod.geometry.Intervals.Stretch;

/** Keeps of strokes on one line only what no earlier stroke has drawn. */
final class SharedLines {
  private static final double SAME_LINE_MM = 0.02;
  private static final double SHORT_MM = 0.05;

  private record Numbered(int number, Stroke stroke) {}

  private final List<Stroke> strokes = new ArrayList<>();
  private final List<Integer> ends = new ArrayList<>();

  void add(Stroke stroke) {
    strokes.add(stroke);
  }

  void addAll(List<Stroke> more) {
    strokes.addAll(more);
  }

  void endOfItem() {
    ends.add(strokes.size());
  }

  /** For each item, what remains of its strokes. */
  List<List<Stroke>> unique() {
    STRtree index = new STRtree();
    for (int i = 0; i < strokes.size(); i++) {
      index.insert(around(strokes.get(i)), new Numbered(i, strokes.get(i)));
    }
    List<List<Stroke>> items = new ArrayList<>();
    int start = 0;
    for (int end : ends) {
      List<Stroke> left = new ArrayList<>();
      for (int i = start; i < end; i++) {
        left.addAll(left(i, index));
      }
      items.add(left);
      start = end;
    }
    return items;
  }

  private List<Stroke> left(int number, STRtree index) {
    Stroke stroke = strokes.get(number);
    List<Stroke> before = new ArrayList<>();
    for (Object each : index.query(around(stroke))) {
      Numbered other = (Numbered) each;
      if (other.number() < number) {
        before.add(other.stroke());
      }
    }
    return left(stroke, before);
  }

  /** What remains of a stroke where others were drawn before it. */
  static List<Stroke> left(Stroke stroke, List<Stroke> before) {
    List<Stretch> drawn = new ArrayList<>();
    before.forEach(other -> drawn.addAll(common(stroke, other).stretches()));
    double tooShort = SHORT_MM / stroke.length();
    Intervals left = Intervals.of(0, 1).minus(Intervals.union(drawn, tooShort));
    return left.longerThan(tooShort).stretches().stream()
        .map(stretch -> stroke.between(stretch.from(), stretch.to()))
        .toList();
  }

  /** The share of a stroke that runs on another. */
  private static Intervals common(Stroke stroke, Stroke other) {
    double one = along(stroke, other.from());
    double two = along(stroke, other.to());
    double from = Math.max(0, Math.min(one, two));
    double to = Math.min(1, Math.max(one, two));
    boolean same =
        (to - from) * stroke.length() > SHORT_MM
            && away(other, stroke.at(from)) < SAME_LINE_MM
            && away(other, stroke.at(to)) < SAME_LINE_MM;
    return same ? Intervals.of(from, to) : Intervals.NONE;
  }

  private static double along(Stroke stroke, At at) {
    double dx = stroke.to().x() - stroke.from().x();
    double dy = stroke.to().y() - stroke.from().y();
    double x = at.x() - stroke.from().x();
    double y = at.y() - stroke.from().y();
    return (x * dx + y * dy) / (dx * dx + dy * dy);
  }

  private static double away(Stroke stroke, At at) {
    double dx = stroke.to().x() - stroke.from().x();
    double dy = stroke.to().y() - stroke.from().y();
    double x = at.x() - stroke.from().x();
    double y = at.y() - stroke.from().y();
    return Math.abs(x * dy - y * dx) / Math.hypot(dx, dy);
  }

  /** Where other strokes can be on its line. */
  static Envelope around(Stroke stroke) {
    Envelope envelope =
        new Envelope(stroke.from().x(), stroke.to().x(), stroke.from().y(), stroke.to().y());
    envelope.expandBy(SAME_LINE_MM);
    return envelope;
  }
}
