package storyrod.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.layout.LayoutJob.Area;
import storyrod.layout.LayoutJob.Blank;
import storyrod.layout.LayoutJob.Stock;
import storyrod.layout.LayoutPlan.SawCut;
import storyrod.layout.LayoutPlan.Sawn;
import storyrod.layout.LayoutPlan.Spot;
import storyrod.measure.Length;

/**
 * Saws a plan again, cut by cut, knowing nothing of how it was found: each cut must go right across
 * a piece that is there, and in the end each part must be a piece of its size, once, clear of
 * defects, and no more stock used than there is.
 */
public final class LayoutReplay {
  private final LayoutJob job;
  private final long kerf;
  private final int[] missing;
  private final int[] used;
  private final List<String> faults = new ArrayList<>();

  private LayoutReplay(LayoutJob job) {
    this.job = job;
    this.kerf = job.kerf().ticks();
    this.missing = job.blanks().stream().mapToInt(Blank::count).toArray();
    this.used = new int[job.stock().size()];
  }

  /** What is wrong with a plan, a sentence each; nothing if it is right. */
  public static List<String> faults(LayoutJob job, LayoutPlan plan) {
    LayoutReplay replay = new LayoutReplay(job);
    plan.pieces().forEach(replay::saw);
    replay.count(plan);
    return List.copyOf(replay.faults);
  }

  /** A piece of the stock as it lies on the bench. */
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

    boolean overlaps(Piece other) {
      return left < other.right && other.left < right && bottom < other.top && other.bottom < top;
    }
  }

  private void saw(Sawn sawn) {
    Stock stock = job.stock().get(sawn.stock());
    used[sawn.stock()]++;
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Piece(0, stock.length().ticks(), 0, stock.width().ticks()));
    for (int i = 0; i < sawn.cuts().size(); i++) {
      SawCut cut = sawn.cuts().get(i);
      expect(cut.number() == i + 1, cut + " is out of order");
      saw(cut, pieces);
    }
    sawn.spots().forEach(spot -> take(spot, stock, pieces));
    sawn.offcuts().forEach(each -> expect(pieces.remove(Piece.of(each)), each + " is no offcut"));
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
    return fence >= 0
        && (fence == at - piece.from(across) || fence == piece.to(across) - at - kerf);
  }

  private static void add(List<Piece> pieces, Piece piece) {
    if (piece.isLeft()) {
      pieces.add(piece);
    }
  }

  private void take(Spot spot, Stock stock, List<Piece> pieces) {
    Blank blank = job.blanks().get(spot.blank());
    Piece piece = Piece.of(spot.area());
    expect(pieces.remove(piece), blank.name() + " is not sawn to its size");
    expect(missing[spot.blank()]-- > 0, blank.name() + " is there too often");
    expect(hasSize(spot, blank), blank.name() + " has another size than wanted");
    expect(blank.mayTurn() || !spot.turned(), blank.name() + " lies across the grain");
    expect(
        stock.defects().stream().map(Piece::of).noneMatch(piece::overlaps),
        blank.name() + " lies over a defect");
  }

  private static boolean hasSize(Spot spot, Blank blank) {
    Length length = spot.turned() ? spot.area().width() : spot.area().length();
    Length width = spot.turned() ? spot.area().length() : spot.area().width();
    return length.equals(blank.length()) && width.equals(blank.width());
  }

  private void count(LayoutPlan plan) {
    plan.missing().forEach(each -> missing[each.blank()] -= each.count());
    for (int i = 0; i < missing.length; i++) {
      expect(missing[i] <= 0, job.blanks().get(i).name() + " is missing");
      expect(missing[i] >= 0, job.blanks().get(i).name() + " is told missing and is not");
    }
    long value = 0;
    for (int i = 0; i < used.length; i++) {
      Stock stock = job.stock().get(i);
      boolean enough = stock.available() == Stock.UNLIMITED || used[i] <= stock.available();
      expect(enough, "there is less of " + stock.name());
      value += used[i] * (job.least() == LayoutJob.Least.COST ? stock.cost() : 1);
    }
    expect(value == plan.value(), "the layouts take " + value + " and not " + plan.value());
  }

  private void expect(boolean right, String fault) {
    if (!right) {
      faults.add(fault);
    }
  }
}
