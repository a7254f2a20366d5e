package storyrod.layout.length;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import storyrod.layout.LayoutJob;
import storyrod.layout.LayoutJob.Area;
import storyrod.layout.LayoutJob.Blank;
import storyrod.layout.LayoutJob.Least;
import storyrod.layout.LayoutJob.Stock;
import storyrod.layout.LayoutJob.Trim;
import storyrod.measure.Length;

/** Jobs of lengths for tests, in millimetres, all 100 wide. */
final class LengthJobs {
  private static final Length WIDTH = Length.mm(100);

  private final SplittableRandom chance;

  LengthJobs(long seed) {
    chance = new SplittableRandom(seed);
  }

  static Blank part(double length, int count) {
    return new Blank("part " + length, Length.nearest(length), WIDTH, count, false);
  }

  static Stock stock(double length, int available, long cost) {
    return stock(length, available, cost, Trim.NONE, List.of());
  }

  static Stock stock(double length, int available, long cost, Trim trim, List<Area> defects) {
    Length width = WIDTH.plus(trim.bottom()).plus(trim.top());
    return new Stock("stock", Length.nearest(length), width, available, cost, trim, defects);
  }

  static Area knot(double x, double length) {
    return new Area(Length.nearest(x), Length.mm(30), Length.nearest(length), Length.mm(20));
  }

  static LayoutJob job(double kerf, Least least, List<Stock> stock, List<Blank> blanks) {
    return new LayoutJob(blanks, stock, Length.nearest(kerf), least);
  }

  /** A job with some sizes of parts and kinds of stock, and every trouble now and then. */
  LayoutJob next(int mostSizes, int mostOfEach, int mostStock) {
    List<Blank> blanks = new ArrayList<>();
    for (int i = 1 + chance.nextInt(mostSizes); i > 0; i--) {
      blanks.add(part(100 + chance.nextInt(1200), 1 + chance.nextInt(mostOfEach)));
    }
    List<Stock> stock = new ArrayList<>();
    for (int i = 1 + chance.nextInt(mostStock); i > 0; i--) {
      stock.add(stock(i > 1));
    }
    double kerf = chance.nextInt(13) / 2.0;
    return job(kerf, chance.nextInt(2) == 0 ? Least.COST : Least.PIECES, stock, blanks);
  }

  private Stock stock(boolean mayRunOut) {
    int length = 1000 + chance.nextInt(1500);
    boolean limited = mayRunOut && chance.nextInt(2) == 0;
    long cost = length / 10 + chance.nextInt(50);
    List<Area> defects = new ArrayList<>();
    while (chance.nextInt(3) == 0) {
      defects.add(knot(chance.nextInt(length), 1 + chance.nextInt(60)));
    }
    return stock(length, limited ? chance.nextInt(4) : Stock.UNLIMITED, cost, trim(), defects);
  }

  private Trim trim() {
    if (chance.nextInt(2) == 0) {
      return Trim.NONE;
    }
    return new Trim(
        Length.mm(chance.nextInt(20)),
        Length.mm(chance.nextInt(20)),
        Length.mm(chance.nextInt(5)),
        Length.mm(chance.nextInt(5)));
  }
}
