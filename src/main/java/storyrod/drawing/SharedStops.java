package storyrod.drawing;

import java.util.Comparator;
import java.util.Optional;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.piece.Cut;

/**
 * Stopped trenches whose ends lie in line with those of another one. Only the first of them is
 * dimensioned along its length, for no stretch is given twice; nobody would see that the others,
 * apart from it on the face, end at the same lines.
 */
record SharedStops(FlatPart flat) {
  /** The trench that has the dimensions of another one's ends, where that one has none. */
  Optional<Cut.Trench> of(Cut.Trench trench) {
    Face view = PlacedView.home(flat, trench);
    Axis run = run(view, trench);
    return flat.trenches().stream()
        .takeWhile(each -> each != trench)
        .filter(each -> PlacedView.home(flat, each) == view && each.from() == trench.from())
        .filter(each -> isBeside(run, each, trench))
        .findFirst();
  }

  /** The axis along which a trench runs, in the view in which it is dimensioned. */
  private static Axis run(Face view, Cut.Trench trench) {
    return DimensionSides.inPlane(view).stream()
        .max(Comparator.comparing(axis -> trench.removed().size(axis)))
        .orElseThrow();
  }

  private boolean isBeside(Axis run, Cut.Trench one, Cut.Trench other) {
    Box first = RunOuts.seen(flat, one);
    Box second = RunOuts.seen(flat, other);
    Range range = second.on(run);
    return !flat.full(range, run) && first.on(run).equals(range) && !first.overlaps(second);
  }
}
