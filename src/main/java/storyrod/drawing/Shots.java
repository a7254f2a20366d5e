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
  private final UnaryOperator<Shot> whole;

  private Shots(List<From> all, DrivenSides driven, UnaryOperator<Shot> whole) {
    this.all = all;
    this.driven = driven;
    this.whole = whole;
  }

  private record From(View view, Lazy<Shot> shot) {}

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
    return new Shots(
        views.map(view -> new From(view, new Lazy<>(() -> shot.apply(view)))).toList(),
        driven,
        whole);
  }

  /**
   * The first that shows parts and ways well enough, or that shows most of them; another that shows
   * as much of them where more of the step's fasteners are driven from the sides that it shows, if
   * no less of the hardware is seen from there without opening what stands.
   */
  Shot best() {
    Shot first = first();
    Lazy<Double> least = new Lazy<>(() -> Math.min(Fitted.ENOUGH_SEEN, seen(first)));
    return all.stream()
        .filter(each -> driven.shown(each.view) > driven.shown(first.view()))
        .sorted(Comparator.comparingDouble(each -> -driven.shown(each.view)))
        .map(each -> each.shot.get())
        .filter(each -> each.sight().isAtLeast(first.score()))
        .filter(each -> seen(each) > 0 && seen(each) >= least.get())
        .findFirst()
        .orElse(first);
  }

  /** The share of hardware that is seen where nothing that stands is opened. */
  private double seen(Shot shot) {
    return Fitted.share(whole.apply(shot).picture());
  }

  private Shot first() {
    Shot best = all.getFirst().shot.get();
    for (From each : all.subList(1, all.size())) {
      if (best.score() >= BEST_SCORE) {
        break;
      }
      Shot other = each.shot.get();
      best = other.sight().isMoreThan(best.score()) ? other : best;
    }
    return best;
  }

  /** Those that show no less than one of them. */
  Stream<Shot> asGoodAs(Shot one) {
    return all.stream()
        .filter(each -> driven.shown(each.view) >= driven.shown(one.view()))
        .map(each -> each.shot.get())
        .filter(each -> each.sight().isAtLeast(one.score()));
  }
}
