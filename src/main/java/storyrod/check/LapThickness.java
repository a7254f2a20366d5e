package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import storyrod.description.Diagnostic;
import storyrod.geometry.Axis;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** A half-lap or a cross-lap that leaves one of its parts too thin. */
final class LapThickness implements Check {
  private static final List<String> LAPS = List.of("cross-lap", "half-lap");

  @Override
  public String code() {
    return "lap-thickness";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "Where parts are lapped, each keeps about half of its thickness, or of its "
            + "width where it stands on edge; less than a third is weak.",
        "Common practice.",
        "It does not work out what the joint carries.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    List<Diagnostic> found = new ArrayList<>();
    for (Part part : piece.parts()) {
      for (Cut cut : part.cuts()) {
        if (cut instanceof Cut.Trench lap && LAPS.contains(lap.term()) && isThin(part, lap)) {
          found.add(thin(piece.description().format(), part, lap));
        }
      }
    }
    return found;
  }

  private static Length left(Part part, Cut.Trench lap) {
    return part.box().size(lap.from().axis()).minus(lap.depth());
  }

  private static boolean isThin(Part part, Cut.Trench lap) {
    return left(part, lap).times(3).isShorterThan(part.box().size(lap.from().axis()));
  }

  private Diagnostic thin(LengthFormat format, Part part, Cut.Trench lap) {
    Axis across = lap.from().axis();
    return Diagnostic.warning(
            code(),
            lap.at(),
            "the %s leaves %s of %s, less than a third of its %s of %s"
                .formatted(
                    lap.term(),
                    format.formatWithUnit(left(part, lap)),
                    part.name(),
                    across == part.thickness() ? "thickness" : "width",
                    format.formatWithUnit(part.box().size(across))))
        .also(part.at(), part.name() + " is defined here")
        .hint("half of each part is common practice; leave `depth` out for it");
  }
}
