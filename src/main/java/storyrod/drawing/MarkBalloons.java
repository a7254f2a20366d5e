package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Balloon;
import storyrod.drawing.SawnPiece.Laid;

/**
 * The marks of parts that are too small on a layout to bear them: ringed, near by, off the other
 * parts if it can be; one ring with a count for equal parts side by side.
 *
 * @param sheet where rings may stand
 * @param parts all parts on it
 * @param numbers what stands already
 */
record MarkBalloons(Bounds sheet, List<Bounds> parts, CutNumbers numbers) {
  /** As bad as so many mm more: to stand on a part, and a leader over something. */
  private static final double ON_PART = 30;

  private static final double LED_OVER = 60;

  /** Parts with no more between them than a kerf lie side by side. */
  private static final double BESIDE = 1;

  private static final double STEP = 2;
  private static final double RADIUS = Lowering.BALLOON_RADIUS;

  MarkBalloons {
    parts = List.copyOf(parts);
  }

  List<Balloon> of(List<Laid> small, Function<Laid, Bounds> bounds) {
    return runs(small, bounds).stream().map(run -> balloon(run, bounds)).toList();
  }

  private static List<List<Laid>> runs(List<Laid> small, Function<Laid, Bounds> bounds) {
    List<List<Laid>> runs = new ArrayList<>();
    for (Laid part : small) {
      Optional<List<Laid>> run =
          runs.stream().filter(each -> goesOn(each, part, bounds)).findFirst();
      run.ifPresent(each -> each.add(part));
      if (run.isEmpty()) {
        runs.add(new ArrayList<>(List.of(part)));
      }
    }
    return runs;
  }

  private static boolean goesOn(List<Laid> run, Laid part, Function<Laid, Bounds> bounds) {
    Bounds near = bounds.apply(part).widened(BESIDE);
    return run.getFirst().mark().equals(part.mark())
        && run.stream().anyMatch(each -> overlap(near, bounds.apply(each)));
  }

  private static boolean overlap(Bounds one, Bounds other) {
    return one.left() < other.right()
        && other.left() < one.right()
        && one.top() < other.bottom()
        && other.top() < one.bottom();
  }

  private Balloon balloon(List<Laid> run, Function<Laid, Bounds> bounds) {
    Bounds part = bounds.apply(run.getFirst());
    At tip = new At((part.left() + part.right()) / 2, (part.top() + part.bottom()) / 2);
    At centre = centre(tip);
    numbers.keepClearOf(centre, tip);
    return new Balloon(centre, tip, run.getFirst().mark(), run.size() > 1 ? run.size() : 0);
  }

  private At centre(At tip) {
    At best = tip;
    double least = Double.POSITIVE_INFINITY;
    for (double y = RADIUS; y < sheet.bottom() - RADIUS; y += STEP) {
      for (double x = RADIUS; x < sheet.right() - RADIUS; x += STEP) {
        At centre = new At(x, y);
        double near = centre.distance(tip) + (liesOnPart(centre) ? ON_PART : 0);
        if (near < least && centre.distance(tip) > 2 * RADIUS && numbers.isFree(centre, RADIUS)) {
          double cost = near + (isClear(centre, tip) ? 0 : LED_OVER);
          best = cost < least ? centre : best;
          least = Math.min(least, cost);
        }
      }
    }
    return best;
  }

  private boolean isClear(At centre, At tip) {
    return numbers.isClear(new Paper.Stretch(tip, centre));
  }

  private boolean liesOnPart(At centre) {
    Bounds ring = new Bounds(centre.x(), centre.y(), centre.x(), centre.y()).widened(RADIUS);
    return parts.stream().anyMatch(part -> overlap(ring, part));
  }
}
