package storyrod.planset;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.drawing.SawnAlike;
import storyrod.drawing.SawnPiece.Laid;
import storyrod.measure.Length;
import storyrod.measure.Unit;
import storyrod.planset.CutReplay.Result;
import storyrod.planset.CutReplay.Step;

/** The lists of layouts that come as CSV; lengths are decimals in the unit of the lists. */
final class LayoutLists {
  private static final int DECIMALS = 4;
  private final Texts texts;

  private LayoutLists(Texts texts) {
    this.texts = texts;
  }

  /** Every part with the near corner of where it lies, x along the stock. */
  static byte[] parts(List<SawnStock> stocks, Texts texts) {
    Csv csv =
        new Csv("layout", "copies", "stock", "mark", "part", "x", "y", "length", "width", "turned");
    LayoutLists lists = new LayoutLists(texts);
    for (SawnStock stock : stocks) {
      for (SawnAlike sheet : stock.sheets()) {
        sheet.piece().parts().forEach(part -> csv.row(lists.part(stock, sheet, part)));
      }
    }
    return csv.bytes();
  }

  private List<Object> part(SawnStock stock, SawnAlike sheet, Laid part) {
    return List.of(
        stock.drawingName(sheet),
        sheet.numbers().size(),
        stock.title(),
        part.mark(),
        part.title().isEmpty() ? part.mark() : part.title(),
        number(part.area().x()),
        number(part.area().y()),
        number(part.area().length()),
        number(part.area().width()),
        part.turned() ? 1 : 0);
  }

  /** Every cut in order, the piece that it is made in, and what it gives and leaves. */
  static byte[] cuts(List<SawnStock> stocks, Texts texts) {
    Csv csv =
        new Csv(
            "layout",
            "copies",
            "cut",
            "from",
            "direction",
            "fence",
            "gives",
            "gives_length",
            "gives_width",
            "leaves",
            "leaves_length",
            "leaves_width");
    LayoutLists lists = new LayoutLists(texts);
    for (SawnStock stock : stocks) {
      for (SawnAlike sheet : stock.sheets()) {
        CutReplay.of(sheet.piece()).forEach(step -> csv.row(lists.cut(stock, sheet, step)));
      }
    }
    return csv.bytes();
  }

  private List<Object> cut(SawnStock stock, SawnAlike sheet, Step step) {
    List<Object> row = new ArrayList<>();
    row.add(stock.drawingName(sheet));
    row.add(sheet.numbers().size());
    row.add(step.cut().number());
    row.add(Layouts.from(stock, step, texts));
    row.add(Layouts.direction(step, texts));
    row.add(number(step.cut().fence()));
    row.addAll(result(step.gives(), step));
    row.addAll(result(step.leaves(), step));
    return row;
  }

  private List<Object> result(Optional<Result> result, Step step) {
    return result
        .<List<Object>>map(
            each ->
                List.of(
                    Layouts.word(each, step, texts),
                    number(each.area().length()),
                    number(each.area().width())))
        .orElse(List.of("", "", ""));
  }

  private BigDecimal number(Length length) {
    Unit unit = texts.format().unit();
    BigDecimal value =
        BigDecimal.valueOf(length.ticks())
            .divide(BigDecimal.valueOf(unit.one().ticks()), DECIMALS, RoundingMode.HALF_EVEN)
            .stripTrailingZeros();
    return value.scale() < 0 ? value.setScale(0) : value;
  }
}
