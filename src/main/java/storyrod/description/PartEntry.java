package storyrod.description;

import java.util.List;
import java.util.Optional;
import storyrod.geometry.Axis;
import storyrod.geometry.Range;
import storyrod.measure.Rational;

/**
 * A part, from where to where it runs before joints lengthen it.
 *
 * @param name the full name
 * @param title the name for a reader, such as {@code Left side}
 * @param grain the axis along which the part's length runs
 * @param outline where it is no plain rectangle across its thickness
 * @param makeup from what boards it is made
 * @param match a word that it shares with the parts over which its grain runs on
 * @param load the mass in kg that is spread over it
 * @param at the part's name in the text
 */
public record PartEntry(
    String name,
    String title,
    Span at,
    Located<String> stock,
    Located<Range> x,
    Located<Range> y,
    Located<Range> z,
    Located<Axis> grain,
    Optional<Entry> turn,
    List<Entry> outline,
    Makeup makeup,
    Optional<Located<String>> match,
    Optional<Located<Rational>> load,
    Optional<String> say) {
  public PartEntry {
    outline = List.copyOf(outline);
  }

  /** A plain rectangular part. */
  public PartEntry(
      String name,
      String title,
      Span at,
      Located<String> stock,
      Located<Range> x,
      Located<Range> y,
      Located<Range> z,
      Located<Axis> grain,
      Optional<String> say) {
    this(
        name,
        title,
        at,
        stock,
        x,
        y,
        z,
        grain,
        Optional.empty(),
        List.of(),
        Makeup.UNSAID,
        Optional.empty(),
        Optional.empty(),
        say);
  }

  /** The same part by another title, with other words beside it. */
  PartEntry told(String other, Optional<String> words) {
    return new PartEntry(
        name, other, at, stock, x, y, z, grain, turn, outline, makeup, match, load, words);
  }

  PartEntry matching(Located<String> word) {
    return new PartEntry(
        name,
        title,
        at,
        stock,
        x,
        y,
        z,
        grain,
        turn,
        outline,
        makeup,
        Optional.of(word),
        load,
        say);
  }

  public Located<Range> on(Axis axis) {
    return switch (axis) {
      case X -> x;
      case Y -> y;
      case Z -> z;
    };
  }
}
