package storyrod.stock;

import java.util.List;
import java.util.Optional;
import storyrod.measure.Rational;
import storyrod.stock.SupplyNeed.Abrasive;

/**
 * What is used up and is no part of the piece.
 *
 * @param surfaces what it goes on
 * @param needs glue and finish, where the description names them
 * @param abrasives sandpaper for the finish, an estimate
 */
public record SupplyPlan(Surfaces surfaces, List<SupplyNeed> needs, List<Abrasive> abrasives) {
  /** Nothing at all. */
  public static final SupplyPlan NONE = new SupplyPlan(new Surfaces(0, 0), List.of(), List.of());

  /** What all sandpaper costs; nothing where its price is not given, or none is wanted. */
  public Optional<Rational> sandpaperCost() {
    return abrasives.stream().map(Abrasive::cost).flatMap(Optional::stream).reduce(Rational::plus);
  }

  public SupplyPlan {
    needs = List.copyOf(needs);
    abrasives = List.copyOf(abrasives);
  }
}
