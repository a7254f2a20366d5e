package storyrod.layout.sheet;

import java.math.BigInteger;
import storyrod.layout.LayoutJob;
import storyrod.layout.LayoutJob.Area;
import storyrod.layout.LayoutJob.Blank;
import storyrod.layout.LayoutJob.Stock;

/** The largest unit in which all enlarged sizes and the ends of all defects are whole. */
final class CommonUnit {
  private final long kerf;
  private BigInteger divisor = BigInteger.ZERO;

  CommonUnit(LayoutJob job) {
    kerf = job.kerf().ticks();
    job.stock().forEach(this::add);
    job.blanks().forEach(this::add);
  }

  long ticks() {
    return divisor.max(BigInteger.ONE).longValueExact();
  }

  private void add(Stock stock) {
    add(Enlarged.usableLength(stock) + kerf);
    add(Enlarged.usableWidth(stock) + kerf);
    for (Area defect : stock.defects()) {
      long x = defect.x().ticks() - stock.trim().left().ticks();
      long y = defect.y().ticks() - stock.trim().bottom().ticks();
      add(x + kerf);
      add(x + defect.length().ticks());
      add(y + kerf);
      add(y + defect.width().ticks());
    }
  }

  private void add(Blank blank) {
    add(blank.length().ticks() + kerf);
    add(blank.width().ticks() + kerf);
  }

  private void add(long ticks) {
    divisor = divisor.gcd(BigInteger.valueOf(ticks));
  }
}
