package storyrod.piece;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import storyrod.geometry.Range;
import storyrod.measure.Length;

/**
 * A blank as the saw takes it apart: ripped right through on both sides of each strip with an
 * opening, then these strips crosscut at both ends of each kept piece. Along the grain and across
 * it everything is measured from one corner of the blank.
 *
 * @param strips across the grain, in order
 * @param cuts in the order in which they are made
 */
public record SawnBlank(
    Length length, Length width, Length kerf, List<Strip> strips, List<SawCut> cuts) {
  public SawnBlank {
    strips = List.copyOf(strips);
    cuts = List.copyOf(cuts);
  }

  /** A strip between rips; {@code blocks} are its pieces along the grain, one if it stays whole. */
  public record Strip(Range across, List<Block> blocks) {
    public Strip {
      blocks = List.copyOf(blocks);
    }

    public Length width() {
      return across.length();
    }
  }

  /** A piece of a strip; {@code kept} is the part that it becomes, or empty if it is glued back. */
  public record Block(Range along, Optional<String> kept) {}

  /**
   * A cut one kerf wide.
   *
   * @param isRip whether it runs along the grain
   * @param at the side of the kerf nearer the corner, across the cut's own direction
   * @param run from where to where it runs
   * @param comesOff the width of the strip, or the length of the block, before the cut
   */
  public record SawCut(int number, boolean isRip, Length at, Range run, Length comesOff) {}

  public static SawnBlank of(KeptBoard board) {
    return new Sawing(board).blank();
  }

  /** The cuts that rip, or those that crosscut. */
  public List<SawCut> cuts(boolean rips) {
    return cuts.stream().filter(cut -> cut.isRip() == rips).toList();
  }

  private static final class Sawing {
    private final KeptBoard board;
    private final Length length;
    private final Length kerf;
    private final List<Strip> strips = new ArrayList<>();
    private final List<SawCut> cuts = new ArrayList<>();

    Sawing(KeptBoard board) {
      this.board = board;
      this.length = board.blankLength();
      this.kerf = board.kerf();
    }

    SawnBlank blank() {
      Length at = Length.ZERO;
      Length done = Length.ZERO;
      for (Range open : board.openStrips()) {
        at = rip(at, open.from().minus(done), List.of(new Block(whole(), Optional.empty())));
        at = rip(at, open.length(), blocks(open));
        done = open.to();
      }
      strips.add(
          new Strip(
              new Range(at, board.blankWidth()), List.of(new Block(whole(), Optional.empty()))));
      strips.forEach(this::crosscut);
      return new SawnBlank(length, board.blankWidth(), kerf, strips, cuts);
    }

    private Range whole() {
      return new Range(Length.ZERO, length);
    }

    private Length rip(Length from, Length width, List<Block> blocks) {
      Length to = from.plus(width);
      strips.add(new Strip(new Range(from, to), blocks));
      cuts.add(new SawCut(cuts.size() + 1, true, to, whole(), width));
      return to.plus(kerf);
    }

    private List<Block> blocks(Range open) {
      List<KeptCutout> inStrip =
          board.cutouts().stream()
              .filter(each -> board.across(each).equals(open))
              .sorted(Comparator.comparing(each -> board.along(each).from()))
              .toList();
      List<Block> blocks = new ArrayList<>();
      Length at = Length.ZERO;
      for (KeptCutout each : inStrip) {
        Length from = board.along(each).from();
        Length to = board.along(each).to();
        blocks.add(new Block(new Range(at, from), Optional.empty()));
        blocks.add(new Block(new Range(from.plus(kerf), to.minus(kerf)), Optional.of(each.kept())));
        at = to;
      }
      blocks.add(new Block(new Range(at, length), Optional.empty()));
      return blocks;
    }

    private void crosscut(Strip strip) {
      for (Block block : strip.blocks().subList(0, strip.blocks().size() - 1)) {
        cuts.add(
            new SawCut(
                cuts.size() + 1,
                false,
                block.along().to(),
                strip.across(),
                block.along().length()));
      }
    }
  }
}
