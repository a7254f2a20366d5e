package storyrod.planset;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import storyrod.planset.StepEntry.SizeRow;

/**
 * Breaks a step that is higher than a page into what stands on each of its pages: its sentences run
 * on, and its sizes stand below them in columns. The last page is not nearly empty. A picture that
 * is as narrow as its sentences stands above these, so that its lists have the height of the page.
 */
final class StepSlices {
  /** The line that says which step goes on. */
  private static final double AGAIN_MM = 7;

  private static final int COLUMNS = 3;

  /** A last page that is less full gets more of what stands before it. */
  private static final double LEAST_SHARE = 0.51;

  private static final double STEP_MM = 4;

  private final StepEntry step;
  private final StepHeights heights;
  private final double stageMm;
  private final boolean pictured;

  private StepSlices(StepEntry step, StepHeights heights, double stageMm) {
    this.step = step;
    this.heights = heights;
    this.stageMm = stageMm;
    this.pictured = !step.pictures().isEmpty();
  }

  /**
   * The pages of a step.
   *
   * @param stageMm the height of its stage's heading, if it stands under one
   */
  static List<StepSlice> of(StepEntry step, StepHeights heights, double stageMm) {
    double whole = height(step, heights) + stageMm;
    return heights.isOnePage(whole, !step.pictures().isEmpty())
        ? List.of(StepSlice.whole(step, heights.moreBesideMm(step) == 0, whole))
        : new StepSlices(step, heights, stageMm).balanced();
  }

  /** The height of a step that stands on one page. */
  private static double height(StepEntry step, StepHeights heights) {
    if (step.pictures().isEmpty()) {
      return heights.of(step, false) + shown(step);
    }
    return step.firstColumn() == 0
        ? heights.of(step, true) + shown(step)
        : heights.inColumns(step)
            + StepMeasures.AROUND_PICTURE_MM
            + Math.max(step.pictures().getFirst().heightMm(), heights.side().besidePicture(step));
  }

  /** The height of a step's picture or strip. */
  private static double shown(StepEntry step) {
    double pictures =
        step.pictures().stream()
            .mapToDouble(each -> each.heightMm() + StepMeasures.AROUND_PICTURE_MM)
            .sum();
    return step.above().stream()
            .mapToDouble(each -> each.heightMm() + StepMeasures.AROUND_STRIP_MM)
            .sum()
        + pictures;
  }

  /** The height of what can stand beside the sentences of a page on which a step goes on. */
  static double besideMm(Paper paper) {
    double below = StepMeasures.AROUND_PICTURE_MM + StepMeasures.BELOW_MM;
    return StepHeights.roomMm(paper) - AGAIN_MM - below;
  }

  private List<StepSlice> balanced() {
    double most = heights.roomMm() - heights.below(pictured);
    List<StepSlice> best = filled(most);
    int pages = best.size();
    for (double limit = most; isLow(best) && limit > most / 2; limit -= STEP_MM) {
      List<StepSlice> tried = filled(limit);
      if (tried.size() == pages && tried.getLast().heightMm() > best.getLast().heightMm()) {
        best = tried;
      }
    }
    return best;
  }

  private boolean isLow(List<StepSlice> slices) {
    return slices.size() > 1 && slices.getLast().heightMm() < LEAST_SHARE * heights.roomMm();
  }

  private int sentences() {
    return step.text().sentences().size();
  }

  /** The rows in which the sizes stand on one page. */
  private int rows() {
    return pictured ? 0 : (step.sizes().size() + COLUMNS - 1) / COLUMNS;
  }

  /** Each page as full as it can be: sentences first, then rows of sizes. */
  private List<StepSlice> filled(double limit) {
    List<StepSlice> slices = new ArrayList<>();
    int first = 0;
    double at = top() + (isBesideLists() ? shown(step) : 0) + heights.cautions(step);
    for (int next = 0; next < sentences() + rows(); next++) {
      at = first == 0 && next >= sentences() ? Math.max(at, lists()) : at;
      if (next > first && at + height(next, first) > limit) {
        slices.add(slice(first, next, at, slices.size() == 1));
        first = next;
        at = AGAIN_MM;
      }
      at += height(next, first);
    }
    slices.add(slice(first, sentences() + rows(), at, slices.size() == 1));
    return slices;
  }

  private boolean isBesideLists() {
    return step.firstColumn() > 0;
  }

  /** Where the lists begin. */
  private double top() {
    double above = isBesideLists() ? 0 : shown(step);
    return stageMm + heights.head(step, pictured) + above + 1;
  }

  /** How far down the lists of the first page reach. */
  private double lists() {
    return top()
        + (pictured ? heights.side().besidePicture(step) : heights.side().withoutSizes(step));
  }

  private double height(int at, int first) {
    double own =
        at < sentences()
            ? StepHeights.sentence(
                step.text().sentences().get(at), heights.besideListsMm(), pictured)
            : heights.side().sizes(row(at - sentences()));
    boolean hasHead = at == Math.max(first, sentences());
    boolean isLast = at == sentences() + rows() - 1;
    return own + (hasHead ? StepMeasures.BLOCK_MM : 0) + (isLast ? heights.signMm() : 0);
  }

  private List<SizeRow> row(int number) {
    int from = number * COLUMNS;
    return step.sizes().subList(from, Math.min(from + COLUMNS, step.sizes().size()));
  }

  private StepSlice slice(int from, int to, double at, boolean isSecond) {
    int all = sentences();
    double beside = AGAIN_MM + StepSideHeights.besideMm(step);
    boolean besides = isSecond && beside <= heights.roomMm() - heights.below(pictured);
    double side = from == 0 ? lists() : besides ? beside : 0;
    return new StepSlice(
        Math.min(from, all),
        Math.min(to, all),
        true,
        inColumns(Math.max(from, all) - all, Math.max(to, all) - all),
        besides,
        from == 0,
        to == all + rows(),
        Math.max(at, side) + heights.below(pictured));
  }

  /** The sizes of some rows, to be read down the columns. */
  private List<List<SizeRow>> inColumns(int from, int to) {
    List<SizeRow> here =
        IntStream.range(from, to).boxed().flatMap(each -> row(each).stream()).toList();
    int rows = to - from;
    return IntStream.range(0, rows)
        .mapToObj(
            row ->
                IntStream.iterate(row, at -> at < here.size(), at -> at + rows)
                    .mapToObj(here::get)
                    .toList())
        .toList();
  }
}
