package storyrod.drawing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.geometry.Solid;
import storyrod.piece.Part;

/** How far parts must move until they and what they came from can be seen on the paper. */
final class Clearance {
  private static final double ALLOWED_OF_ALL = 0.12;
  private static final double ALLOWED_OF_A_PART = 0.35;
  private static final double WORTH_A_STEP = 0.01;
  private static final int STEPS = 40;

  /** What rounding leaves where parts slide on each other, in mm³. */
  private static final double TOUCHING_MM3 = 50;

  /** Worse than any overlap on the paper. */
  private static final double COLLISION = 100;

  private final View view;
  private final Map<String, Outline> outlines = new LinkedHashMap<>();
  private final Map<String, Solid> solids = new LinkedHashMap<>();

  Clearance(List<Part> parts, View view) {
    this.view = view;
    for (Part part : parts) {
      outlines.put(part.name(), Outline.of(part.placed(), view));
      solids.put(part.name(), part.placed());
    }
  }

  /** The area in mm² of the outline of a part in the view. */
  double area(String part) {
    return outlines.get(part).area();
  }

  /**
   * Parts that move out, and those that stay.
   *
   * @param ways the unit vector along which each part moves
   */
  record Moving(Map<String, Vector3D> ways, List<String> staying) {}

  /**
   * The least distance in mm, from one up to another, at which hardly anything is overlapped; where
   * there is none, the one at which the least is.
   */
  double distance(Moving moving, Map<String, Vector3D> offsets, double from, double to) {
    double best = from;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= STEPS; i++) {
      double distance = from + i * (to - from) / STEPS;
      double excess = excess(moving, offsets, distance);
      if (excess < least && runsInto(moving, offsets, distance)) {
        excess += COLLISION;
      }
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
  private double excess(Moving moving, Map<String, Vector3D> offsets, double distance) {
    Map<String, Double> covered = new LinkedHashMap<>();
    double total = 0;
    for (String part : moving.ways().keySet()) {
      Outline moved = outlines.get(part).moved(at(part, moving, offsets, distance), view);
      for (String other : moving.staying()) {
        double shared = moved.shared(outlines.get(other).moved(offsets.get(other), view));
        total += shared;
        covered.merge(part, shared, Double::sum);
        covered.merge(other, shared, Double::sum);
      }
    }
    double all = moving.ways().keySet().stream().mapToDouble(this::area).sum();
    double worst =
        covered.entrySet().stream()
            .mapToDouble(each -> each.getValue() / area(each.getKey()))
            .max()
            .orElse(0);
    return Math.max(0, total / all - ALLOWED_OF_ALL) + Math.max(0, worst - ALLOWED_OF_A_PART);
  }

  private static Vector3D at(
      String part, Moving moving, Map<String, Vector3D> offsets, double distance) {
    return offsets.get(part).add(moving.ways().get(part).multiply(distance));
  }

  /** Whether a moving part would be drawn inside one that stays. */
  private boolean runsInto(Moving moving, Map<String, Vector3D> offsets, double distance) {
    return moving.ways().keySet().stream()
        .anyMatch(
            part ->
                moving.staying().stream()
                    .anyMatch(
                        other ->
                            meet(
                                part,
                                other,
                                at(part, moving, offsets, distance).subtract(offsets.get(other)))));
  }

  private boolean meet(String part, String other, Vector3D by) {
    Solid moved = solids.get(part);
    return solids.get(other).sharedVolumeMm3(moved, by) > TOUCHING_MM3;
  }
}
