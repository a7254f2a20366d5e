package storyrod.check;

import java.util.List;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.FinishEntry;
import storyrod.piece.Piece;
import storyrod.wood.NamedWood;

/** A finish that has been tried on wood of which nothing of the piece is made. */
final class FinishOtherWood implements Check {
  @Override
  public String code() {
    return "finish-other-wood";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "The test piece of a finish is of the same wood as the piece, sanded the same way, with "
            + "the same product: colour and soaking in differ from wood to wood.",
        "Common practice.",
        "It knows the woods of the table by their English names; a test piece of which no wood is "
            + "said, or of which one wood is the piece's, is taken as it is.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    return piece.description().finish().stream()
        .flatMap(finish -> other(finish, piece).map(wood -> finding(finish, wood)).stream())
        .toList();
  }

  private static Optional<NamedWood> other(FinishEntry finish, Piece piece) {
    List<NamedWood> own =
        piece.parts().stream()
            .map(part -> part.stock().species())
            .distinct()
            .flatMap(species -> NamedWood.in(species).stream())
            .toList();
    List<NamedWood> tried = finish.triedOn().map(NamedWood::in).orElse(List.of());
    return tried.stream().anyMatch(wood -> own.stream().anyMatch(wood::mayBe))
        ? Optional.empty()
        : tried.stream().findFirst();
  }

  private Diagnostic finding(FinishEntry finish, NamedWood wood) {
    return Diagnostic.warning(
            code(),
            finish.at(),
            finish.product() + " was tried on " + wood.said() + ", of which no part is made")
        .hint("try it on an offcut of the same wood, sanded the same way");
  }
}
