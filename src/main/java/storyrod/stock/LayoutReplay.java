package storyrod.stock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.measure.Length;
import storyrod.stock.StockPlan.Area;
import storyrod.stock.StockPlan.Placed;
import storyrod.stock.StockPlan.SawCut;
import storyrod.stock.StockPlan.SheetLayout;

/**
 * Saws layouts again, cut by cut, knowing nothing of how they were found: each cut must go right
 * across a piece that is there, and in the end each part must be a piece of its size, once.
 */
public final class LayoutReplay {
  private final long kerf;
  private final Map<String, Wanted> missing = new LinkedHashMap<>();
  private final List<String> faults = new ArrayList<>();

  private LayoutReplay(Length kerf, List<Wanted> wanted) {
    this.kerf = kerf.ticks();
    wanted.forEach(each -> missing.put(each.part(), each));
  }

  /** A part that the layouts must give. */
  public record Wanted(String part, Length length, Length width, boolean mayTurn) {}

  /** What is wrong with the layouts of one stock, a sentence each; nothing if they are right. */
  public static List<String> faults(List<SheetLayout> sheets, Length kerf, List<Wanted> wanted) {
    LayoutReplay replay = new LayoutReplay(kerf, wanted);
    sheets.forEach(replay::saw);
    replay.missing.keySet().forEach(part -> replay.faults.add(part + " is missing"));
    return List.copyOf(replay.faults);
  }

  /** A piece of the sheet as it lies on the bench. */
  private record Piece(long left, long right, long bottom, long top) {
    static Piece of(Area area) {
      long x = area.x().ticks();
      long y = area.y().ticks();
      return new Piece(x, x + area.length().ticks(), y, y + area.width().ticks());
    }

    boolean isLeft() {
      return left < right && bottom < top;
    }

    /** The ends, from and to, of a cut along one axis, and those of the piece across it. */
    long from(boolean alongX) {
      return alongX ? left : bottom;
    }

    long to(boolean alongX) {
      return alongX ? right : top;
    }

    Piece with(boolean x, long from, long to) {
      return x ? new Piece(from, to, bottom, top) : new Piece(left, right, from, to);
    }
  }

  private void saw(SheetLayout sheet) {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Piece(0, sheet.length().ticks(), 0, sheet.width().ticks()));
    for (int i = 0; i < sheet.cuts().size(); i++) {
      SawCut cut = sheet.cuts().get(i);
      expect(cut.number() == i + 1, cut + " is out of order");
      expect(!cut.at().isNegative(), cut + " begins outside the sheet");
      saw(cut, pieces);
    }
    sheet.placed().forEach(placed -> take(placed, pieces));
    sheet.offcuts().forEach(each -> expect(pieces.remove(Piece.of(each)), each + " is no offcut"));
  }

  private void saw(SawCut cut, List<Piece> pieces) {
    Optional<Piece> found = pieces.stream().filter(piece -> goesAcross(cut, piece)).findFirst();
    expect(found.isPresent(), cut + " goes right across no piece");
    found.ifPresent(
        piece -> {
          expect(isFence(cut, piece), cut + " has another fence setting");
          pieces.remove(piece);
          boolean x = !cut.alongLength();
          long at = cut.at().ticks();
          add(pieces, piece.with(x, piece.from(x), at));
          add(pieces, piece.with(x, at + kerf, piece.to(x)));
        });
  }

  private boolean goesAcross(SawCut cut, Piece piece) {
    boolean along = cut.alongLength();
    long at = cut.at().ticks();
    // The blade may run off an edge of the piece but must take some of it.
    return piece.from(along) == cut.from().ticks()
        && piece.to(along) == cut.to().ticks()
        && at < piece.to(!along)
        && at + kerf > piece.from(!along);
  }

  private boolean isFence(SawCut cut, Piece piece) {
    boolean across = !cut.alongLength();
    long at = cut.at().ticks();
    long fence = cut.fence().ticks();
    return fence == at - piece.from(across) || fence == piece.to(across) - at - kerf;
  }

  private static void add(List<Piece> pieces, Piece piece) {
    if (piece.isLeft()) {
      pieces.add(piece);
    }
  }

  private void take(Placed placed, List<Piece> pieces) {
    String part = placed.part();
    expect(pieces.remove(Piece.of(placed.area())), part + " is not sawn to its size");
    Optional<Wanted> wanted = Optional.ofNullable(missing.remove(part));
    expect(wanted.isPresent(), part + " is there twice or was never wanted");
    wanted.ifPresent(each -> compare(placed, each));
  }

  private void compare(Placed placed, Wanted wanted) {
    expect(hasSize(placed, wanted), placed.part() + " has another size than wanted");
    expect(wanted.mayTurn() || !placed.turned(), placed.part() + " lies across the grain");
  }

  private static boolean hasSize(Placed placed, Wanted wanted) {
    Length length = placed.turned() ? placed.area().width() : placed.area().length();
    Length width = placed.turned() ? placed.area().length() : placed.area().width();
    return length.equals(wanted.length()) && width.equals(wanted.width());
  }

  private void expect(boolean right, String fault) {
    if (!right) {
      faults.add(fault);
    }
  }
}
