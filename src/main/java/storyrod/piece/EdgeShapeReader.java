package storyrod.piece;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.Entry;
import storyrod.description.Located;
import storyrod.geometry.Axis;
import storyrod.geometry.Edge;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.EdgeShapes.Hollow;
import storyrod.piece.EdgeShapes.Rounding;

/** Reads the hollows, crowns and rounded corners of a part, and says what is wrong with each. */
final class EdgeShapeReader {
  private final Rectangle rectangle;
  private final Blank blank;
  private final LengthFormat format;
  private final Diagnostics diagnostics;
  private final Map<Face, List<Hollow>> hollows = new LinkedHashMap<>();
  private final Map<Face, Length> crowns = new LinkedHashMap<>();
  private final Map<Edge, Rounding> roundings = new LinkedHashMap<>();
  private boolean faulty;

  EdgeShapeReader(Rectangle rectangle, LengthFormat format, Diagnostics diagnostics) {
    this.rectangle = rectangle;
    this.blank = rectangle.blank();
    this.format = format;
    this.diagnostics = diagnostics;
  }

  /** All shapes; nothing if one of them is faulty. */
  Optional<EdgeShapes> read(List<Entry> shapes) {
    for (Entry shape : shapes) {
      switch (shape.kind()) {
        case "hollow" -> hollow(shape);
        case "crown" -> crown(shape);
        case "round" -> round(shape);
        default -> throw new IllegalStateException("bug: a shape '" + shape.kind() + "' was read");
      }
    }
    return faulty
        ? Optional.empty()
        : Optional.of(new EdgeShapes(rectangle, hollows, crowns, roundings));
  }

  private Optional<Face> side(Entry shape) {
    Face side = shape.expect("edge", Face.class);
    if (side.axis() == face().axis()) {
      fail(
          Diagnostic.error(
                  "outline",
                  shape.at("edge"),
                  "%s is no edge of the outline of %s, which is %s thick on %s"
                      .formatted(
                          side.word(),
                          blank.name(),
                          print(blank.box().size(face().axis())),
                          face().axis().word()))
              .hint(
                  "name one of "
                      + String.join(", ", rectangle.sides().stream().map(Face::word).toList())));
      return Optional.empty();
    }
    return Optional.of(side);
  }

  private void hollow(Entry shape) {
    Optional<Face> side = side(shape);
    if (side.isEmpty()) {
      return;
    }
    Axis along = rectangle.along(side.get());
    for (Axis axis : Axis.values()) {
      if (axis != along && shape.has(axis.word())) {
        fail(
            Diagnostic.error(
                    "outline",
                    shape.at(axis.word()),
                    "the %s edge of %s runs on %s"
                        .formatted(side.get().word(), blank.name(), along.word()))
                .hint("write `%s:` for `%s:`".formatted(along.word(), axis.word())));
      }
    }
    Range range = shape.find(along.word(), Range.class).orElse(blank.shoulder().on(along));
    if (!blank.box().on(along).contains(range)) {
      fail(leaves(shape, along, range));
    }
    checkRise(shape, range.length(), side.get());
    hollows
        .computeIfAbsent(side.get(), key -> new ArrayList<>())
        .add(new Hollow(range, shape.length("rise"), shape));
  }

  private Diagnostic leaves(Entry shape, Axis along, Range range) {
    return Diagnostic.error(
            "path-outside",
            shape.at(along.word()),
            "the hollow runs from %s to %s, but %s only from %s to %s"
                .formatted(
                    print(range.from()),
                    print(range.to()),
                    blank.name(),
                    print(blank.box().on(along).from()),
                    print(blank.box().on(along).to())))
        .also(blank.at(), blank.name() + " is defined here")
        .hint("keep it inside the part");
  }

  private void checkRise(Entry shape, Length chord, Face side) {
    Length rise = shape.length("rise");
    Length have = blank.box().size(side.axis());
    if (!rise.isShorterThan(have)) {
      fail(
          Diagnostic.error(
                  "arc",
                  shape.at("rise"),
                  "an arc %s high cuts through %s, which is only %s there"
                      .formatted(print(rise), blank.name(), print(have)))
              .also(blank.at(), blank.name() + " is defined here")
              .hint("give it less rise"));
    } else if (rise.times(2).isLongerThan(chord)) {
      fail(
          Diagnostic.error(
                  "arc",
                  shape.at("rise"),
                  "an arc %s high over %s is more than half a circle"
                      .formatted(print(rise), print(chord)))
              .hint("give it at most half its width, or draw it as a path"));
    }
  }

  private void crown(Entry shape) {
    side(shape)
        .ifPresent(
            side -> {
              checkRise(shape, blank.shoulder().size(rectangle.along(side)), side);
              if (crowns.put(side, shape.length("rise")) != null || hollows.containsKey(side)) {
                fail(twice(shape, side.word() + " edge"));
              }
            });
  }

  private static Diagnostic twice(Entry shape, String what) {
    return Diagnostic.error("outline", shape.at(), "the " + what + " has its shape already")
        .hint("take one of the two away, or draw the whole outline as a path");
  }

  private void round(Entry shape) {
    List<Located<Edge>> given = shape.list("corners", Edge.class);
    if (given.isEmpty()) {
      rectangle.corners().forEach(corner -> round(shape, corner));
    }
    for (Located<Edge> corner : given) {
      if (corner.value().touches(face()) || corner.value().touches(face().opposite())) {
        fail(
            Diagnostic.error(
                    "outline",
                    corner.at(),
                    "%s is no corner of the outline of %s"
                        .formatted(corner.value().word(), blank.name()))
                .hint(
                    "name one of "
                        + String.join(
                            ", ", rectangle.corners().stream().map(Edge::word).toList())));
      } else {
        round(shape, corner.value());
      }
    }
  }

  private void round(Entry shape, Edge corner) {
    if (roundings.put(corner, new Rounding(shape.length("radius"), shape)) != null) {
      fail(twice(shape, corner.word() + " corner"));
    }
  }

  private Face face() {
    return rectangle.face();
  }

  private String print(Length length) {
    return format.formatWithUnit(length);
  }

  private void fail(Diagnostic fault) {
    faulty = true;
    diagnostics.add(fault);
  }
}
