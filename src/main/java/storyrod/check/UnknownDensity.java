package storyrod.check;

import java.util.List;
import storyrod.description.Diagnostic;
import storyrod.description.StockEntry;
import storyrod.description.StockKind;
import storyrod.piece.Piece;
import storyrod.wood.Mass;
import storyrod.wood.SheetMaterials;
import storyrod.wood.SpeciesTable;

/** A stock whose density nobody knows, so that the piece has no weight. */
final class UnknownDensity implements Check {
  @Override
  public String code() {
    return "unknown-density";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "The weight of the piece needs the density of every stock in use: the project's"
            + " own, or that of the published tables. A property is never guessed.",
        "Follows from the description.",
        "Hardware, glue and finish are not weighed.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    return piece.parts().stream()
        .map(part -> part.stock())
        .distinct()
        .filter(stock -> Mass.density(stock).isEmpty())
        .map(this::finding)
        .toList();
  }

  private Diagnostic finding(StockEntry stock) {
    Diagnostic finding =
        Diagnostic.advice(
                code(),
                stock.at(),
                "no density is known for '%s', so the plan set gives no weight"
                    .formatted(stock.species()))
            .hint("add `density:` in kg/m³ to the stock");
    List<String> near =
        stock.kind() == StockKind.SOLID
            ? SpeciesTable.near(stock.species())
            : SheetMaterials.near(stock.species());
    return near.isEmpty() ? finding : finding.hint("did you mean `" + near.getFirst() + "`?");
  }
}
