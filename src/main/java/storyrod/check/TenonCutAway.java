package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.geometry.Box;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.TrenchRole;

/** A tenon that another cut of its part takes some of away. */
final class TenonCutAway implements Check {
  @Override
  public String code() {
    return "tenon-cut-away";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A groove that runs right along a rail runs through its tenons as well, so "
            + "their shoulder there is at least as deep as the groove. Two tenons on one end "
            + "cut each other away. A tongue may lose what the groove in its own part takes.",
        "Follows from the description.",
        "It looks at box-shaped cuts; holes in a tenon are the matter of screw-meets and"
            + " hole-meets.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    List<Diagnostic> found = new ArrayList<>();
    for (Part part : piece.parts()) {
      for (Cut.Tenon tenon : part.cuts(Cut.Tenon.class)) {
        lost(part, tenon).forEach(loss -> found.add(diagnostic(piece, part, tenon, loss)));
      }
    }
    return found;
  }

  private record Loss(Cut by, Length size) {}

  private static Stream<Loss> lost(Part part, Cut.Tenon tenon) {
    return part.cuts().stream()
        .filter(cut -> cut != tenon && !isUsual(tenon, cut))
        .flatMap(
            cut ->
                cut.boxes().stream()
                    .flatMap(box -> box.shared(tenon.tenon()).stream())
                    .limit(1)
                    .map(box -> new Loss(cut, least(box))));
  }

  private static boolean isUsual(Cut.Tenon tenon, Cut cut) {
    return tenon.term().equals("tongue") && TrenchRole.GROOVE.isOf(cut);
  }

  private static Length least(Box box) {
    return box.x().length().min(box.y().length()).min(box.z().length());
  }

  private Diagnostic diagnostic(Piece piece, Part part, Cut.Tenon tenon, Loss loss) {
    LengthFormat format = piece.description().format();
    String what =
        "the %s in %s cuts %s into its %s for %s"
            .formatted(
                loss.by().term(),
                part.name(),
                format.formatWithUnit(loss.size()),
                tenon.term(),
                tenon.forWhat().orElseThrow());
    Diagnostic told =
        loss.by() instanceof Cut.Tenon
            ? Diagnostic.error(code(), tenon.at(), what)
            : Diagnostic.warning(code(), tenon.at(), what);
    return told.also(loss.by().at(), "the other cut is asked for here")
        .hint(
            loss.by() instanceof Cut.Tenon
                ? "give each end or edge one tenon, all of one thickness where two edges meet"
                : "give it a shoulder as deep as that cut, or move one of them");
  }
}
