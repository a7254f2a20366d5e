package storyrod.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Clamping.Clamps;
import storyrod.description.Diagnostic;
import storyrod.measure.Length;
import storyrod.piece.Joint;
import storyrod.piece.Piece;

/** Finds glued joints that no clamp presses: no two faces take its jaws, or it opens too little. */
record ClampFaces(Piece piece) {
  List<Diagnostic> findings(List<Step> steps) {
    List<Diagnostic> findings = new ArrayList<>();
    for (Step step : steps) {
      Clamping.Found found = Clamping.of(piece, step);
      found.bare().stream().findFirst().map(ClampFaces::bare).ifPresent(findings::add);
      found.clamps().stream()
          .flatMap(each -> tooFar(each).stream())
          .findFirst()
          .ifPresent(findings::add);
    }
    return findings;
  }

  private static Diagnostic bare(Joint joint) {
    return Diagnostic.advice(
            "no-clamp-faces",
            joint.at(),
            "no two faces take a clamp that presses `"
                + joint.first()
                + "` to `"
                + joint.second()
                + "`: they lean, are too small for a pad, or leave no room for a jaw or for the bar between them")
        .hint(
            "make cauls, cut to the slope, that give the jaws two parallel faces; pull a strap round"
                + " it; or let screws or brads hold it while the glue sets");
  }

  private Optional<Diagnostic> tooFar(Clamps clamps) {
    Optional<Length> most = piece.description().shop().machines().clampOpening();
    return most.filter(clamps.opening()::isLongerThan)
        .map(
            opening ->
                Diagnostic.advice(
                        "clamp-too-short",
                        piece.part(clamps.low()).at(),
                        "the clamps from `"
                            + clamps.low()
                            + "` to `"
                            + clamps.high()
                            + "` have to open "
                            + text(clamps.opening())
                            + ", the shop's open "
                            + text(opening))
                    .hint("hook two clamps into each other, borrow longer ones, or use a strap"));
  }

  private String text(Length length) {
    return piece.description().format().formatWithUnit(length);
  }
}
