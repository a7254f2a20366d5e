package storyrod.piece;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import storyrod.description.Span;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Range;
import storyrod.measure.Length;

/**
 * A piece that is cut out of a part and becomes another part, so that the grain runs through both.
 *
 * @param board the full name of the part with the opening
 * @param kept the full name of the part that the piece becomes
 * @param opening what is missing in the board in the end
 * @param length the axis of the board's grain
 * @param width the axis across it
 * @param kerf what the blade, the cutter or the laser takes
 * @param gap what is trimmed off each side of a sawn piece across the grain; zero otherwise
 */
public record KeptCutout(
    String board,
    String kept,
    Method method,
    Box opening,
    Axis length,
    Axis width,
    Length kerf,
    Length gap,
    Span at) {
  /** How the piece is cut out. */
  public enum Method {
    /** The blank is ripped and crosscut, and all but the kept piece is glued together again. */
    SAW,
    /** The cutter's width is the gap all round. */
    ROUTER,
    /** The laser's kerf is the gap all round. */
    LASER;

    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    static List<String> words() {
      return Arrays.stream(values()).map(Method::word).toList();
    }

    static Method named(String word) {
      return valueOf(word.toUpperCase(Locale.ROOT));
    }
  }

  public boolean isSawn() {
    return method == Method.SAW;
  }

  public Range along() {
    return opening.on(length);
  }

  public Range across() {
    return opening.on(width);
  }

  /** The gap at each end: a blade's width is lost there. */
  public Length endGap() {
    return kerf;
  }

  /** The gap on each side: what is trimmed off there, or what the cutter took. */
  public Length sideGap() {
    return isSawn() ? gap : kerf;
  }

  /** The kept piece's length along the grain. */
  public Length keptLength() {
    return along().length().minus(endGap().times(2));
  }

  /** The kept piece's width when it is finished. */
  public Length keptWidth() {
    return across().length().minus(sideGap().times(2));
  }

  /** The kept piece's width as it comes off the tool: the rips take nothing of a sawn one. */
  public Length widthOffTheTool() {
    return isSawn() ? across().length() : keptWidth();
  }

  /** The opening less equal gaps: where the kept piece sits if it closes its own opening. */
  public Box keptBox() {
    return opening.with(length, within(along(), endGap())).with(width, within(across(), sideGap()));
  }

  private static Range within(Range range, Length gap) {
    return new Range(range.from().plus(gap), range.to().minus(gap));
  }

  /** What is cut away to make the opening, as one of the board's cuts. */
  public boolean isOpening(Cut cut) {
    return cut instanceof Cut.Trench trench && trench.removed().equals(opening);
  }
}
