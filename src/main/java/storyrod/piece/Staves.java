package storyrod.piece;

import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Description;
import storyrod.description.OnHandEntry;
import storyrod.description.SheetSize;
import storyrod.description.StockEntry;
import storyrod.description.StockKind;
import storyrod.measure.Length;

/** From how many staves a part of solid wood is glued up. */
final class Staves {
  private final Description description;

  Staves(Description description) {
    this.description = description;
  }

  /**
   * As many as the description says; else, where the sizes of boards are known, as few as the
   * widest board and the planer allow. Nothing for sheets and where no board is known.
   */
  Optional<Integer> of(Part part, Length blankWidth) {
    return description
        .part(part.name())
        .flatMap(entry -> entry.makeup().staves())
        .or(() -> fewest(part, blankWidth));
  }

  private Optional<Integer> fewest(Part part, Length blankWidth) {
    Length extra = description.shop().extraWidth(part.finishedLength());
    return widestBoard(part.stock())
        .map(board -> board.minus(extra).min(description.shop().planerWidth()))
        .filter(Length::isPositive)
        .map(
            stave ->
                blankWidth.isLongerThan(stave)
                    ? (int) Math.ceilDiv(blankWidth.plus(extra).ticks(), stave.ticks())
                    : 1);
  }

  private Optional<Length> widestBoard(StockEntry stock) {
    return stock.kind() == StockKind.SOLID
        ? Stream.concat(usual(stock), onHand(stock)).reduce(Length::max)
        : Optional.empty();
  }

  private static Stream<Length> usual(StockEntry stock) {
    return stock.figures().board().map(SheetSize::width).stream();
  }

  /** What is on hand decides only where nothing else can be bought. */
  private Stream<Length> onHand(StockEntry stock) {
    return stock.figures().board().isPresent()
        ? Stream.empty()
        : description.onHand().stream()
            .filter(each -> each.stock().value().equals(stock.name()))
            .map(OnHandEntry::width);
  }
}
