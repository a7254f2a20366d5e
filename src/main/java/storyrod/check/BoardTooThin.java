package storyrod.check;

import java.util.List;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.StockEntry;
import storyrod.description.StockKind;
import storyrod.measure.LengthFormat;
import storyrod.piece.Mark;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** A board that is bought thinner than the part that is to be planed from it. */
final class BoardTooThin implements Check {
  @Override
  public String code() {
    return "board-too-thin";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A part of one board is no thicker than the board is bought (`bought-as`). A thicker one is"
            + " glued up in layers.",
        "Follows from how boards are planed.",
        "It does not ask what planing takes off: a board just as thick as its part is let pass, for"
            + " it may have been bought planed.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    return piece.description().stock().values().stream()
        .filter(stock -> stock.kind() == StockKind.SOLID)
        .filter(
            stock -> stock.boughtAs().filter(stock.thickness().value()::isLongerThan).isPresent())
        .flatMap(stock -> finding(piece, stock).stream())
        .toList();
  }

  /** Told once for a stock, at the first part of one board. */
  private Optional<Diagnostic> finding(Piece piece, StockEntry stock) {
    return piece.marks().stream()
        .map(Mark::shown)
        .filter(part -> part.stock().name().equals(stock.name()))
        .filter(part -> !piece.isLaminated(part) && piece.keptAs(part.name()).isEmpty())
        .findFirst()
        .map(part -> finding(piece, part));
  }

  private Diagnostic finding(Piece piece, Part part) {
    LengthFormat format = piece.description().format();
    RoughBoards boards = new RoughBoards(part);
    Diagnostic error =
        Diagnostic.error(
                code(),
                part.at(),
                "%s is %s thick, but the boards of %s are bought as %s"
                    .formatted(
                        part.name(),
                        format.formatWithUnit(part.finishedThickness()),
                        part.stock().name(),
                        format.formatWithUnit(boards.bought())))
            .also(part.stock().at(), part.stock().name() + " is defined here");
    return boards
        .layers()
        .map(
            count ->
                error.hint("glue it up from several boards, face to face: `layers: " + count + "`"))
        .orElse(error)
        .hint("or buy boards of at least " + format.formatWithUnit(boards.thickness(1)));
  }
}
