package storyrod.drawing;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Step;
import storyrod.build.FaceMarks;
import storyrod.build.SandedFaces;
import storyrod.build.ShowFaces;
import storyrod.build.Verb;
import storyrod.description.StockKind;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.piece.Cut;
import storyrod.piece.Mark;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.stock.StockPlan;
import storyrod.words.Words;

/**
 * A step that does one thing to many parts, as rows of small figures: parts to be marked, faces to
 * be sanded, the sheets and boards from which a step takes its parts, or offcuts with a field for
 * each coat.
 */
final class GridPicture implements PicturedStep {
  private final int step;
  private final Grid grid;

  private GridPicture(int step, Grid grid) {
    this.step = step;
    this.grid = grid;
  }

  /** Whether the picture of a step, if it has one, may be rows of figures. */
  static boolean isFor(Step step) {
    return switch (step.verb()) {
      case MARK, SAND, CHOOSE, SIZE, TEST -> true;
      case MILL, BLANK, KEEP, REJOIN, CUT, DRILL, DRY_FIT, PRE_FINISH -> false;
      case FIT, TRIM, TRIAL_FIT, MOUNT, FINISH -> false;
    };
  }

  /** Of a step that marks or sands parts or tries the finish. */
  static Optional<GridPicture> of(Piece piece, BuildPlan plan, Step step) {
    Words words = piece.description().words();
    return switch (step.verb()) {
      case MARK -> of(step, marked(piece, step), words.say("step.mark.legend"), words);
      case SAND -> of(step, sanded(piece, plan, step), words.say("step.sand.legend"), words);
      case TEST -> of(step, CoatsTile.of(piece), words.say("step.test.legend"), words);
      case CHOOSE, SIZE, MILL, BLANK, KEEP, REJOIN, CUT, DRILL, DRY_FIT -> Optional.empty();
      case PRE_FINISH, FIT, TRIM, TRIAL_FIT, MOUNT, FINISH -> Optional.empty();
    };
  }

  /** Of a step that takes parts from sheets or boards that are laid out. */
  static Optional<GridPicture> of(Piece piece, StockPlan stock, Step step) {
    boolean takes = step.verb() == Verb.CHOOSE || step.verb() == Verb.SIZE;
    Words words = piece.description().words();
    return takes
        ? of(step, sheets(piece, stock, step), words.say("step.sheet.legend"), words)
        : Optional.empty();
  }

  private static Optional<GridPicture> of(
      Step step, List<? extends Tile> tiles, String legend, Words words) {
    return tiles.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new GridPicture(step.number(), new Grid(List.copyOf(tiles), List.of(legend), words)));
  }

  private static Stream<Mark> marks(Piece piece, Step step) {
    return Strips.byMark(piece, step).keySet().stream().map(piece::mark);
  }

  private static List<MarkTile> marked(Piece piece, Step step) {
    FaceMarks faces = new FaceMarks(new ShowFaces(piece));
    Words words = piece.description().words();
    return marks(piece, step).map(mark -> MarkTile.of(mark, faces, words)).toList();
  }

  private static List<SandTile> sanded(Piece piece, BuildPlan plan, Step step) {
    return marks(piece, step).flatMap(mark -> sanded(piece, plan, step, mark)).toList();
  }

  /** Each face that is sanded, with the cuts that are made by then. */
  private static Stream<SandTile> sanded(Piece piece, BuildPlan plan, Step step, Mark mark) {
    Part part =
        step.targets().contains(mark.shown().name())
            ? mark.shown()
            : Strips.byMark(piece, step).get(mark.mark()).getFirst();
    Set<Cut> later = new ByThen(plan).made(part, number -> number > step.number());
    return new SandedFaces(piece).of(part).stream().map(face -> sanded(piece, part, later, face));
  }

  private static SandTile sanded(Piece piece, Part part, Set<Cut> later, Face face) {
    FlatPart usual = FlatPart.of(part);
    Face name = usual.turned(face);
    FlatPart whole = name.axis() == Axis.Y ? usual : FlatPart.showing(part, face);
    FlatPart flat = whole.with(made(whole, later));
    Words words = piece.description().words();
    SolidView view = new SolidView(flat, flat.turned(face));
    String caption =
        words.say("step.sand.face", part.mark(), words.say("part.face." + face.word()));
    return new SandTile(
        flat,
        flat.turned(face),
        name,
        view.whole(),
        SandedArea.of(piece, flat, flat.turned(face), view),
        List.of(caption, part.mark()));
  }

  private static List<Cut> made(FlatPart whole, Set<Cut> later) {
    return IntStream.range(0, whole.cuts().size())
        .filter(i -> !later.contains(whole.part().cuts().get(i)))
        .mapToObj(whole.cuts()::get)
        .toList();
  }

  private static List<SheetTile> sheets(Piece piece, StockPlan stock, Step step) {
    Set<String> marks = marks(piece, step).map(Mark::mark).collect(Collectors.toUnmodifiableSet());
    return stock.layouts().stream()
        .flatMap(plan -> sheets(piece, plan, marks))
        .filter(tile -> tile.sheet().parts().stream().anyMatch(p -> marks.contains(p.mark())))
        .toList();
  }

  private static Stream<SheetTile> sheets(
      Piece piece, StockPlan.SheetPlan plan, Set<String> marks) {
    Words words = piece.description().words();
    String key = plan.stock().kind() == StockKind.SHEET ? "layout.sheet" : "layout.board";
    String thick = Notation.of(piece).format().format(plan.stock().thickness().value());
    int count = plan.sheets().size();
    return SawnAlike.of(plan.sheets().stream().map(each -> SawnPiece.of(each, piece)).toList())
        .stream()
        .map(
            alike -> {
              String name =
                  words.say(alike.numbers().size() == 1 ? key : key + "s", alike.range(), count);
              return new SheetTile(
                  alike.piece(), marks, List.of(words.say("step.sheet.of", thick, name)));
            });
  }

  @Override
  public int step() {
    return step;
  }

  @Override
  public double heightMm(double widthMm) {
    return grid.heightMm(widthMm);
  }

  @Override
  public Drawing drawn(Size room) {
    return grid.drawn("step-" + step, room);
  }
}
