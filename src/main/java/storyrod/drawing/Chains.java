package storyrod.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Seen.Stroke;

/** Joins strokes that run on into each other, so that a curve is one line. */
final class Chains {
  private static final double PER_MM = 100;

  private final Map<String, List<Stroke>> byEnd = new LinkedHashMap<>();
  private final java.util.Set<Stroke> left = new java.util.LinkedHashSet<>();

  private Chains(List<Stroke> strokes) {
    for (Stroke stroke : strokes) {
      left.add(stroke);
      at(stroke.from()).add(stroke);
      at(stroke.to()).add(stroke);
    }
  }

  static List<List<At>> of(List<Stroke> strokes) {
    return new Chains(strokes).joined();
  }

  private List<Stroke> at(At at) {
    return byEnd.computeIfAbsent(key(at), key -> new ArrayList<>());
  }

  private static String key(At at) {
    return Math.round(at.x() * PER_MM) + " " + Math.round(at.y() * PER_MM);
  }

  private List<List<At>> joined() {
    List<List<At>> chains = new ArrayList<>();
    while (!left.isEmpty()) {
      Stroke first = left.iterator().next();
      left.remove(first);
      List<At> ahead = run(first.to());
      List<At> behind = run(first.from());
      List<At> chain = new ArrayList<>(behind.reversed());
      chain.addAll(ahead);
      chains.add(chain);
    }
    return chains;
  }

  /** The points from one on, as long as exactly one more stroke goes on from there. */
  private List<At> run(At start) {
    List<At> points = new ArrayList<>(List.of(start));
    while (true) {
      At end = points.getLast();
      List<Stroke> meeting = at(end);
      List<Stroke> next = meeting.stream().filter(left::contains).toList();
      if (meeting.size() != 2 || next.size() != 1) {
        return points;
      }
      left.remove(next.getFirst());
      boolean forwards = key(next.getFirst().from()).equals(key(end));
      points.add(forwards ? next.getFirst().to() : next.getFirst().from());
    }
  }
}
