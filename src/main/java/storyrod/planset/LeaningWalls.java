package storyrod.planset;

import java.util.List;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Operation;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Piece;
import storyrod.piece.Slanted;

/** Which way the walls of leaning slots go from the face down, seen from the part's middle. */
record LeaningWalls(Piece piece) {
  private static final String AS_DRAWN = "drawn";

  /** {@code in} or {@code out} where all slots of a step lean so, else {@code drawn}. */
  String of(Step step) {
    List<String> ways =
        step.operations().stream().flatMap(each -> ways(each).stream()).distinct().toList();
    return ways.size() == 1 ? ways.getFirst() : AS_DRAWN;
  }

  private List<String> ways(Operation operation) {
    return Cut.only(Slanted.Housing.class, operation.cuts()).stream()
        .map(housing -> way(housing, piece.part(operation.target()).box().on(housing.across())))
        .toList();
  }

  private static String way(Slanted.Housing housing, Range part) {
    Length beside =
        housing.mouth().from().minus(part.from()).minus(part.to().minus(housing.mouth().to()));
    if (beside.isZero() || housing.shift().isZero()) {
      return AS_DRAWN;
    }
    return beside.isPositive() == housing.shift().isPositive() ? "out" : "in";
  }
}
