package storyrod.planset;

import java.util.List;

/**
 * What is recorded beside what is planned, as printed; what is not known is an empty text. Where an
 * edition asks for lines to fill in, rows without words stand for them.
 *
 * @param sizes one row for each piece, or one for many unmeasured ones of a mark
 * @param moisture at which wood should be worked for the room of the piece, in per cent
 */
public record Recorded(
    List<Revision> revisions,
    List<Sized> sizes,
    List<Otherwise> steps,
    List<Board> boards,
    String moisture,
    List<TestPiece> testPieces,
    Sums hours,
    Sums costs) {
  public Recorded {
    revisions = List.copyOf(revisions);
    sizes = List.copyOf(sizes);
    steps = List.copyOf(steps);
    boards = List.copyOf(boards);
    testPieces = List.copyOf(testPieces);
  }

  /** A change of the plan. */
  public record Revision(String date, String change, String reason) {}

  /**
   * The sizes of a piece as planned and as made, and what these are more.
   *
   * @param part its name, with its number where there are several of its mark
   */
  public record Sized(
      String mark,
      String part,
      CutList.Sizes planned,
      CutList.Sizes made,
      CutList.Sizes difference,
      String say) {}

  /** What went otherwise in a step. */
  public record Otherwise(String step, String title, String say) {}

  /** Wood that was used, with its moisture in per cent as planned, measured, and the difference. */
  public record Board(
      String stock,
      String story,
      String planned,
      String measured,
      String difference,
      String where) {}

  /** An offcut with the finish on it. */
  public record TestPiece(
      String wood, String product, String sanded, String verdict, String date) {}

  /**
   * Figures with their total.
   *
   * @param total which says so where it is not of all rows yet
   * @param any whether any of them was recorded
   */
  public record Sums(List<Sum> rows, Sum total, boolean any) {
    public Sums {
      rows = List.copyOf(rows);
    }
  }

  /** A figure as planned and as it came to be, with the difference. */
  public record Sum(String title, String planned, String done, String difference, String say) {}
}
