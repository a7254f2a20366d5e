package storyrod.drawing;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import storyrod.geometry.Lazy;

/** A step from all viewpoints, the usual one first; a view is worked out when it is looked at. */
final class Shots {
  private static final double BEST_SCORE = 2;

  private final List<From> all;
  private final DrivenSides driven;

  private Shots(List<From> all, DrivenSides driven) {
    this.all = all;
    this.driven = driven;
  }

  /**
   * A viewpoint.
   *
   * @param whole with the hardware that goes in
   */
  private record From(View view, Lazy<Shot> shot, Lazy<Shot> whole) {
    static From of(View view, Function<View, Shot> shot, UnaryOperator<Shot> whole) {
      Lazy<Shot> without = new Lazy<>(() -> shot.apply(view));
      return new From(view, without, new Lazy<>(() -> whole.apply(without.get())));
    }

    Sight sight() {
      return shot.get().sight();
    }

    double score() {
      return shot.get().score();
    }

    /** The share of hardware that is seen where nothing that stands is opened. */
    double seen() {
      return Fitted.share(whole.get().picture());
    }
  }

  /**
   * Those of a step.
   *
   * @param whole puts the hardware that goes in into a shot without it
   */
  static Shots of(
      Stream<View> views,
      DrivenSides driven,
      Function<View, Shot> shot,
      UnaryOperator<Shot> whole) {
    return new Shots(views.map(view -> From.of(view, shot, whole)).toList(), driven);
  }

  /**
   * The first that shows parts and ways well enough, or that shows most of them; another that shows
   * as much of them where more of the step's fasteners are driven from the sides that it shows, if
   * no less of the hardware is seen from there without opening what stands. It is with that.
   */
  Shot best() {
    From first = first();
    Lazy<Double> least = new Lazy<>(() -> Math.min(Fitted.ENOUGH_SEEN, first.seen()));
    return all.stream()
        .filter(each -> driven.shown(each.view) > driven.shown(first.view))
        .sorted(Comparator.comparingDouble(each -> -driven.shown(each.view)))
        .filter(each -> each.sight().isAtLeast(first.score()))
        .filter(each -> each.seen() > 0 && each.seen() >= least.get())
        .findFirst()
        .orElse(first)
        .whole
        .get();
  }

  private From first() {
    From best = all.getFirst();
    for (From each : all.subList(1, all.size())) {
      if (best.score() >= BEST_SCORE) {
        break;
      }
      best = each.sight().isMoreThan(best.score()) ? each : best;
    }
    return best;
  }

  /** Those that show no less than one of them, with the hardware that goes in. */
  Stream<Shot> asGoodAs(Shot one) {
    return all.stream()
        .filter(each -> driven.shown(each.view) >= driven.shown(one.view()))
        .filter(each -> each.sight().isAtLeast(one.score()))
        .map(each -> each.whole.get());
  }
}
