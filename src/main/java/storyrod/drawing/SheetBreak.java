package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import storyrod.geometry.Range;
import storyrod.layout.LayoutJob.Area;
import storyrod.measure.Length;

/** Where a sheet with much left over can be broken off, so that it has room at a larger scale. */
record SheetBreak(SawnPiece sheet) {
  /** What is left of a stretch with a break in it, in mm: room for its size on either side. */
  private static final double LEAST_MM = 24;

  /**
   * How far across the sheet things fall on the paper where it takes no more than some height.
   *
   * @return empty if nothing that is left over is wide enough for a break
   */
  Optional<Ruler> within(double heightMm, double factor) {
    double less = sheet.width().toMm() * factor - heightMm;
    return less <= 0
        ? Optional.of(Ruler.unbroken(factor))
        : widest()
            .filter(each -> each.length().toMm() * factor - less >= LEAST_MM)
            .map(each -> new Ruler(factor, List.of(inside(each, less, factor))));
  }

  /** The middle of a stretch, so much of the paper and the break itself. */
  private static Range inside(Range stretch, double lessMm, double factor) {
    Length half = Length.nearest((lessMm + Ruler.GAP) / 2 / factor);
    Length middle = stretch.middle();
    return new Range(middle.minus(half), middle.plus(half));
  }

  /** The widest stretch across the sheet in which nothing but cuts across it lies. */
  private Optional<Range> widest() {
    List<Length> ends = List.copyOf(ends());
    List<Range> plain = new ArrayList<>();
    for (int i = 0; i + 1 < ends.size(); i++) {
      Range stretch = new Range(ends.get(i), ends.get(i + 1));
      if (kept().noneMatch(each -> across(each).overlaps(stretch))) {
        plain.add(stretch);
      }
    }
    return plain.stream().max(Comparator.comparing(Range::length));
  }

  /** All that is shown whole. */
  private Stream<Area> kept() {
    return Stream.concat(
        sheet.parts().stream().map(SawnPiece.Laid::area), sheet.defects().stream());
  }

  private TreeSet<Length> ends() {
    TreeSet<Length> ends = new TreeSet<>(List.of(Length.ZERO, sheet.width()));
    kept().map(SheetBreak::across).forEach(each -> ends.addAll(List.of(each.from(), each.to())));
    sheet.offcuts().stream()
        .map(SheetBreak::across)
        .forEach(each -> ends.addAll(List.of(each.from(), each.to())));
    sheet.cuts().stream()
        .filter(cut -> cut.alongLength())
        .forEach(cut -> ends.addAll(List.of(cut.at(), cut.at().plus(sheet.kerf()))));
    return ends;
  }

  private static Range across(Area area) {
    return new Range(area.y(), area.y().plus(area.width()));
  }
}
