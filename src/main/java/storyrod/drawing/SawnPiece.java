package storyrod.drawing;

import java.util.List;
import java.util.stream.Collectors;
import storyrod.layout.LayoutJob.Area;
import storyrod.layout.LayoutPlan.SawCut;
import storyrod.measure.Length;
import storyrod.piece.KeptBoard;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.stock.StockPlan.Placed;
import storyrod.stock.StockPlan.SheetLayout;
import storyrod.words.Words;

/**
 * A piece of stock and what is sawn from it, as it is shown.
 *
 * @param lengthsOnly whether its width and those of its parts say nothing
 * @param cuts in the order in which they are made
 * @param defects bad places, over which no part lies
 */
public record SawnPiece(
    Length length,
    Length width,
    boolean lengthsOnly,
    Length kerf,
    List<Laid> parts,
    List<SawCut> cuts,
    List<Area> offcuts,
    List<Area> defects) {
  public SawnPiece {
    parts = List.copyOf(parts);
    cuts = List.copyOf(cuts);
    offcuts = List.copyOf(offcuts);
    defects = List.copyOf(defects);
  }

  /**
   * A part where it lies.
   *
   * @param id its name among all parts
   * @param mark the short name that equal parts share
   * @param shared the title that it shares with others of its part, of which it is one stave or
   *     layer
   * @param turned if its own length runs across the stock's
   * @param grained whether an arrow shows its grain
   */
  public record Laid(
      String id,
      String mark,
      String title,
      String shared,
      Area area,
      boolean turned,
      boolean grained) {
    /** All that there is of its part. */
    public Laid(String id, String mark, String title, Area area, boolean turned, boolean grained) {
      this(id, mark, title, title, area, turned, grained);
    }

    private Laid named(String newId, String newTitle) {
      return new Laid(newId, mark, newTitle, shared, area, turned, grained);
    }
  }

  /** A sheet or a board for a piece of furniture. */
  public static SawnPiece of(SheetLayout sheet, Piece piece) {
    return new SawnPiece(
        sheet.length(),
        sheet.width(),
        false,
        piece.description().shop().kerf(),
        sheet.placed().stream().map(placed -> laid(placed, piece)).toList(),
        sheet.cuts(),
        sheet.offcuts(),
        sheet.onHand().map(name -> defects(name, piece)).orElse(List.of()));
  }

  private static List<Area> defects(String onHand, Piece piece) {
    return piece.description().onHand().stream()
        .filter(entry -> entry.name().equals(onHand))
        .flatMap(entry -> entry.defects().stream())
        .map(
            each ->
                new Area(each.x().from(), each.y().from(), each.x().length(), each.y().length()))
        .toList();
  }

  private static Laid laid(Placed placed, Piece piece) {
    String whole = piece.mark(placed.mark()).title();
    return new Laid(
        placed.number().map(number -> placed.part() + "-" + number).orElse(placed.part()),
        placed.mark(),
        withKept(
            placed.number().map(number -> numbered(whole, number, placed, piece)).orElse(whole),
            placed,
            piece),
        withKept(whole, placed, piece),
        placed.area(),
        placed.turned(),
        piece.part(placed.part()).stock().grained());
  }

  /** A title with the marks of what is cut out of the part's blank. */
  private static String withKept(String title, Placed placed, Piece piece) {
    return piece
        .keptBoard(placed.part())
        .map(board -> words(piece).say("layout.with", title, marks(board, piece)))
        .orElse(title);
  }

  /** A stave, a layer, or a stave of a layer. */
  private static String numbered(String whole, int number, Placed placed, Piece piece) {
    Part part = piece.part(placed.part());
    int staves = piece.staves(part).orElse(1);
    if (!piece.isLaminated(part)) {
      return words(piece).say("layout.stave", whole, number);
    }
    int layer = (number - 1) / staves + 1;
    return staves == 1
        ? words(piece).say("layout.layer", whole, layer)
        : words(piece).say("layout.layer-stave", whole, layer, (number - 1) % staves + 1);
  }

  private static Words words(Piece piece) {
    return piece.description().words();
  }

  private static String marks(KeptBoard board, Piece piece) {
    return board.kept().stream()
        .map(part -> piece.part(part).mark())
        .distinct()
        .collect(Collectors.joining(", "));
  }

  /** Equal for pieces that look the same, whichever of some equal parts they give. */
  public SawnPiece withoutNames() {
    return with(parts.stream().map(part -> part.named(part.mark(), part.shared())).toList());
  }

  /** The same with no number on its staves and layers, as it stands for others too. */
  SawnPiece withSharedTitles() {
    return with(parts.stream().map(part -> part.named(part.id(), part.shared())).toList());
  }

  private SawnPiece with(List<Laid> others) {
    return new SawnPiece(length, width, lengthsOnly, kerf, others, cuts, offcuts, defects);
  }
}
