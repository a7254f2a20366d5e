package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import storyrod.description.Diagnostic;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Cut;
import storyrod.piece.Haunch;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** A haunch that does not reach the bottom of the groove in which it lies. */
final class HaunchInGroove implements Check {
  @Override
  public String code() {
    return "haunch-in-groove";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "Where a groove runs past the mortise to the end of a stile, the haunch is as deep as the"
            + " groove and fills it: else a hole shows at the end.",
        "Follows from the description.",
        "It compares the depths only; a groove that is wider than the haunch is thick shows beside"
            + " it.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    List<Diagnostic> found = new ArrayList<>();
    for (Part part : piece.parts()) {
      for (Cut.Tenon tenon : part.cuts(Cut.Tenon.class)) {
        tenon.haunch().ifPresent(haunch -> check(piece, part, tenon, haunch, found));
      }
    }
    return found;
  }

  private void check(
      Piece piece, Part part, Cut.Tenon tenon, Haunch haunch, List<Diagnostic> found) {
    Part into = piece.part(tenon.forWhat().orElseThrow());
    Length deep = haunch.box().size(tenon.from().axis());
    into.cuts(Cut.Trench.class).stream()
        .filter(groove -> lies(haunch, tenon.from(), groove))
        .filter(groove -> groove.depth().isLongerThan(deep))
        .forEach(groove -> found.add(hole(piece, part, tenon, groove)));
  }

  /** Whether a haunch lies in a slot all along its width, its socket or a mortise being none. */
  private static boolean lies(Haunch haunch, Face face, Cut.Trench groove) {
    Axis width = haunch.side().axis();
    Axis thickness = Axis.other(face.axis(), width);
    return groove.from() == face.opposite()
        && groove.removed().on(width).contains(haunch.box().on(width))
        && groove.removed().on(thickness).overlaps(haunch.box().on(thickness));
  }

  private Diagnostic hole(Piece piece, Part part, Cut.Tenon tenon, Cut.Trench groove) {
    LengthFormat format = piece.description().format();
    Haunch haunch = tenon.haunch().orElseThrow();
    Length deep = haunch.box().size(tenon.from().axis());
    return Diagnostic.warning(
            code(),
            tenon.at(),
            "the haunch of %s goes %s into the %s in %s, which is %s deep: a hole %s deep stays below it"
                .formatted(
                    part.name(),
                    format.formatWithUnit(deep),
                    groove.term(),
                    tenon.forWhat().orElseThrow(),
                    format.formatWithUnit(groove.depth()),
                    format.formatWithUnit(groove.depth().minus(deep))))
        .also(groove.at(), "the " + groove.term() + " is asked for here")
        .hint("write `haunch-depth: %s`".formatted(format.formatWithUnit(groove.depth())));
  }
}
