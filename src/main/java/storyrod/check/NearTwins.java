package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.measure.Length;
import storyrod.piece.Likeness;
import storyrod.piece.Mark;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** Parts that are the same, or mirror images, but for less than a millimetre: mostly a slip. */
final class NearTwins implements Check {
  private static final Length LIMIT = Length.mm(1);

  /** Less than this is what rounding leaves, and no drawing shows it. */
  private static final Length NOTHING = Length.micrometres(50);

  @Override
  public String code() {
    return "near-twins";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "Two parts of one stock with the same cuts, whose sizes and cuts differ by less than 1 mm"
            + " from being equal or mirror images, get two drawings where one was meant. A part"
            + " that so nearly equals its own mirror image is told as handed for nothing.",
        "Our own rule.",
        "It compares box-shaped cuts, holes, slopes and the ends of curves; curves between equal"
            + " ends must be the same.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    List<Diagnostic> found = new ArrayList<>();
    List<Part> shown = piece.marks().stream().map(Mark::shown).toList();
    for (int i = 0; i < shown.size(); i++) {
      ownMirror(piece, piece.marks().get(i)).ifPresent(found::add);
      for (int j = i + 1; j < shown.size(); j++) {
        pair(piece, shown.get(i), shown.get(j)).ifPresent(found::add);
      }
    }
    return found;
  }

  private Optional<Diagnostic> pair(Piece piece, Part one, Part two) {
    if (piece.keptAs(one.name()).isPresent() != piece.keptAs(two.name()).isPresent()) {
      return Optional.empty();
    }
    return off(one, two, false)
        .map(off -> finding(piece, one, two, "the same", off))
        .or(() -> off(one, two, true).map(off -> finding(piece, one, two, "mirror images", off)));
  }

  private Optional<Diagnostic> ownMirror(Piece piece, Mark mark) {
    if (mark.mirrored() == 0) {
      return Optional.empty();
    }
    Part part = mark.shown();
    Part other = piece.part(mark.parts().getLast());
    return off(part, part, true)
        .map(
            off ->
                Diagnostic.advice(
                        code(),
                        part.at(),
                        "%s and %s are made as mirror images, yet each is its own mirror image but for %s"
                            .formatted(part.name(), other.name(), print(piece, off)))
                    .also(other.at(), other.name() + " is defined here")
                    .hint(
                        "set their cuts at equal distances from both ends: one drawing then does for both"));
  }

  private static Optional<Length> off(Part one, Part two, boolean mirrored) {
    return Likeness.of(one, two, mirrored, LIMIT)
        .filter(off -> off.isLongerThan(NOTHING) && off.isShorterThan(LIMIT));
  }

  private Diagnostic finding(Piece piece, Part one, Part two, String what, Length off) {
    return Diagnostic.advice(
            code(),
            two.at(),
            "%s and %s are %s but for %s"
                .formatted(one.name(), two.name(), what, print(piece, off)))
        .also(one.at(), one.name() + " is defined here")
        .hint("if they are meant alike, give both the same formulas; they then share one drawing");
  }

  private static String print(Piece piece, Length length) {
    return piece.description().format().forBits().formatWithUnit(length);
  }
}
