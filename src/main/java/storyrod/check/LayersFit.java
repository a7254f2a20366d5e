package storyrod.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.description.Located;
import storyrod.description.PartEntry;
import storyrod.description.Span;
import storyrod.description.StockKind;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** Boards that are glued up face to face are together as thick as their part. */
final class LayersFit implements Check {
  @Override
  public String code() {
    return "layers-fit";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A part in layers is of solid wood whose boards have a thickness (`bought-as`), and its"
            + " layers, planed, are together at least as thick as it is. Planing takes 1/16 in off"
            + " each face of a board.",
        "Follows from how boards are glued up; 1/16 in off a face is common practice (memory).",
        "A board that is bent or twisted gives less. What levels the blank after the glue-up comes"
            + " off the same boards and is not counted.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    return piece.description().parts().stream()
        .filter(entry -> entry.makeup().layers().filter(count -> count.value() > 1).isPresent())
        .flatMap(entry -> finding(piece, piece.part(entry.name()), entry).stream())
        .toList();
  }

  private Optional<Diagnostic> finding(Piece piece, Part part, PartEntry entry) {
    Located<Integer> layers = entry.makeup().layers().orElseThrow();
    if (part.stock().kind() == StockKind.SHEET) {
      return Optional.of(ofSheet(part, layers.at()));
    }
    if (part.stock().boughtAs().isEmpty()) {
      return Optional.of(ofUnknownBoards(part, layers.at()));
    }
    RoughBoards boards = new RoughBoards(part);
    boolean isThin = boards.planed().times(layers.value()).isShorterThan(part.finishedThickness());
    return isThin ? Optional.of(tooThin(piece, part, boards, layers)) : Optional.empty();
  }

  private Diagnostic ofSheet(Part part, Span at) {
    return error(
            at, "%s is cut from a sheet, which is not glued up in layers".formatted(part.name()))
        .also(part.stock().at(), part.stock().name() + " is defined here")
        .hint("take `layers` away, or take a stock of `kind: solid`");
  }

  private Diagnostic ofUnknownBoards(Part part, Span at) {
    return error(
            at,
            "%s is glued up in layers, but nobody knows how thick the boards of %s are"
                .formatted(part.name(), part.stock().name()))
        .also(part.stock().at(), part.stock().name() + " is defined here")
        .hint("write how thick they are bought, such as `bought-as: 1`");
  }

  private Diagnostic tooThin(Piece piece, Part part, RoughBoards boards, Located<Integer> layers) {
    var format = piece.description().format();
    Diagnostic error =
        error(
                layers.at(),
                "%s is %s thick, but %d layers of boards bought as %s give %s when they are planed"
                    .formatted(
                        part.name(),
                        format.formatWithUnit(part.finishedThickness()),
                        layers.value(),
                        format.formatWithUnit(boards.bought()),
                        format.formatWithUnit(boards.planed().times(layers.value()))))
            .also(part.stock().at(), part.stock().name() + " is defined here");
    return Stream.of(
            boards.layers().map("write `layers: %d`"::formatted),
            Optional.of(
                "buy boards of at least "
                    + format.formatWithUnit(boards.thickness(layers.value()))))
        .flatMap(Optional::stream)
        .reduce(error, Diagnostic::hint, (one, other) -> other);
  }

  private Diagnostic error(Span at, String message) {
    return Diagnostic.error(code(), at, message);
  }
}
