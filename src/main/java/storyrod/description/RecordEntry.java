package storyrod.description;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import storyrod.measure.Length;
import storyrod.measure.Rational;

/** What was written down while the piece was made; each list in the order of the text. */
public record RecordEntry(
    List<Revision> revisions,
    List<Made> made,
    List<Board> boards,
    List<TestPiece> testPieces,
    List<Spent> hours,
    List<Paid> paid,
    List<Photo> photos) {
  /** Nothing has been written down. */
  public static final RecordEntry NONE =
      new RecordEntry(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

  /** The groups of the shopping list, and what belongs to none. */
  public static final List<String> GROUPS =
      List.of("boards", "sheets", "hardware", "supplies", "other");

  public RecordEntry {
    revisions = List.copyOf(revisions);
    made = List.copyOf(made);
    boards = List.copyOf(boards);
    testPieces = List.copyOf(testPieces);
    hours = List.copyOf(hours);
    paid = List.copyOf(paid);
    photos = List.copyOf(photos);
  }

  /** A change of the plan. */
  public record Revision(LocalDate date, String change, Optional<String> reason) {}

  /**
   * What was really made.
   *
   * @param part the full name of the part; empty where it is about a step
   */
  public record Made(
      Optional<String> part,
      Optional<Located<Integer>> step,
      Optional<Length> length,
      Optional<Length> width,
      Optional<Length> thickness,
      Optional<String> say) {}

  /**
   * Wood that was used.
   *
   * @param moisture in per cent of the dry wood
   */
  public record Board(
      String stock,
      int count,
      Optional<String> from,
      Optional<String> story,
      Optional<Rational> moisture,
      Optional<LocalDate> date,
      Optional<String> place) {}

  /** An offcut with the finish on it. */
  public record TestPiece(
      String wood,
      String product,
      Optional<Integer> sandTo,
      String verdict,
      Optional<LocalDate> date) {}

  /** Hours of work in a stage, named by its key or by the maker's own title. */
  public record Spent(Located<String> stage, Rational hours, Optional<String> say) {}

  /**
   * Money spent.
   *
   * @param group a word of {@link #GROUPS}
   */
  public record Paid(String group, Rational amount, Optional<String> say) {}

  /**
   * A photo.
   *
   * @param file its path from the description's folder, as written
   * @param shows what can be seen on it
   */
  public record Photo(
      Located<String> file,
      String caption,
      String shows,
      Optional<String> part,
      Optional<Located<Integer>> step,
      Optional<LocalDate> date) {}
}
