package storyrod.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import storyrod.description.Diagnostic;
import storyrod.description.ShopEntry;
import storyrod.description.StockEntry;
import storyrod.description.StockKind;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Mark;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** Parts too short for jointer and planer, even if they are milled in one length. */
final class TooShortToMill implements Check {
  private static final int NAMED = 4;

  @Override
  public String code() {
    return "too-short-to-mill";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "Jointer and planer throw or tear a board that is shorter than they can hold between their"
            + " rollers. Parts shorter than `shortest` of the shop stay together in one length until"
            + " they are cut to size, as the steps say; this finds those of a stock that even then"
            + " make less than that.",
        "12 in (300 mm) is common practice, from memory; the machine's maker says what holds.",
        "It takes finished lengths end to end, with a cut after each and the shop's `extra-length`.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    Length shortest = piece.description().shop().machines().shortest();
    Map<StockEntry, List<Mark>> byStock = new LinkedHashMap<>();
    for (Mark mark : piece.marks()) {
      Part part = mark.shown();
      if (part.stock().kind() == StockKind.SOLID
          && piece.keptAs(part.name()).isEmpty()
          && part.finishedLength().isShorterThan(shortest)) {
        byStock.computeIfAbsent(part.stock(), stock -> new ArrayList<>()).add(mark);
      }
    }
    return byStock.values().stream()
        .filter(marks -> together(piece.description().shop(), marks).isShorterThan(shortest))
        .map(marks -> finding(piece, marks))
        .toList();
  }

  private Diagnostic finding(Piece piece, List<Mark> marks) {
    LengthFormat format = piece.description().format();
    ShopEntry shop = piece.description().shop();
    String shortest = format.formatWithUnit(shop.machines().shortest());
    boolean isOne = marks.size() == 1 && marks.getFirst().count() == 1;
    return Diagnostic.advice(
            code(),
            marks.getFirst().shown().at(),
            "%s of `%s` %s %s long, cuts included, but jointer and planer want %s"
                .formatted(
                    names(piece, marks),
                    marks.getFirst().shown().stock().name(),
                    isOne ? "is" : "are together",
                    format.formatWithUnit(together(shop, marks)),
                    shortest))
        .hint(
            "mill a board of %s or longer and cut %s from it afterwards"
                .formatted(shortest, isOne ? "it" : "them"));
  }

  private static String names(Piece piece, List<Mark> marks) {
    LengthFormat format = piece.description().format();
    List<String> named =
        marks.stream()
            .limit(NAMED)
            .map(
                mark ->
                    "%s (%s)"
                        .formatted(
                            mark.shown().name(), format.format(mark.shown().finishedLength())))
            .toList();
    String more = marks.size() > NAMED ? " and others" : "";
    return String.join(", ", named) + more;
  }

  /** All of them end to end, with a cut after each and what a rough board is longer. */
  private static Length together(ShopEntry shop, List<Mark> marks) {
    return marks.stream()
        .map(mark -> mark.shown().finishedLength().plus(shop.kerf()).times(mark.count()))
        .reduce(shop.extraLength(), Length::plus);
  }
}
