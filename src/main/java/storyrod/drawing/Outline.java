package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.drawing.Drawing.At;
import storyrod.geometry.FlatFace;
import storyrod.geometry.Solid;

/**
 * The convex hull of a solid's picture, for a quick judgement of what overlaps on the paper; its
 * corners run counter-clockwise in a frame with y up, clockwise on paper.
 */
record Outline(List<At> corners, double minX, double maxX, double minY, double maxY) {
  static Outline of(Solid solid, View view) {
    return of(List.of(solid), view);
  }

  /** One outline round several solids, which have some wood between them. */
  static Outline of(List<Solid> solids, View view) {
    List<At> points = new ArrayList<>();
    for (Solid solid : solids) {
      for (FlatFace face : solid.faces()) {
        face.outer().forEach(corner -> points.add(view.project(corner)));
      }
    }
    return of(hull(points));
  }

  private static Outline of(List<At> corners) {
    double minX = corners.stream().mapToDouble(At::x).min().orElse(0);
    double maxX = corners.stream().mapToDouble(At::x).max().orElse(0);
    double minY = corners.stream().mapToDouble(At::y).min().orElse(0);
    double maxY = corners.stream().mapToDouble(At::y).max().orElse(0);
    return new Outline(corners, minX, maxX, minY, maxY);
  }

  Outline moved(Vector3D by, View view) {
    At shift = view.project(by);
    return new Outline(
        corners.stream().map(at -> at.plus(shift.x(), shift.y())).toList(),
        minX + shift.x(),
        maxX + shift.x(),
        minY + shift.y(),
        maxY + shift.y());
  }

  double area() {
    return area(corners);
  }

  /** The area in mm² that two outlines share. */
  double shared(Outline other) {
    boolean apart =
        other.minX >= maxX || other.maxX <= minX || other.minY >= maxY || other.maxY <= minY;
    if (apart) {
      return 0;
    }
    List<At> left = corners;
    At before = other.corners.getLast();
    for (At at : other.corners) {
      left = clipped(left, before, at);
      before = at;
    }
    return area(left);
  }

  private static List<At> clipped(List<At> ring, At from, At to) {
    List<At> kept = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      At at = ring.get(i);
      At next = ring.get((i + 1) % ring.size());
      double here = turn(from, to, at);
      double there = turn(from, to, next);
      if (here >= 0) {
        kept.add(at);
      }
      if (here > 0 && there < 0 || here < 0 && there > 0) {
        double share = here / (here - there);
        kept.add(at.plus(share * (next.x() - at.x()), share * (next.y() - at.y())));
      }
    }
    return kept;
  }

  private static List<At> hull(List<At> points) {
    List<At> sorted = new ArrayList<>(points);
    sorted.sort(Comparator.comparingDouble(At::x).thenComparingDouble(At::y));
    List<At> hull = new ArrayList<>(chain(sorted));
    hull.removeLast();
    List<At> back = chain(sorted.reversed());
    hull.addAll(back.subList(0, back.size() - 1));
    return hull;
  }

  private static List<At> chain(List<At> points) {
    List<At> chain = new ArrayList<>();
    for (At at : points) {
      while (chain.size() > 1 && turn(chain.get(chain.size() - 2), chain.getLast(), at) <= 1e-9) {
        chain.removeLast();
      }
      chain.add(at);
    }
    return chain;
  }

  private static double turn(At from, At to, At at) {
    return (to.x() - from.x()) * (at.y() - from.y()) - (to.y() - from.y()) * (at.x() - from.x());
  }

  /** The area in mm² inside a ring, whichever way it runs. */
  static double area(List<At> ring) {
    double sum = 0;
    for (int i = 0; i < ring.size(); i++) {
      At at = ring.get(i);
      At next = ring.get((i + 1) % ring.size());
      sum += at.x() * next.y() - next.x() * at.y();
    }
    return Math.abs(sum) / 2;
  }
}
