package storyrod.stock;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;
import java.util.stream.LongStream;
import storyrod.stock.SheetProblem.Rectangle;
import storyrod.stock.SheetProblem.Sheet;

/**
 * A sheet problem without kerf: every part and the usable sheet are a kerf larger both ways. Each
 * layout of one problem is a layout of the other, so nothing later has to think of the blade. Sizes
 * are in units of their greatest common divisor, which keeps areas small.
 */
final class Enlarged {
  /** Ticks in a unit. */
  final long unit;

  final long kerfTicks;
  final long length;
  final long width;
  private final long[] lengths;
  private final long[] widths;
  private final boolean[] upright;
  private final boolean[] turned;

  /**
   * @throws IllegalArgumentException if a part fits on no sheet
   */
  Enlarged(SheetProblem problem) {
    Sheet sheet = problem.sheet();
    List<Rectangle> parts = problem.parts();
    kerfTicks = sheet.kerf();
    long wholeLength = sheet.usableLength() + kerfTicks;
    long wholeWidth = sheet.usableWidth() + kerfTicks;
    long[] longs = parts.stream().mapToLong(part -> part.length() + kerfTicks).toArray();
    long[] wides = parts.stream().mapToLong(part -> part.width() + kerfTicks).toArray();
    LongStream whole = LongStream.of(wholeLength, wholeWidth);
    unit = divisor(whole, Arrays.stream(longs), Arrays.stream(wides));
    length = wholeLength / unit;
    width = wholeWidth / unit;
    lengths = inUnits(longs);
    widths = inUnits(wides);
    upright = new boolean[parts.size()];
    turned = new boolean[parts.size()];
    for (int i = 0; i < parts.size(); i++) {
      orient(i, parts.get(i).mayTurn());
    }
  }

  private static long divisor(LongStream... sizes) {
    return Arrays.stream(sizes)
        .flatMap(LongStream::boxed)
        .map(BigInteger::valueOf)
        .reduce(BigInteger.ZERO, BigInteger::gcd)
        .longValueExact();
  }

  private long[] inUnits(long[] ticks) {
    return Arrays.stream(ticks).map(each -> each / unit).toArray();
  }

  private void orient(int part, boolean mayTurn) {
    upright[part] = lengths[part] <= length && widths[part] <= width;
    turned[part] = mayTurn && lengths[part] <= width && widths[part] <= length;
    if (!upright[part] && !turned[part]) {
      throw new IllegalArgumentException("bug: a part is larger than the sheet");
    }
    // A square gains nothing by turning.
    turned[part] &= !upright[part] || lengths[part] != widths[part];
  }

  int size() {
    return lengths.length;
  }

  /** The size along the sheet's length in one position. */
  long length(int part, boolean isTurned) {
    return isTurned ? widths[part] : lengths[part];
  }

  long width(int part, boolean isTurned) {
    return isTurned ? lengths[part] : widths[part];
  }

  boolean allows(int part, boolean isTurned) {
    return isTurned ? turned[part] : upright[part];
  }

  long[] lengths() {
    return lengths.clone();
  }

  long[] widths() {
    return widths.clone();
  }

  long area(int part) {
    return lengths[part] * widths[part];
  }

  long sheetArea() {
    return length * width;
  }
}
