package storyrod.check;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import storyrod.description.Diagnostic;
import storyrod.description.Located;
import storyrod.description.PartEntry;
import storyrod.description.Span;
import storyrod.piece.GrainMatch;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** Parts that are to be cut as neighbours from one board can be. */
final class GrainRunsOn implements Check {
  @Override
  public String code() {
    return "grain-match";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "Parts with one `match` are of one stock, their grain runs one way, and they lie in a row:"
            + " end to end or side by side. Only then can they be cut as neighbours from one board"
            + " or sheet. Side by side, none of them is glued up from staves of its own.",
        "Follows from how boards are cut.",
        "It does not look at the figure of the wood, and takes the parts' places in the piece for"
            + " the order.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    return GrainMatch.of(piece).stream().flatMap(match -> fault(piece, match).stream()).toList();
  }

  private Optional<Diagnostic> fault(Piece piece, GrainMatch match) {
    Part first = match.parts().getFirst();
    if (match.parts().size() == 1) {
      return Optional.of(
          at(piece, first, "no other part has the match '" + match.word() + "'")
              .hint("give the same word to the part beside it, or take it away"));
    }
    return unlike(match, part -> !part.stock().name().equals(first.stock().name()))
        .map(other -> apart(piece, match, other, "they are cut from different stock"))
        .or(
            () ->
                unlike(match, part -> part.length() != first.length())
                    .map(other -> apart(piece, match, other, "their grain runs different ways")))
        .or(() -> row(piece, match))
        .or(() -> panels(piece, match));
  }

  private static Optional<Part> unlike(GrainMatch match, Predicate<Part> is) {
    return match.parts().stream().filter(is).findFirst();
  }

  private Optional<Diagnostic> row(Piece piece, GrainMatch match) {
    return match.row().isPresent()
        ? Optional.empty()
        : Optional.of(
            apart(
                piece,
                match,
                match.parts().getLast(),
                "they lie neither end to end nor side by side"));
  }

  private Optional<Diagnostic> panels(Piece piece, GrainMatch match) {
    return match.endToEnd()
        ? Optional.empty()
        : unlike(match, piece::isPanel)
            .map(
                panel ->
                    at(piece, panel, panel.name() + " is glued up and has no grain of one board")
                        .hint("write `staves: 1` if a board is wide enough, or take `match` away"));
  }

  private Diagnostic apart(Piece piece, GrainMatch match, Part other, String why) {
    Part first = match.parts().getFirst();
    return at(
            piece,
            other,
            "the grain cannot run on from %s to %s: %s".formatted(first.name(), other.name(), why))
        .also(place(piece, first), "the match begins here")
        .hint("give them different words for `match`, or none");
  }

  private Diagnostic at(Piece piece, Part part, String message) {
    return Diagnostic.error(code(), place(piece, part), message);
  }

  private static Span place(Piece piece, Part part) {
    return piece
        .description()
        .part(part.name())
        .flatMap(PartEntry::match)
        .map(Located::at)
        .orElse(part.at());
  }
}
