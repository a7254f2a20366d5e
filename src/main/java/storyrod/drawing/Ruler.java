package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import storyrod.geometry.Range;
import storyrod.measure.Length;

/**
 * Where a part's length falls on the paper: to scale, less the stretches that breaks leave out.
 *
 * @param breaks the stretches left out, in order
 */
record Ruler(double factor, List<Range> breaks) {
  /** What a break takes on the paper, in mm. */
  static final double GAP = 2;

  /** How far from a break something is pointed at, in mm on the paper. */
  private static final double CLEAR = 4;

  /** The least that is left of a stretch with a break in it, in mm. */
  private static final double LEAST = 24;

  /** How much longer than what is left of it a stretch must be to be broken. */
  private static final double WORTH = 1.5;

  Ruler {
    breaks = List.copyOf(breaks);
  }

  static Ruler unbroken(double factor) {
    return new Ruler(factor, List.of());
  }

  /**
   * A ruler that breaks the longest plain stretches until the whole takes no more than some width;
   * it may still be too long where there is no plain stretch.
   *
   * @param features where something is to be seen, with both ends of the part
   */
  static Ruler broken(double factor, TreeSet<Length> features, double widthMm) {
    double cap = cap(factor, features, widthMm);
    List<Range> breaks = new ArrayList<>();
    Length before = features.first();
    for (Length feature : features) {
      double paper = feature.minus(before).toMm() * factor;
      if (paper > WORTH * cap) {
        Length half = Length.nearest((cap - GAP) / 2 / factor);
        breaks.add(new Range(before.plus(half), feature.minus(half)));
      }
      before = feature;
    }
    return new Ruler(factor, breaks);
  }

  private static double cap(double factor, TreeSet<Length> features, double widthMm) {
    double cap = widthMm;
    while (cap > LEAST && total(factor, features, cap) > widthMm) {
      cap -= 1;
    }
    return cap;
  }

  private static double total(double factor, TreeSet<Length> features, double cap) {
    double total = 0;
    Length before = features.first();
    for (Length feature : features) {
      double paper = feature.minus(before).toMm() * factor;
      total += paper > WORTH * cap ? cap : paper;
      before = feature;
    }
    return total;
  }

  double mm(Length at) {
    double mm = at.toMm() * factor;
    for (Range gap : breaks) {
      if (at.isLongerThan(gap.from())) {
        double inside = at.min(gap.to()).minus(gap.from()).toMm();
        mm -= inside * factor - GAP * inside / gap.length().toMm();
      }
    }
    return mm;
  }

  boolean shows(Length at) {
    return breaks.stream().noneMatch(gap -> gap.contains(at));
  }

  /** Where the wood beside a break is, for what the break leaves out. */
  Stream<Length> beside(Length at) {
    Length clear = Length.nearest(CLEAR / factor);
    return breaks.stream()
        .filter(gap -> gap.contains(at))
        .flatMap(gap -> Stream.of(gap.from().minus(clear), gap.to().plus(clear)));
  }

  /** The parts of a stretch that are not left out. */
  List<Range> shown(Range stretch) {
    List<Range> shown = new ArrayList<>();
    Length from = stretch.from();
    for (Range gap : breaks) {
      if (gap.overlaps(stretch)) {
        if (gap.from().isLongerThan(from)) {
          shown.add(new Range(from, gap.from()));
        }
        from = gap.to();
      }
    }
    if (stretch.to().isLongerThan(from)) {
      shown.add(new Range(from, stretch.to()));
    }
    return shown;
  }
}
