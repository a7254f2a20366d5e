package storyrod.drawing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.piece.Part;

/** How far parts must move until they and what they came from can be seen on the paper. */
final class Clearance {
  private static final double ALLOWED_OF_ALL = 0.12;
  private static final double ALLOWED_OF_A_PART = 0.35;
  private static final double WORTH_A_STEP = 0.01;
  private static final int STEPS = 40;

  private final View view;
  private final Map<String, Outline> outlines = new LinkedHashMap<>();

  Clearance(List<Part> parts, View view) {
    this.view = view;
    for (Part part : parts) {
      outlines.put(part.name(), Outline.of(part.placed(), view));
    }
  }

  /** The area in mm² of the outline of a part in the view. */
  double area(String part) {
    return outlines.get(part).area();
  }

  /** Parts that move out in a direction, and those that stay. */
  record Moving(List<String> parts, List<String> staying, Vector3D out) {}

  /**
   * The least distance in mm, from one up to another, at which hardly anything is overlapped; where
   * there is none, the one at which the least is.
   */
  double distance(Moving moving, Map<String, Vector3D> offsets, double from, double to) {
    double best = from;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= STEPS; i++) {
      double distance = from + i * (to - from) / STEPS;
      double excess = excess(moving, offsets, moving.out().multiply(distance));
      if (excess <= 0) {
        return distance;
      }
      if (excess < least - WORTH_A_STEP) {
        least = excess;
        best = distance;
      }
    }
    return best;
  }

  /** By how much more than allowed the moving parts and the worst single part are overlapped. */
  private double excess(Moving moving, Map<String, Vector3D> offsets, Vector3D by) {
    Map<String, Double> covered = new LinkedHashMap<>();
    double total = 0;
    for (String part : moving.parts()) {
      Outline moved = outlines.get(part).moved(offsets.get(part).add(by), view);
      for (String other : moving.staying()) {
        double shared = moved.shared(outlines.get(other).moved(offsets.get(other), view));
        total += shared;
        covered.merge(part, shared, Double::sum);
        covered.merge(other, shared, Double::sum);
      }
    }
    double all = moving.parts().stream().mapToDouble(this::area).sum();
    double worst =
        covered.entrySet().stream()
            .mapToDouble(each -> each.getValue() / area(each.getKey()))
            .max()
            .orElse(0);
    return Math.max(0, total / all - ALLOWED_OF_ALL) + Math.max(0, worst - ALLOWED_OF_A_PART);
  }
}
