package storyrod.drawing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import storyrod.build.BuildPlan.Step;
import storyrod.build.PanelClamps;
import storyrod.build.Verb;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.stock.GluedPanel;
import storyrod.words.Words;

/**
 * A step that glues up boards, saws a blank apart, glues it together again or cuts to size what was
 * glued up, as a strip: one board of each mark, and beside them how the annual rings lie at the
 * end.
 */
final class BoardPicture implements PicturedStep {
  /** So many boards are drawn in any room. */
  private static final int ALWAYS = 6;

  /** A panel with what is cut off it: any lower it says no more than its sizes do. */
  private static final double LEAST_PANEL_MM = 44;

  private final int step;
  private final Strip strip;
  private final Optional<Strip> column;
  private final double leastMm;

  private BoardPicture(int step, Strip strip) {
    this(step, strip, Optional.of(strip), 0);
  }

  /**
   * @param column what stands in a column; empty where it would be but stamps there
   */
  private BoardPicture(int step, Strip strip, Optional<Strip> column, double leastMm) {
    this.step = step;
    this.strip = strip;
    this.column = column;
    this.leastMm = leastMm;
  }

  /** Whether the picture of a step, if it has one, is such a strip. */
  static boolean isFor(Step step) {
    return switch (step.verb()) {
      case MILL, BLANK, KEEP, REJOIN, SIZE -> true;
      case CHOOSE, MARK, CUT, DRILL, SAND, DRY_FIT, PRE_FINISH -> false;
      case FIT, TRIM, TRIAL_FIT, MOUNT, TEST, FINISH -> false;
    };
  }

  /** Whether a step only cuts panels to size. */
  static boolean isOfPanels(Piece piece, Step step) {
    return step.verb() == Verb.SIZE
        && step.targets().stream()
            .noneMatch(n -> piece.keptAs(n).isPresent() || piece.keptBoard(n).isPresent());
  }

  /** Empty where nothing is sawn but sheets. */
  static Optional<BoardPicture> of(Piece piece, Step step) {
    if (!isFor(step)) {
      return Optional.empty();
    }
    List<List<Part>> all =
        boards(piece, step).stream().filter(same -> isShown(piece, step, same.getFirst())).toList();
    Optional<Strip> strip =
        all.isEmpty()
            ? new RoughBoards(piece, step).worked()
            : Optional.of(strip(piece, step, all));
    if (!all.isEmpty() && isOfPanels(piece, step)) {
      Optional<Strip> column =
          Optional.of(upright(piece, step, all)).filter(any -> all.size() == 1);
      return strip.map(each -> new BoardPicture(step.number(), each, column, LEAST_PANEL_MM));
    }
    boolean isBlank = all.stream().anyMatch(same -> isTakenApart(piece, step, same.getFirst()));
    return strip.map(
        each ->
            new BoardPicture(step.number(), each, Optional.of(each).filter(any -> !isBlank), 0));
  }

  /** Panels with their grain down the paper. */
  private static Strip upright(Piece piece, Step step, List<List<Part>> all) {
    List<StripCell> cells =
        all.stream().<StripCell>map(same -> board(piece, step, same).upright()).toList();
    return new Strip(cells, Optional.empty(), ALWAYS, Notation.of(piece).words());
  }

  /** Of a step that chooses boards: the blanks that are looked for. */
  static Optional<BoardPicture> chosen(Piece piece, Step step) {
    return new RoughBoards(piece, step)
        .chosen()
        .map(strip -> new BoardPicture(step.number(), strip));
  }

  /** Whether a step works on boards that are glued up or taken apart. */
  static boolean isShown(Piece piece, Step step) {
    return isFor(step)
        && step.targets().stream().anyMatch(name -> isShown(piece, step, piece.part(name)));
  }

  /** What is drawn once: the parts of one mark, or all that are glued up in one length. */
  private static Collection<List<Part>> boards(Piece piece, Step step) {
    Map<String, List<Part>> boards = Strips.byMark(piece, step);
    PanelClamps.panels(piece, step).stream()
        .filter(GluedPanel::isShared)
        .forEach(
            panel -> {
              panel.parts().forEach(part -> boards.remove(part.mark()));
              boards.put(panel.first().mark(), panel.parts());
            });
    return boards.values();
  }

  private static boolean isShown(Piece piece, Step step, Part part) {
    return isTakenApart(piece, step, part) || BoardPlan.of(piece, step, part).isPresent();
  }

  private static boolean isTakenApart(Piece piece, Step step, Part part) {
    return step.verb() == Verb.KEEP && piece.keptBoard(part.name()).isPresent();
  }

  private static Strip strip(Piece piece, Step step, List<List<Part>> all) {
    List<StripCell> cells = all.stream().map(same -> cell(piece, step, same)).toList();
    Notation notation = Notation.of(piece);
    Optional<CutFigure> end =
        all.stream()
            .filter(same -> step.verb() == Verb.MILL)
            .flatMap(same -> EndView.of(piece, same.getFirst(), notation.words()).stream())
            .map(CutFigure.class::cast)
            .findFirst();
    return new Strip(cells, end, ALWAYS, notation.words());
  }

  private static StripCell cell(Piece piece, Step step, List<Part> same) {
    Part part = same.getFirst();
    return isTakenApart(piece, step, part)
        ? new BlankFigure(piece.mark(part.mark()), piece)
        : board(piece, step, same);
  }

  private static BoardFigure board(Piece piece, Step step, List<Part> same) {
    Notation notation = Notation.of(piece);
    Part part = same.getFirst();
    BoardPlan plan = BoardPlan.of(piece, step, part).orElseThrow();
    List<String> said =
        new ArrayList<>(step.verb() == Verb.MILL ? glued(piece, plan, notation) : List.of());
    if (same.size() > 1) {
      String count = count(piece, step, same);
      said.addFirst(said.isEmpty() ? count : said.removeFirst() + ", " + count);
    }
    said.addAll(new LongBlanks(piece, step).captions(same));
    return BoardFigure.of(plan, notation, said, same);
  }

  private static String count(Piece piece, Step step, List<Part> same) {
    Words words = Notation.of(piece).words();
    boolean isOne = PanelClamps.panels(piece, step).contains(new GluedPanel(piece, same));
    String marks = same.stream().map(Part::mark).distinct().collect(Collectors.joining(", "));
    return isOne
        ? words.say("step.board.together", marks, same.size())
        : words.say("step.cut.count", same.size());
  }

  /** How large it is when it has been glued up, and from what. */
  private static List<String> glued(Piece piece, BoardPlan plan, Notation notation) {
    Words words = notation.words();
    Part part = plan.part();
    String length = notation.format().format(plan.length());
    if (piece.isLaminated(part)) {
      return List.of(words.say("step.board.layers", length, piece.layers(part)));
    }
    String size = plan.size(notation);
    String boards =
        piece
            .staves(part)
            .map(count -> words.say("step.board.staves", count, stave(piece, part, notation)))
            .orElseGet(() -> words.say("step.board.free"));
    return List.of(size, boards);
  }

  private static String stave(Piece piece, Part part, Notation notation) {
    return notation.format().format(piece.staveWidth(part));
  }

  @Override
  public int step() {
    return step;
  }

  /** In a column a panel wants no more than it has to have: it takes what is left white. */
  @Override
  public double heightMm(double widthMm) {
    if (!Strips.isNarrow(widthMm)) {
      return Math.max(leastMm, strip.heightMm(widthMm));
    }
    double high = column.map(each -> each.heightMm(widthMm)).orElse(Double.POSITIVE_INFINITY);
    return leastMm > 0 && high < Double.POSITIVE_INFINITY ? Math.min(high, leastMm) : high;
  }

  @Override
  public Drawing drawn(Size room) {
    Strip shown = Strips.isNarrow(room.widthMm()) ? column.orElse(strip) : strip;
    return shown.drawn("step-" + step, room);
  }
}
