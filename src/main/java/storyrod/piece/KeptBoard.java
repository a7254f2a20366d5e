package storyrod.piece;

import java.util.List;
import storyrod.geometry.Range;
import storyrod.measure.Length;

/** A part with the pieces that are cut out of it and kept, all by one method. */
public record KeptBoard(Part board, List<KeptCutout> cutouts) {
  public KeptBoard {
    cutouts = List.copyOf(cutouts);
    if (cutouts.isEmpty()) {
      throw new IllegalArgumentException("bug: nothing is kept of " + board.name());
    }
  }

  public KeptCutout.Method method() {
    return cutouts.getFirst().method();
  }

  public boolean isSawn() {
    return method() == KeptCutout.Method.SAW;
  }

  public Length kerf() {
    return cutouts.getFirst().kerf();
  }

  /** The full names of the parts that come out of its blank. */
  public List<String> kept() {
    return cutouts.stream().map(KeptCutout::kept).toList();
  }

  /** The blank is as long as the finished board: the crosscuts take from the kept piece alone. */
  public Length blankLength() {
    return board.finishedLength();
  }

  /** What the rips take: two kerfs for each strip with openings. */
  public Length oversize() {
    return blankWidth().minus(board.finishedWidth());
  }

  /** The blank is wider than the finished board by what the rips take: two kerfs for each strip. */
  public Length blankWidth() {
    long rips = isSawn() ? 2 * openStrips().size() : 0;
    return board.finishedWidth().plus(kerf().times(rips));
  }

  /**
   * Where an opening lies across the grain, measured from the far edge of the board, which lies at
   * the top of a drawing.
   */
  public Range across(KeptCutout kept) {
    Length edge = board.box().on(board.width()).to();
    return new Range(edge.minus(kept.across().to()), edge.minus(kept.across().from()));
  }

  /** Where an opening lies along the grain, measured from the near end of the board. */
  public Range along(KeptCutout kept) {
    Length end = board.box().on(board.length()).from();
    return new Range(kept.along().from().minus(end), kept.along().to().minus(end));
  }

  /** Where strips with openings lie across the grain, in order. */
  List<Range> openStrips() {
    return cutouts.stream()
        .map(this::across)
        .distinct()
        .sorted(java.util.Comparator.comparing(Range::from))
        .toList();
  }
}
