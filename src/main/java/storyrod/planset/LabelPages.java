package storyrod.planset;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import storyrod.planset.Labels.Label;

/**
 * Labels on a fixed grid of {@link #COLUMNS} by {@link #ROWS}, so that a sheet is cut with a few
 * straight cuts; rows are filled from left to right. A page shows them under the key {@code
 * labels}.
 *
 * @param pages pages of rows of labels; only the last row of all can be short
 * @param widthMm the width of a label
 * @param heightMm its height
 */
public record LabelPages(List<List<List<Label>>> pages, double widthMm, double heightMm) {
  static final int COLUMNS = 3;
  static final int ROWS = 8;

  /** The key under which the template of these pages looks for them. */
  static final String KEY = "labels";

  /** What the line above the grid takes, and the hairlines between the rows. */
  private static final double LEAD_MM = 10;

  private static final double BORDER_MM = 0.15;

  public LabelPages {
    pages = List.copyOf(pages);
  }

  static LabelPages of(Labels labels, Paper paper) {
    return new LabelPages(
        chunks(chunks(labels.all(), COLUMNS), ROWS),
        paper.textWidthMm() / COLUMNS - BORDER_MM,
        (paper.roomMm() - LEAD_MM) / ROWS - BORDER_MM);
  }

  /** How many labels stand side by side. */
  public int columns() {
    return COLUMNS;
  }

  /** What the template gets. */
  Map<String, Object> data() {
    return Map.of(KEY, this);
  }

  private static <T> List<List<T>> chunks(List<T> all, int size) {
    List<List<T>> chunks = new ArrayList<>();
    for (int from = 0; from < all.size(); from += size) {
      chunks.add(List.copyOf(all.subList(from, Math.min(from + size, all.size()))));
    }
    return chunks;
  }
}
