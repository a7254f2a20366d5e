package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.geometry.Axis;
import storyrod.geometry.Cylinder;
import storyrod.geometry.FlatFace;
import storyrod.geometry.Solid;

/**
 * A long part with stretches left out in which it goes on alike, so that what a step takes off it
 * can be made out (ISO 128-3, from memory). All lengths are in mm along the flat part.
 */
final class Shortened {
  /** What is kept beside a stretch that is left out, in widths of the part. */
  private static final double KEPT = 1.5;

  /** Between what is drawn on either side, in the same. */
  private static final double GAP = 0.3;

  /** So many stretches are left out at most: more of them would read as many parts. */
  private static final int MOST = 2;

  private static final double SAME_MM = 1e-3;

  private final Taken taken;
  private final double wideMm;

  private Shortened(Taken taken) {
    this.taken = taken;
    this.wideMm = Math.max(taken.flat().size(Axis.Y).toMm(), taken.flat().size(Axis.Z).toMm());
  }

  /** A stretch of the part. */
  private record Stretch(double from, double to) {
    double length() {
      return to - from;
    }

    Stream<Double> ends() {
      return Stream.of(from, to).filter(Double::isFinite);
    }

    boolean overlaps(double low, double high) {
      return low < to - SAME_MM && high > from + SAME_MM;
    }
  }

  /** Empty where nothing can be left out, or where edges are rounded, which are found by place. */
  static Optional<Taken> of(Taken taken) {
    Shortened shortened = new Shortened(taken);
    List<Stretch> out = shortened.leftOut();
    return out.isEmpty() || taken.rounds() ? Optional.empty() : Optional.of(shortened.without(out));
  }

  /** The middles of the longest plain stretches, in their order. */
  private List<Stretch> leftOut() {
    double kept = KEPT * wideMm;
    return plain()
        .filter(each -> each.length() > 2 * kept + (1 + GAP) * wideMm)
        .sorted(Comparator.comparingDouble(Stretch::length).reversed())
        .limit(MOST)
        .map(each -> new Stretch(each.from + kept, each.to - kept))
        .sorted(Comparator.comparingDouble(Stretch::from))
        .toList();
  }

  /** Stretches between corners and bores in which every face runs along the part. */
  private Stream<Stretch> plain() {
    TreeSet<Double> ends = new TreeSet<>();
    faces().flatMapToDouble(Shortened::along).forEach(ends::add);
    taken.allBores().flatMap(bore -> Stream.of(low(bore), high(bore))).forEach(ends::add);
    List<Double> all = List.copyOf(ends);
    List<Stretch> stretches = new ArrayList<>();
    for (int i = 0; i + 1 < all.size(); i++) {
      stretches.add(new Stretch(all.get(i), all.get(i + 1)));
    }
    return stretches.stream().filter(this::isPlain);
  }

  private Stream<FlatFace> faces() {
    return Stream.concat(taken.left().faces().stream(), taken.waste().faces().stream());
  }

  private static DoubleStream along(FlatFace face) {
    return Stream.concat(Stream.of(face.outer()), face.openings().stream())
        .flatMap(List::stream)
        .mapToDouble(Vector3D::getX);
  }

  private boolean isPlain(Stretch stretch) {
    return taken.allBores().noneMatch(each -> stretch.overlaps(low(each), high(each)))
        && faces().filter(face -> isSlanted(face)).noneMatch(face -> spans(face, stretch));
  }

  private static boolean isSlanted(FlatFace face) {
    double along = Math.abs(face.normal().getX());
    return along > 1e-6 && along < 1 - 1e-6;
  }

  private static boolean spans(FlatFace face, Stretch stretch) {
    return stretch.overlaps(along(face).min().orElseThrow(), along(face).max().orElseThrow());
  }

  private static double low(Cylinder bore) {
    return Math.min(bore.mouth().getX(), bore.end().getX()) - bore.radiusMm();
  }

  private static double high(Cylinder bore) {
    return Math.max(bore.mouth().getX(), bore.end().getX()) + bore.radiusMm();
  }

  private Taken without(List<Stretch> out) {
    Solid waste = taken.waste().bored(taken.bores());
    List<Solid> lefts = new ArrayList<>();
    List<Solid> wastes = new ArrayList<>();
    List<Double> sawnAt = new ArrayList<>();
    double from = Double.NEGATIVE_INFINITY;
    double moved = 0;
    for (Stretch next : withEnd(out)) {
      Stretch kept = new Stretch(from, next.from);
      Vector3D by = Vector3D.of(-moved, 0, 0);
      lefts.add(piece(taken.left(), kept).moved(by));
      wastes.add(piece(waste, kept).moved(by));
      kept.ends().map(at -> at + by.getX()).forEach(sawnAt::add);
      from = next.to;
      moved += next.length() - GAP * wideMm;
    }
    Solid all = together(wastes);
    return taken.shown(together(lefts), all.unbored(), all.bores(), sawnAt);
  }

  private static List<Stretch> withEnd(List<Stretch> out) {
    List<Stretch> all = new ArrayList<>(out);
    all.add(new Stretch(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY));
    return all;
  }

  private static Solid together(List<Solid> pieces) {
    List<Cylinder> bores = pieces.stream().flatMap(each -> each.bores().stream()).toList();
    return pieces.stream().map(Solid::unbored).reduce(Solid::with).orElseThrow().bored(bores);
  }

  /** What of a solid stands in a stretch, with the bores that are there. */
  private static Solid piece(Solid solid, Stretch kept) {
    List<Cylinder> bores =
        solid.bores().stream().filter(bore -> kept.overlaps(low(bore), high(bore))).toList();
    Solid left = solid.unbored();
    if (Double.isFinite(kept.from)) {
      left = left.trimmed(Vector3D.of(kept.from, 0, 0), Vector3D.of(-1, 0, 0));
    }
    if (Double.isFinite(kept.to)) {
      left = left.trimmed(Vector3D.of(kept.to, 0, 0), Vector3D.of(1, 0, 0));
    }
    return left.bored(bores);
  }
}
