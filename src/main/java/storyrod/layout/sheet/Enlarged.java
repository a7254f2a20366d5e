package storyrod.layout.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import storyrod.layout.LayoutJob;
import storyrod.layout.LayoutJob.Area;
import storyrod.layout.LayoutJob.Blank;
import storyrod.layout.LayoutJob.Stock;

/**
 * A job without kerf: every part and every usable piece of stock are a kerf larger both ways. Each
 * layout of one is a layout of the other, so nothing later has to think of the blade. Sizes are in
 * units of their greatest common divisor, and equal blanks are one type.
 */
final class Enlarged {
  /** Ticks in a unit. */
  final long unit;

  final long kerfTicks;
  final List<Type> types;
  final List<Kind> kinds;

  /** Blanks of which no kind of stock can give one. */
  final List<Integer> tooLarge;

  /**
   * Equal parts.
   *
   * @param blanks the places in the job's blanks, with how many of each
   */
  record Type(
      int length, int width, boolean upright, boolean turned, Map<Integer, Integer> blanks) {
    int count() {
      return blanks.values().stream().mapToInt(each -> each).sum();
    }

    /** The size along the stock's length in one position. */
    int length(boolean isTurned) {
      return isTurned ? width : length;
    }

    int width(boolean isTurned) {
      return isTurned ? length : width;
    }

    long area() {
      return (long) length * width;
    }

    boolean allows(boolean isTurned) {
      return isTurned ? turned : upright;
    }
  }

  /**
   * Equal pieces of stock.
   *
   * @param stock the place in the job's stock
   * @param worth what one adds to the value that is to be least
   */
  record Kind(int stock, int length, int width, int available, long worth, List<Defect> defects) {
    long area() {
      return (long) length * width;
    }

    boolean holds(Type type) {
      return holds(type, false) || holds(type, true);
    }

    private boolean holds(Type type, boolean turned) {
      return type.allows(turned) && type.length(turned) <= length && type.width(turned) <= width;
    }
  }

  /**
   * A place no part may lie over: one that starts before {@code toX} and ends after {@code fromX},
   * and so across, does. Taken with the kerf, a narrow defect ends before it starts.
   */
  record Defect(int fromX, int toX, int fromY, int toY) {}

  Enlarged(LayoutJob job) {
    kerfTicks = job.kerf().ticks();
    unit = new CommonUnit(job).ticks();
    kinds = kinds(job);
    tooLarge = new ArrayList<>();
    types = types(job);
  }

  private List<Kind> kinds(LayoutJob job) {
    List<Kind> found = new ArrayList<>();
    for (int i = 0; i < job.stock().size(); i++) {
      Stock stock = job.stock().get(i);
      int available = stock.available() < 0 ? Integer.MAX_VALUE : stock.available();
      if (available > 0 && usableLength(stock) > 0 && usableWidth(stock) > 0) {
        found.add(
            new Kind(
                i,
                inUnits(usableLength(stock) + kerfTicks),
                inUnits(usableWidth(stock) + kerfTicks),
                available,
                job.least() == LayoutJob.Least.PIECES ? 1 : stock.cost(),
                stock.defects().stream().map(each -> defect(stock, each)).toList()));
      }
    }
    return List.copyOf(found);
  }

  static long usableLength(Stock stock) {
    return stock.length().ticks() - stock.trim().left().ticks() - stock.trim().right().ticks();
  }

  static long usableWidth(Stock stock) {
    return stock.width().ticks() - stock.trim().bottom().ticks() - stock.trim().top().ticks();
  }

  private Defect defect(Stock stock, Area area) {
    long x = area.x().ticks() - stock.trim().left().ticks();
    long y = area.y().ticks() - stock.trim().bottom().ticks();
    return new Defect(
        inUnits(x + kerfTicks),
        inUnits(x + area.length().ticks()),
        inUnits(y + kerfTicks),
        inUnits(y + area.width().ticks()));
  }

  private int inUnits(long ticks) {
    return Math.toIntExact(ticks / unit);
  }

  private List<Type> types(LayoutJob job) {
    Map<Type, Map<Integer, Integer>> counts = new LinkedHashMap<>();
    for (int i = 0; i < job.blanks().size(); i++) {
      Type type = type(job.blanks().get(i));
      if (kinds.stream().anyMatch(kind -> kind.holds(type))) {
        counts
            .computeIfAbsent(type, each -> new LinkedHashMap<>())
            .put(i, job.blanks().get(i).count());
      } else {
        tooLarge.add(i);
      }
    }
    List<Type> found = new ArrayList<>();
    counts.forEach(
        (type, blanks) ->
            found.add(new Type(type.length, type.width, type.upright, type.turned, blanks)));
    return List.copyOf(found);
  }

  private Type type(Blank blank) {
    int length = size(blank.length().ticks());
    int width = size(blank.width().ticks());
    // A square gains nothing by turning.
    boolean mayTurn = blank.mayTurn() && length != width;
    Type type = new Type(length, width, true, mayTurn, Map.of());
    boolean upright = kinds.stream().anyMatch(kind -> kind.holds(type, false));
    boolean turned = kinds.stream().anyMatch(kind -> kind.holds(type, true));
    return new Type(length, width, upright, turned, Map.of());
  }

  /** A part too large for a whole number is too large for any stock. */
  private int size(long ticks) {
    return (int) Math.min(Integer.MAX_VALUE, (ticks + kerfTicks) / unit);
  }

  int parts() {
    return types.stream().mapToInt(Type::count).sum();
  }
}
