package storyrod.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.EdgeShapes.Hollow;
import storyrod.piece.EdgeShapes.Rounding;

/** Says where the shapes on a side of a part's outline run into each other. */
final class EdgeRoom {
  private final EdgeShapes shapes;
  private final Blank blank;
  private final LengthFormat format;

  private EdgeRoom(EdgeShapes shapes, LengthFormat format) {
    this.shapes = shapes;
    this.blank = shapes.rectangle().blank();
    this.format = format;
  }

  static List<Diagnostic> faults(EdgeShapes shapes, LengthFormat format) {
    EdgeRoom room = new EdgeRoom(shapes, format);
    return shapes.rectangle().sides().stream().flatMap(room::faults).toList();
  }

  private Stream<Diagnostic> faults(Face side) {
    Axis along = shapes.rectangle().along(side);
    Optional<Rounding> low = shapes.rounding(side, Face.of(along, -1));
    Optional<Rounding> high = shapes.rounding(side, Face.of(along, 1));
    Range whole = shapes.room(along);
    Length from = whole.from().plus(radius(low));
    Length to = whole.to().minus(radius(high));
    Optional<Rounding> either = low.or(() -> high);
    if (to.isShorterThan(from)) {
      return Stream.of(tooRound(either.orElseThrow(), side, whole.length()));
    }
    return Stream.concat(
        either.filter(rounding -> shapes.isCrowned(side)).map(EdgeRoom::roundedCrown).stream(),
        hollowFaults(side, new Range(from, to)).stream());
  }

  private static Length radius(Optional<Rounding> rounding) {
    return rounding.map(Rounding::radius).orElse(Length.ZERO);
  }

  private List<Diagnostic> hollowFaults(Face side, Range straight) {
    List<Diagnostic> faults = new ArrayList<>();
    Length free = straight.from();
    for (Hollow hollow : shapes.hollows(side)) {
      Range range = hollow.range();
      if (range.from().isShorterThan(free) || range.to().isLongerThan(straight.to())) {
        faults.add(runsInto(hollow, side));
      }
      free = range.to();
    }
    return faults;
  }

  private Diagnostic tooRound(Rounding rounding, Face side, Length have) {
    return Diagnostic.error(
            "outline",
            rounding.entry().at("radius"),
            "a radius of %s finds no room on the %s edge of %s, which is %s long"
                .formatted(
                    format.formatWithUnit(rounding.radius()),
                    side.word(),
                    blank.name(),
                    format.formatWithUnit(have)))
        .also(blank.at(), blank.name() + " is defined here")
        .hint("make the radius smaller");
  }

  private static Diagnostic roundedCrown(Rounding rounding) {
    return Diagnostic.error(
            "outline",
            rounding.entry().at(),
            "a corner of a crowned edge cannot be rounded this way")
        .hint("draw the whole outline as a path");
  }

  private Diagnostic runsInto(Hollow hollow, Face side) {
    return Diagnostic.error(
            "outline",
            hollow.entry().at(),
            "the hollow runs into another shape on the %s edge of %s"
                .formatted(side.word(), blank.name()))
        .hint("make it shorter, or move it");
  }
}
