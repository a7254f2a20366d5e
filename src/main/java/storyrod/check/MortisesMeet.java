package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import storyrod.description.Diagnostic;
import storyrod.geometry.Box;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** Two mortises in one part that run into each other; tenons that collide are an overlap. */
final class MortisesMeet implements Check {
  @Override
  public String code() {
    return "mortises-meet";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "Two mortises in neighbouring faces of a leg stay apart, so that wood is left "
            + "between the tenons for both to be glued to.",
        "Common practice.",
        "Tenons that are mitred inside the leg so that they meet are not known.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    List<Diagnostic> found = new ArrayList<>();
    for (Part part : piece.parts()) {
      List<Cut.Trench> mortises = mortises(part);
      for (int i = 0; i < mortises.size(); i++) {
        for (Cut.Trench other : mortises.subList(i + 1, mortises.size())) {
          Cut.Trench one = mortises.get(i);
          one.removed()
              .shared(other.removed())
              .ifPresent(both -> found.add(meet(piece, part, List.of(one, other), both)));
        }
      }
    }
    return found;
  }

  private static List<Cut.Trench> mortises(Part part) {
    return part.cuts().stream()
        .filter(cut -> cut.term().equals("mortise") && cut instanceof Cut.Trench)
        .map(Cut.Trench.class::cast)
        .toList();
  }

  private Diagnostic meet(Piece piece, Part part, List<Cut.Trench> two, Box both) {
    LengthFormat format = piece.description().format();
    Cut.Trench later = two.getLast();
    Length by = both.size(later.from().axis());
    return Diagnostic.warning(
            code(),
            later.at(),
            "the mortises in %s for %s and %s run %s into each other"
                .formatted(
                    part.name(),
                    two.getFirst().forWhat().orElseThrow(),
                    later.forWhat().orElseThrow(),
                    format.formatWithUnit(by)))
        .also(two.getFirst().at(), "the other tenon is asked for here")
        .also(part.at(), part.name() + " is defined here")
        .hint(
            "make this tenon more than %s shorter, or set one of them further out"
                .formatted(format.formatWithUnit(by)));
  }
}
