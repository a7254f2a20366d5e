package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.geometry.Box;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.KeptBoard;
import storyrod.piece.KeptCutout;
import storyrod.piece.SawnBlank;

/**
 * What a drawing of a blank shows, turned as the drawing of its board is: x along the grain to the
 * right, y across it down the paper, both from a corner.
 *
 * @param pieces what the blank falls into, or the board with its openings and the pieces inside
 * @param cuts in the order in which they are made
 * @param across the sizes across the grain that are dimensioned, in order
 * @param along for each strip with openings, the sizes along the grain that are dimensioned
 */
record BlankPlan(
    Length length,
    Length width,
    List<Block> pieces,
    List<Cut> cuts,
    List<Range> across,
    List<Along> along) {
  BlankPlan {
    pieces = List.copyOf(pieces);
    cuts = List.copyOf(cuts);
    across = List.copyOf(across);
    along = List.copyOf(along);
  }

  /** A piece; {@code kept} is the full name of the part that it becomes. */
  record Block(Range x, Range y, Optional<String> kept) {}

  /** A numbered cut along its kerf. */
  record Cut(int number, Range x, Range y, boolean isRip) {}

  /** Sizes along the grain in a strip. */
  record Along(Range strip, List<Range> sizes) {
    Along {
      sizes = List.copyOf(sizes);
    }
  }

  static BlankPlan of(KeptBoard board) {
    return new Maker(board).plan();
  }

  private static final class Maker {
    private final KeptBoard board;
    private final Length length;
    private final Length width;
    private final boolean flipX;
    private final boolean flipY;

    Maker(KeptBoard board) {
      this.board = board;
      this.length = board.blankLength();
      this.width = board.blankWidth();
      FlatPart flat = FlatPart.of(board.board());
      this.flipX =
          board.cutouts().stream()
              .anyMatch(each -> !opening(flat, each).x().equals(board.along(each)));
      this.flipY =
          board.cutouts().stream()
              .anyMatch(
                  each ->
                      !flipped(opening(flat, each).z(), board.board().finishedWidth())
                          .equals(board.across(each)));
    }

    private static Box opening(FlatPart flat, KeptCutout kept) {
      return flat.trenches().stream()
          .filter(each -> each.forWhat().filter(kept.kept()::equals).isPresent())
          .findFirst()
          .orElseThrow(() -> new IllegalStateException("bug: no opening for " + kept.kept()))
          .removed();
    }

    private Range x(Range range) {
      return flipX ? flipped(range, length) : range;
    }

    private Range y(Range range) {
      return flipY ? flipped(range, width) : range;
    }

    private static Range flipped(Range range, Length whole) {
      return new Range(whole.minus(range.to()), whole.minus(range.from()));
    }

    BlankPlan plan() {
      return board.isSawn() ? sawn(SawnBlank.of(board)) : whole();
    }

    private BlankPlan sawn(SawnBlank blank) {
      List<Block> pieces = new ArrayList<>();
      List<Range> across = new ArrayList<>();
      List<Along> along = new ArrayList<>();
      for (SawnBlank.Strip strip : blank.strips()) {
        strip
            .blocks()
            .forEach(
                each -> pieces.add(new Block(x(each.along()), y(strip.across()), each.kept())));
        across.add(y(strip.across()));
        if (strip.blocks().size() > 1) {
          List<Range> sizes = strip.blocks().stream().map(each -> x(each.along())).toList();
          along.add(new Along(y(strip.across()), sizes));
        }
      }
      return new BlankPlan(
          length, width, pieces, blank.cuts().stream().map(this::cut).toList(), across, along);
    }

    private Cut cut(SawnBlank.SawCut cut) {
      Range kerf = new Range(cut.at(), cut.at().plus(board.kerf()));
      return cut.isRip()
          ? new Cut(cut.number(), x(cut.run()), y(kerf), true)
          : new Cut(cut.number(), x(kerf), y(cut.run()), false);
    }

    /** The board whole, each opening with its piece inside; one cut goes round each piece. */
    private BlankPlan whole() {
      List<Block> pieces = new ArrayList<>();
      List<Cut> cuts = new ArrayList<>();
      List<Along> along = new ArrayList<>();
      pieces.add(new Block(all(length), all(width), Optional.empty()));
      for (KeptCutout kept : board.cutouts()) {
        Range x = x(board.along(kept));
        Range y = y(board.across(kept));
        pieces.add(new Block(x, y, Optional.empty()));
        pieces.add(
            new Block(
                within(x, kept.endGap()), within(y, kept.sideGap()), Optional.of(kept.kept())));
        Range path = new Range(y.to().minus(kept.kerf()), y.to());
        cuts.add(new Cut(cuts.size() + 1, x, path, true));
        along.add(new Along(y, chain(x, length)));
      }
      KeptCutout first = board.cutouts().getFirst();
      return new BlankPlan(
          length, width, pieces, cuts, chain(y(board.across(first)), width), along);
    }

    private static Range all(Length size) {
      return new Range(Length.ZERO, size);
    }

    private static Range within(Range range, Length gap) {
      return new Range(range.from().plus(gap), range.to().minus(gap));
    }

    private static List<Range> chain(Range middle, Length whole) {
      return List.of(new Range(Length.ZERO, middle.from()), middle, new Range(middle.to(), whole));
    }
  }
}
