package storyrod.drawing;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.PanelClamps;
import storyrod.description.StockKind;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.KeptBoard;
import storyrod.piece.KeptCutout;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.stock.GluedPanel;

/**
 * What a step shows of a board that is glued up or sawn apart: x along the grain, y across it or,
 * where layers lie on each other, through them.
 *
 * @param blocks what it is made of, or what it is to become
 * @param isWaste whether what lies outside the blocks comes off
 * @param clampsMm where clamps stand along it, in mm; empty where none do
 * @param along the sizes along the grain that are dimensioned
 * @param across the sizes across it that are dimensioned
 */
record BoardPlan(
    Part part,
    Length length,
    Length width,
    List<Block> blocks,
    boolean isWaste,
    List<Double> clampsMm,
    List<Range> along,
    List<Range> across) {
  BoardPlan {
    blocks = List.copyOf(blocks);
    clampsMm = List.copyOf(clampsMm);
    along = List.copyOf(along);
    across = List.copyOf(across);
  }

  /** A board that is whole, with no clamp and no size. */
  private BoardPlan(Part part, Length length, Length width, List<Block> blocks) {
    this(part, length, width, blocks, false, List.of(), List.of(), List.of());
  }

  private BoardPlan withClamps(List<Double> atMm) {
    return new BoardPlan(part, length, width, blocks, isWaste, atMm, along, across);
  }

  private BoardPlan withSizes(List<Range> newAlong, List<Range> newAcross) {
    return new BoardPlan(part, length, width, blocks, isWaste, clampsMm, newAlong, newAcross);
  }

  /** The same, of which what lies outside its blocks comes off. */
  private BoardPlan trimmed() {
    return new BoardPlan(part, length, width, blocks, true, clampsMm, along, across);
  }

  /** A stave, a layer, a strip or a piece of one. */
  record Block(Range x, Range y) {}

  /** Of a part on which a step works; empty where it is one board that stays one. */
  static Optional<BoardPlan> of(Piece piece, Step step, Part part) {
    return new Maker(piece, part).plan(step);
  }

  /** Of a single board in the rough, with the part that is ripped and crosscut out of it. */
  static Optional<BoardPlan> ripped(Piece piece, Part part) {
    return part.stock().kind() == StockKind.SOLID && !piece.isPanel(part)
        ? Optional.of(new Maker(piece, part).ripped())
        : Optional.empty();
  }

  /** Of a blank that is looked for in a board, parts that stay in one length end to end. */
  static BoardPlan chosen(Piece piece, GluedPanel blank) {
    return new Maker(piece, blank.first()).chosen(blank);
  }

  /** Its length and width as printed. */
  String size(Notation notation) {
    LengthFormat format = notation.format();
    return notation.words().say("layout.size", format.format(length), format.format(width));
  }

  /** The same, without its sizes across the grain. */
  BoardPlan withoutWidths() {
    return withSizes(along, List.of());
  }

  private record Maker(Piece piece, Part part) {
    private static final Comparator<Range> FROM = Comparator.comparing(Range::from);

    Optional<BoardPlan> plan(Step step) {
      Optional<KeptBoard> sawn = piece.keptBoard(part.name()).filter(KeptBoard::isSawn);
      return switch (step.verb()) {
        case MILL -> piece.isPanel(part) ? Optional.of(glued(panel(step))) : Optional.empty();
        case BLANK -> piece.keptBoard(part.name()).map(this::blank);
        case REJOIN ->
            sawn.map(this::rejoined).map(plan -> plan.withClamps(clamps(panel(), plan.length)));
        case SIZE ->
            piece
                .keptAs(part.name())
                .filter(kept -> kept.isSawn() && kept.gap().isPositive())
                .map(this::trimmed)
                .or(() -> sawn.map(this::rejoined))
                .or(() -> piece.isPanel(part) ? Optional.of(sized()) : Optional.empty());
        case KEEP,
            CHOOSE,
            MARK,
            CUT,
            DRILL,
            SAND,
            DRY_FIT,
            PRE_FINISH,
            FIT,
            TRIM,
            TRIAL_FIT,
            MOUNT,
            TEST,
            FINISH ->
            Optional.empty();
      };
    }

    private Length roughLength() {
      return panel().length();
    }

    private GluedPanel panel() {
      return new GluedPanel(piece, List.of(part));
    }

    /** All that it is glued up with in one length. */
    private GluedPanel panel(Step step) {
      return PanelClamps.panels(piece, step).stream()
          .filter(each -> each.parts().contains(part))
          .findFirst()
          .orElseGet(this::panel);
    }

    private boolean isLaminated() {
      return piece.isLaminated(part);
    }

    private Length roughWidth() {
      return isLaminated() ? part.finishedThickness() : piece.gluedWidth(part);
    }

    /** How many boards lie beside or on each other. */
    private int boards() {
      return isLaminated() ? piece.layers(part) : piece.panelStaves(part);
    }

    /** Its sizes are said below it: what is glued up is cut to size later. */
    private BoardPlan glued(GluedPanel panel) {
      Length length = panel.length();
      Length width = roughWidth();
      List<Range> staves = staves(width, boards());
      List<Block> blocks = staves.stream().map(each -> new Block(all(length), each)).toList();
      return new BoardPlan(part, length, width, blocks).withClamps(clamps(panel, length));
    }

    private List<Double> clamps(GluedPanel panel, Length length) {
      return new PanelClamps(piece).placesMm(panel, length.toMm());
    }

    private static List<Range> staves(Length width, int count) {
      Length each = width.dividedBy(count, RoundingMode.CEILING);
      return IntStream.range(0, count)
          .mapToObj(i -> new Range(each.times(i).min(width), each.times(i + 1).min(width)))
          .toList();
    }

    /** The blank, in which no cut of the step that saws it apart is made yet. */
    private BoardPlan blank(KeptBoard board) {
      BlankPlan plan = BlankPlan.of(board);
      int staves = piece.isPanel(part) && !isLaminated() ? boards() : 1;
      List<Block> blocks =
          staves(plan.width(), staves).stream()
              .map(each -> new Block(all(plan.length()), each))
              .toList();
      return new BoardPlan(part, plan.length(), plan.width(), blocks)
          .withSizes(List.of(all(plan.length())), List.of(all(plan.width())));
    }

    /** The strips without their kerfs between them, the kept pieces left out. */
    private BoardPlan rejoined(KeptBoard board) {
      BlankPlan plan = BlankPlan.of(board);
      Length width = board.board().finishedWidth();
      List<Block> blocks = new ArrayList<>();
      List<Range> along = new ArrayList<>();
      Length at = Length.ZERO;
      for (Range strip : plan.across().stream().sorted(FROM).toList()) {
        Range y = all(strip.length()).moved(at);
        List<Range> left = left(plan, strip);
        left.forEach(x -> blocks.add(new Block(x, y)));
        along.addAll(between(left));
        at = y.to();
      }
      along.add(all(plan.length()));
      return new BoardPlan(part, plan.length(), width, blocks)
          .withSizes(along, List.of(all(width)));
    }

    /** The pieces of a strip that are not kept, in order. */
    private static List<Range> left(BlankPlan plan, Range strip) {
      return plan.pieces().stream()
          .filter(each -> each.y().equals(strip) && each.kept().isEmpty())
          .map(BlankPlan.Block::x)
          .sorted(FROM)
          .toList();
    }

    private static List<Range> between(List<Range> pieces) {
      return IntStream.range(1, pieces.size())
          .mapToObj(i -> new Range(pieces.get(i - 1).to(), pieces.get(i).from()))
          .toList();
    }

    /** A kept piece, and what is trimmed off its long edges. */
    private BoardPlan trimmed(KeptCutout kept) {
      Length width = kept.widthOffTheTool();
      Range left = new Range(kept.gap(), width.minus(kept.gap()));
      Range along = all(kept.keptLength());
      return new BoardPlan(part, along.length(), width, List.of(new Block(along, left)))
          .trimmed()
          .withSizes(List.of(along), List.of(left, all(width)));
    }

    /** A panel as it was glued up, with what it is cut to. */
    private BoardPlan sized() {
      Length length = roughLength();
      Length width = roughWidth();
      Range x = middle(length, part.finishedLength());
      Range y = isLaminated() ? all(width) : middle(width, part.finishedWidth());
      List<Block> blocks =
          staves(width, boards()).stream()
              .filter(each -> each.overlaps(y))
              .map(each -> new Block(x, each.shared(y)))
              .toList();
      return new BoardPlan(part, length, width, blocks).trimmed().withSizes(List.of(x), List.of(y));
    }

    /** The jointed edge is below: from there it is ripped. */
    private BoardPlan ripped() {
      Length length = roughLength();
      Length extra = piece.description().shop().extraWidth(part.finishedLength());
      Range x = middle(length, part.finishedLength());
      Range y = all(part.finishedWidth()).moved(extra);
      Length width = part.finishedWidth().plus(extra);
      return new BoardPlan(part, length, width, List.of(new Block(x, y)))
          .trimmed()
          .withSizes(List.of(x), List.of());
    }

    private BoardPlan chosen(GluedPanel blank) {
      Length extra = piece.description().shop().extraLength();
      Length width =
          piece.staveWidth(part).plus(piece.description().shop().extraWidth(part.finishedLength()));
      List<Block> blocks = new ArrayList<>();
      Length from = Length.ZERO;
      for (Part each : blank.parts()) {
        Length to = from.plus(each.finishedLength()).plus(extra);
        blocks.add(new Block(new Range(from, to), all(width)));
        from = to;
      }
      return new BoardPlan(part, from, width, blocks).withSizes(List.of(all(from)), List.of());
    }

    private static Range middle(Length whole, Length size) {
      Length from = whole.minus(size).dividedBy(2, RoundingMode.FLOOR);
      return new Range(from, from.plus(size));
    }

    private static Range all(Length size) {
      return new Range(Length.ZERO, size);
    }
  }
}
