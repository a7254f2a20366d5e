package storyrod.piece;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.Entry;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.LengthFormat;
import storyrod.piece.JointEffect.CutIn;

/** Reads notches and cutouts, and says what is wrong with them. */
final class BoxCutReader {
  private final Map<String, Blank> blanks;
  private final LengthFormat format;
  private final Diagnostics diagnostics;

  BoxCutReader(Map<String, Blank> blanks, LengthFormat format, Diagnostics diagnostics) {
    this.blanks = blanks;
    this.format = format;
    this.diagnostics = diagnostics;
  }

  Optional<CutIn> read(Entry entry) {
    Blank blank = blanks.get(entry.text("in"));
    if (blank == null) {
      return Optional.empty();
    }
    Box removed = blank.box();
    for (Axis axis : Axis.values()) {
      Optional<Range> range = entry.find(axis.word(), Range.class);
      if (range.isPresent()) {
        if (!range.get().overlaps(blank.box().on(axis))) {
          diagnostics.add(missed(entry, blank, axis, range.get()));
          return Optional.empty();
        }
        removed = removed.with(axis, range.get().shared(blank.box().on(axis)));
      }
    }
    return placed(entry, blank, removed);
  }

  private Diagnostic missed(Entry entry, Blank blank, Axis axis, Range range) {
    Range have = blank.box().on(axis);
    return Diagnostic.error(
            "cut-misses",
            entry.at(axis.word()),
            "the %s runs from %s to %s on %s, past %s, which runs from %s to %s"
                .formatted(
                    entry.kind(),
                    format.formatWithUnit(range.from()),
                    format.formatWithUnit(range.to()),
                    axis.word(),
                    blank.name(),
                    format.formatWithUnit(have.from()),
                    format.formatWithUnit(have.to())))
        .also(blank.at(), blank.name() + " is defined here")
        .hint("move it so that it overlaps the part");
  }

  private Optional<CutIn> placed(Entry entry, Blank blank, Box removed) {
    List<Face> open = openFaces(blank.box(), removed);
    boolean cutout = entry.kind().equals("cutout");
    boolean through =
        open.contains(Face.of(blank.thickness(), 1))
            && open.contains(Face.of(blank.thickness(), -1));
    boolean atEdge = open.stream().anyMatch(face -> face.axis() != blank.thickness());
    boolean fits = cutout ? through && !atEdge : atEdge;
    if (removed.equals(blank.box()) || !fits) {
      diagnostics.add(unfitCut(entry, blank, cutout));
      return Optional.empty();
    }
    Face from =
        open.stream()
            .filter(face -> face.axis() == blank.thickness())
            .findFirst()
            .orElse(open.getFirst());
    Cut cut =
        new Cut.Trench(
            entry.kind(),
            from,
            removed,
            removed.size(from.axis()),
            entry.find("kept-as", String.class),
            entry.at());
    return Optional.of(new CutIn(blank.name(), cut));
  }

  private static Diagnostic unfitCut(Entry entry, Blank blank, boolean cutout) {
    return Diagnostic.error(
            "cut-place",
            entry.at(),
            cutout
                ? "a cutout goes right through the middle of a part, but this one does not in "
                    + blank.name()
                : "a notch lies at an edge of a part and leaves some of it, but this one does not in "
                    + blank.name())
        .also(blank.at(), blank.name() + " is defined here")
        .hint(
            cutout
                ? "write `notch` if it is open at an edge"
                : "write `cutout` if it is in the middle, or correct its ranges");
  }

  private static List<Face> openFaces(Box part, Box removed) {
    return Arrays.stream(Face.values())
        .filter(face -> removed.at(face).equals(part.at(face)))
        .toList();
  }
}
