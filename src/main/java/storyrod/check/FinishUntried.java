package storyrod.check;

import java.util.List;
import storyrod.description.Diagnostic;
import storyrod.description.FinishEntry;
import storyrod.piece.Piece;

/** A finish that nobody has tried on this wood yet. */
final class FinishUntried implements Check {
  @Override
  public String code() {
    return "finish-untried";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A finish is tried on an offcut of the same wood, sanded the same way, before "
            + "it goes on the piece.",
        "Common practice.",
        "It reads what the description says under `tried-on`, and cannot see the " + "offcut.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    return piece.description().finish().filter(finish -> finish.triedOn().isEmpty()).stream()
        .map(this::finding)
        .toList();
  }

  private Diagnostic finding(FinishEntry finish) {
    return Diagnostic.warning(
            code(), finish.at(), finish.product() + " has not been tried on this wood")
        .hint("try it on an offcut")
        .hint("then add `tried-on:` with the wood");
  }
}
