package storyrod.description;

import java.util.List;
import java.util.Optional;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.Rational;

/**
 * Boards or pieces of sheet that are there already.
 *
 * @param count how many of them there are
 * @param price what using one of them is counted as
 * @param defects what no part may be cut from
 * @param story where they come from, for the record
 */
public record OnHandEntry(
    Span at,
    String name,
    Located<String> stock,
    Length length,
    Length width,
    int count,
    Optional<Rational> price,
    List<Defect> defects,
    Optional<String> story) {
  public OnHandEntry {
    defects = List.copyOf(defects);
  }

  /** A rectangle from the near corner: along the piece and, unless it is as broad, across it. */
  public record Defect(Range x, Range y) {}
}
