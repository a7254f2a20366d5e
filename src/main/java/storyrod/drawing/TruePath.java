package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import storyrod.drawing.Drawing.At;

/**
 * A line at full size, in mm, y downwards: straight stretches and true arcs, each of which starts
 * where the one before it ends.
 *
 * @param closed whether the last one ends where the first starts
 */
public record TruePath(List<Stretch> stretches, boolean closed) {
  /** How far a chord may be from its arc, in mm. */
  private static final double SAGITTA_MM = 0.002;

  public TruePath {
    stretches = List.copyOf(stretches);
  }

  /** A stretch of the line. The set of stretches is closed. */
  public sealed interface Stretch {
    At from();

    At to();
  }

  /** A straight stretch. */
  public record Straight(At from, At to) implements Stretch {}

  /**
   * An arc of less than a full turn.
   *
   * @param clockwise as it is seen on paper
   */
  public record Round(At from, At to, At centre, double radius, boolean clockwise)
      implements Stretch {
    /** How far it runs, in radians. */
    public double sweep() {
      double turn = angle(to) - angle(from);
      double forwards = clockwise ? turn : -turn;
      double full = 2 * Math.PI;
      return ((forwards % full) + full) % full;
    }

    private double angle(At at) {
      return StrictMath.atan2(at.y() - centre.y(), at.x() - centre.x());
    }

    /** The point at a share of the way. */
    public At at(double share) {
      double angle = angle(from) + (clockwise ? 1 : -1) * share * sweep();
      return centre.plus(radius * StrictMath.cos(angle), radius * StrictMath.sin(angle));
    }
  }

  /** A straight line. */
  static TruePath line(At from, At to) {
    return new TruePath(List.of(new Straight(from, to)), false);
  }

  /** A circle, as two halves. */
  static TruePath circle(At centre, double radius) {
    At right = centre.plus(radius, 0);
    At left = centre.plus(-radius, 0);
    return new TruePath(
        List.of(
            new Round(right, left, centre, radius, true),
            new Round(left, right, centre, radius, true)),
        true);
  }

  /** Its points, arcs as chords that cannot be told from them. */
  public List<At> points() {
    List<At> points = new ArrayList<>(List.of(stretches.getFirst().from()));
    for (Stretch stretch : stretches) {
      if (stretch instanceof Round round) {
        double step = 2 * StrictMath.acos(Math.max(0.5, 1 - SAGITTA_MM / round.radius()));
        int chords = Math.max(2, (int) Math.ceil(round.sweep() / step));
        for (int i = 1; i < chords; i++) {
          points.add(round.at((double) i / chords));
        }
      }
      points.add(stretch.to());
    }
    return points;
  }

  /** A rectangle that it cannot leave, on paper. */
  Bounds reach() {
    Bounds reach = Bounds.NONE;
    for (Stretch stretch : stretches) {
      reach = reach.with(stretch.from()).with(stretch.to());
      if (stretch instanceof Round round) {
        reach = reach.with(Bounds.NONE.with(round.centre()).widened(round.radius()));
      }
    }
    return reach;
  }

  /** Whether both have the same ends, either way round. */
  boolean isAlong(TruePath other) {
    At from = stretches.getFirst().from();
    At to = stretches.getLast().to();
    At start = other.stretches.getFirst().from();
    At end = other.stretches.getLast().to();
    return Math.min(
            Math.max(from.distance(start), to.distance(end)),
            Math.max(from.distance(end), to.distance(start)))
        < 1e-6;
  }

  /** The same line with every point moved by a turn or a shift of the paper. */
  TruePath mapped(java.util.function.UnaryOperator<At> move) {
    return new TruePath(stretches.stream().map(each -> mapped(each, move)).toList(), closed);
  }

  private static Stretch mapped(Stretch stretch, java.util.function.UnaryOperator<At> move) {
    return switch (stretch) {
      case Straight s -> new Straight(move.apply(s.from()), move.apply(s.to()));
      case Round r ->
          new Round(
              move.apply(r.from()),
              move.apply(r.to()),
              move.apply(r.centre()),
              r.radius(),
              r.clockwise());
    };
  }
}
