package storyrod.drawing;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import storyrod.build.BuildPlan;
import storyrod.piece.Piece;
import storyrod.stock.StockPlan;

/**
 * All drawings of a plan set.
 *
 * @param cover the piece put together
 * @param parts one drawing for each mark, in the order of the marks
 * @param layouts for each sheet stock's name, one drawing a sheet
 * @param steps pictures of steps by their number; a step that changes nothing to see has none
 */
public record Drawings(
    Drawing cover,
    Drawing exploded,
    Map<String, Drawing> parts,
    Map<String, List<Drawing>> layouts,
    Map<Integer, Drawing> steps) {
  public Drawings {
    parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts));
    layouts = Collections.unmodifiableMap(new LinkedHashMap<>(layouts));
    steps = Collections.unmodifiableMap(new LinkedHashMap<>(steps));
  }

  /** Shares of the page's height that pictures take, found by looking at the pages. */
  private static final double COVER_SHARE = 0.58;

  private static final double EXPLODED_SHARE = 0.74;
  private static final double PART_SHARE = 0.76;
  private static final double LAYOUT_SHARE = 0.42;
  private static final double STEP_SHARE = 0.36;

  /**
   * Draws all that a plan set shows.
   *
   * @param page the room for text and drawings on a page
   */
  public static Drawings of(Piece piece, StockPlan stock, BuildPlan build, Size page) {
    return new Drawings(
        AssembledView.draw(piece, share(page, COVER_SHARE)),
        ExplodedView.draw(piece, build, share(page, EXPLODED_SHARE)),
        parts(piece, share(page, PART_SHARE)),
        layouts(piece, stock, share(page, LAYOUT_SHARE)),
        steps(piece, build, share(page, STEP_SHARE)));
  }

  private static Size share(Size page, double share) {
    return new Size(page.widthMm(), page.heightMm() * share);
  }

  private static Map<String, Drawing> parts(Piece piece, Size area) {
    Map<String, Drawing> parts = new LinkedHashMap<>();
    piece.marks().forEach(mark -> parts.put(mark.mark(), PartDrawing.draw(mark, piece, area)));
    return parts;
  }

  private static Map<String, List<Drawing>> layouts(Piece piece, StockPlan stock, Size area) {
    Map<String, List<Drawing>> layouts = new LinkedHashMap<>();
    for (StockPlan.SheetPlan plan : stock.layouts()) {
      List<Drawing> sheets =
          plan.sheets().stream().map(sheet -> LayoutDrawing.draw(sheet, piece, area)).toList();
      layouts.put(plan.stock().name(), sheets);
    }
    return layouts;
  }

  private static Map<Integer, Drawing> steps(Piece piece, BuildPlan build, Size area) {
    Map<Integer, Drawing> steps = new LinkedHashMap<>();
    for (BuildPlan.Step step : build.steps()) {
      StepPicture.draw(piece, step, area)
          .ifPresent(picture -> steps.put(step.number(), picture));
    }
    return steps;
  }
}
