package storyrod.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.Entry;
import storyrod.description.FaceRef;
import storyrod.description.Located;
import storyrod.description.PointAt;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.JointEffect.CutIn;

/** Reads rows of holes, and says what is wrong with them. */
final class HoleReader {
  private final Map<String, Blank> blanks;
  private final LengthFormat format;
  private final Diagnostics diagnostics;

  HoleReader(Map<String, Blank> blanks, LengthFormat format, Diagnostics diagnostics) {
    this.blanks = blanks;
    this.format = format;
    this.diagnostics = diagnostics;
  }

  List<CutIn> read(Entry entry) {
    List<CutIn> cuts = new ArrayList<>();
    for (Located<FaceRef> in : entry.list("in", FaceRef.class)) {
      Blank blank = blanks.get(in.value().part());
      if (blank != null) {
        row(entry, blank, in).ifPresent(cut -> cuts.add(new CutIn(blank.name(), cut)));
      }
    }
    return cuts;
  }

  private Optional<Cut> row(Entry entry, Blank blank, Located<FaceRef> in) {
    Face face = in.value().face();
    Optional<Point> first = firstCentre(entry, blank, face);
    boolean through = entry.yes("through", false);
    if (first.isEmpty() || !rowIsWhole(entry, through)) {
      return Optional.empty();
    }
    Length thickness = blank.box().size(face.axis());
    Cut.Holes holes =
        new Cut.Holes(
            "hole",
            face,
            first.get(),
            entry.find("along", Axis.class).orElse(Axis.other(face.axis(), spare(face))),
            entry.findLength("step").orElse(Length.ZERO),
            entry.find("count", Integer.class).orElse(1),
            entry.length("diameter"),
            through ? thickness : entry.length("depth"),
            through,
            entry.find("for", String.class),
            entry.at());
    return fits(holes, blank, in) ? Optional.of(holes) : Optional.empty();
  }

  private static Axis spare(Face face) {
    return face.axis() == Axis.X ? Axis.Y : Axis.X;
  }

  private Optional<Point> firstCentre(Entry entry, Blank blank, Face face) {
    PointOnFace centre = new PointOnFace(blank, face, entry.expect("at", PointAt.class)::on);
    Optional<Axis> missing = centre.missing();
    if (missing.isPresent()) {
      String axis = missing.get().word();
      diagnostics.add(
          Diagnostic.error(
                  "hole-place",
                  entry.at("at"),
                  "a hole in %s.%s needs its place on %s"
                      .formatted(blank.name(), face.word(), axis))
              .hint("add `" + axis + ":` to `at`"));
      return Optional.empty();
    }
    return Optional.of(centre.point());
  }

  private boolean rowIsWhole(Entry entry, boolean through) {
    boolean row = entry.find("count", Integer.class).orElse(1) > 1;
    if (row && (!entry.has("along") || !entry.has("step"))) {
      diagnostics.add(
          Diagnostic.error("hole-row", entry.at(), "a row of holes needs `along` and `step`")
              .hint("add `along: z` and `step: 1 1/4`, with your own values"));
      return false;
    }
    if (through == entry.has("depth")) {
      diagnostics.add(
          Diagnostic.error(
                  "hole-depth",
                  entry.at(),
                  through ? "a hole that goes right through has no depth" : "a hole needs a depth")
              .hint("write either `depth:` or `through: yes`"));
      return false;
    }
    return true;
  }

  private boolean fits(Cut.Holes holes, Blank blank, Located<FaceRef> in) {
    if (holes.along() == holes.from().axis()) {
      diagnostics.add(
          Diagnostic.error(
                  "hole-row",
                  holes.at(),
                  "a row cannot run along %s into %s.%s"
                      .formatted(holes.along().word(), blank.name(), holes.from().word()))
              .hint("let it run along an axis that lies in the face"));
      return false;
    }
    for (Point centre : holes.centres()) {
      if (!inside(blank, holes.from().axis(), centre)) {
        outside(holes, blank, in, centre);
        return false;
      }
    }
    return deepEnough(holes, blank);
  }

  private boolean deepEnough(Cut.Holes holes, Blank blank) {
    Length have = blank.box().size(holes.from().axis());
    if (holes.through() || holes.depth().isShorterThan(have)) {
      return true;
    }
    diagnostics.add(
        Diagnostic.error(
                "cut-too-deep",
                holes.at(),
                "the hole is %s deep, but %s is only %s there"
                    .formatted(
                        format.formatWithUnit(holes.depth()),
                        blank.name(),
                        format.formatWithUnit(have)))
            .also(blank.at(), blank.name() + " is defined here")
            .hint("make it shallower, or write `through: yes`"));
    return false;
  }

  private static boolean inside(Blank blank, Axis into, Point centre) {
    for (Axis axis : Axis.values()) {
      if (axis != into && !blank.box().on(axis).contains(centre.on(axis))) {
        return false;
      }
    }
    return true;
  }

  private void outside(Cut.Holes holes, Blank blank, Located<FaceRef> in, Point centre) {
    StringBuilder place = new StringBuilder();
    for (Axis axis : Axis.values()) {
      if (axis != holes.from().axis()) {
        Range have = blank.box().on(axis);
        place.append(
            "%s%s = %s (the part runs from %s to %s)"
                .formatted(
                    place.isEmpty() ? "" : ", ",
                    axis.word(),
                    format.formatWithUnit(centre.on(axis)),
                    format.formatWithUnit(have.from()),
                    format.formatWithUnit(have.to())));
      }
    }
    diagnostics.add(
        Diagnostic.error(
                "hole-outside", in.at(), "a hole misses %s: %s".formatted(blank.name(), place))
            .also(blank.at(), blank.name() + " is defined here")
            .hint("move the row, shorten its step, or drill fewer holes"));
  }
}
