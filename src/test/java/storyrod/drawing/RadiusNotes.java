package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import storyrod.geometry.Segment.Arc;
import storyrod.piece.Cut;

/** Whether each arc's radius, and that of each rounded edge, stands in a note. */
final class RadiusNotes {
  private static final Pattern RADIUS =
      Pattern.compile("R (?:≈ )?(" + Figures.NUMBER + ")( roundover)?");

  private RadiusNotes() {}

  static List<String> faults(FlatPart flat, ReadSheet sheet, Figures figures) {
    List<String> faults = new ArrayList<>();
    for (Cut.Shaped shaped : flat.cuts(Cut.Shaped.class)) {
      for (Arc arc : shaped.contour().arcs()) {
        addMissing(shaped.contour().flat(arc).radius(), false, figures, sheet, faults);
      }
    }
    for (Cut.Roundover roundover : flat.cuts(Cut.Roundover.class)) {
      addMissing(roundover.radius().toMm(), true, figures, sheet, faults);
    }
    return faults;
  }

  private static void addMissing(
      double mm, boolean roundover, Figures figures, ReadSheet sheet, List<String> faults) {
    boolean said =
        sheet.notes.stream()
            .flatMap(note -> RADIUS.matcher(String.join(" ", note.lines())).results())
            .filter(found -> roundover == (found.group(2) != null))
            .map(found -> roundover ? figures.bit(found.group(1)) : figures.length(found.group(1)))
            .anyMatch(figure -> Math.abs(figure.mm() - mm) <= figure.halfStep() + 1e-3);
    if (!said) {
      faults.add("no note gives the radius of %.2f mm".formatted(mm));
    }
  }
}
