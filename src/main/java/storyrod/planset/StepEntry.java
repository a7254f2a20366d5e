package storyrod.planset;

import java.util.List;

/**
 * A step as its pages show it.
 *
 * @param pictures none or one, of a step that puts something together
 * @param strips none or one, of a step that works on boards or parts; one as narrow as the lists
 *     stands below these
 * @param beside none or one, for the column beside its sentences
 * @param partsInRow whether its parts stand in a row of marks, without names
 * @param firstColumn how many sentences stand in the first of two columns below the picture and the
 *     lists beside it; 0 where the lists stand beside the sentences
 * @param working the working time in words
 * @param waiting the waiting time in words, or empty
 */
public record StepEntry(
    int number,
    StepText text,
    List<DrawingBox> pictures,
    List<DrawingBox> strips,
    List<DrawingBox> beside,
    List<PartRow> parts,
    List<SizeRow> sizes,
    List<HardwareRow> hardware,
    boolean partsInRow,
    int firstColumn,
    String working,
    String waiting) {
  /** So many checks of a step get a field each at most. */
  static final int MOST_FIELDS = 6;

  /**
   * Whether each of its settings and checks gets a field for what was measured, where steps are
   * signed: beside sentences alone there is room for a few.
   */
  public boolean hasFields() {
    int settings = text.settings().size();
    return settings > 1 && settings <= MOST_FIELDS && pictures.isEmpty();
  }

  /** Strips that stand above the sentences. */
  public List<DrawingBox> above() {
    return strips.stream().filter(each -> each.widthMm() > StepMeasures.SIDE_MM).toList();
  }

  /** Strips as narrow as the lists, below which they stand. */
  public List<DrawingBox> asides() {
    return strips.stream().filter(each -> each.widthMm() <= StepMeasures.SIDE_MM).toList();
  }

  /** The same step with its sentences in two columns, so many of them in the first. */
  StepEntry inColumns(int first) {
    return with(partsInRow, first);
  }

  /** The same step with its parts in a row of marks. */
  StepEntry inRow() {
    return with(true, firstColumn);
  }

  private StepEntry with(boolean row, int first) {
    return new StepEntry(
        number, text, pictures, strips, beside, parts, sizes, hardware, row, first, working,
        waiting);
  }

  /** A part to be cut to size: how many, and its length and width as printed. */
  public record SizeRow(String mark, String count, String size) {}

  /** A part of a step: its mark, its name, and how many come or that it stands already. */
  public record PartRow(String mark, String title, String count) {}

  /** An item used up in a step. */
  public record HardwareRow(String mark, String item, int count) {}
}
