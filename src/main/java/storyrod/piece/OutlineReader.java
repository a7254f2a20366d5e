package storyrod.piece;

import java.math.RoundingMode;
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
import storyrod.geometry.Box;
import storyrod.geometry.Contour;
import storyrod.geometry.Edge;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;

/**
 * Reads a part's outline: the rectangle with hollows, crowns and rounded corners, or a whole path.
 * Coordinates at an end that joints lengthen, or that a slant moves, go with it.
 */
final class OutlineReader {
  private final Blank blank;
  private final Face face;
  private final LengthFormat format;
  private final Diagnostics diagnostics;
  private final Map<Face, List<Hollow>> hollows = new LinkedHashMap<>();
  private final Map<Face, Length> crowns = new LinkedHashMap<>();
  private final Map<Edge, Rounding> rounds = new LinkedHashMap<>();
  private boolean faulty;

  OutlineReader(Blank blank, LengthFormat format, Diagnostics diagnostics) {
    this.blank = blank;
    this.face = PathReader.face(blank);
    this.format = format;
    this.diagnostics = diagnostics;
  }

  private record Hollow(Range range, Length rise, Entry entry) {}

  private record Rounding(Length radius, Entry entry) {}

  /** The outline as a cut; nothing where the part is a plain rectangle or the outline is faulty. */
  Optional<Cut> read() {
    List<Entry> shapes = blank.entry().outline();
    if (shapes.isEmpty()) {
      return Optional.empty();
    }
    PathReader paths = new PathReader(blank, format, diagnostics);
    Entry first = shapes.getFirst();
    Optional<Entry> path = shapes.stream().filter(each -> each.kind().equals("path")).findFirst();
    if (path.isPresent() && shapes.size() > 1) {
      fail(
          Diagnostic.error("outline", path.get().at(), "a path is the whole outline")
              .hint("draw the other shapes as points of the path, or take the path away"));
      return Optional.empty();
    }
    Optional<Contour> contour =
        path.isPresent()
            ? paths.read(path.get()).map(this::lengthened)
            : changed(shapes).flatMap(found -> paths.whole(first, found));
    contour.ifPresent(found -> checkSize(first, found));
    return contour.map(
        found ->
            new Cut.Shaped(Cut.Shaped.OUTLINE, face, found, false, Optional.empty(), first.at()));
  }

  /** A part that is smaller than its box is dimensioned and bought too large. */
  private void checkSize(Entry entry, Contour contour) {
    for (Axis axis : contour.axes()) {
      Range have = blank.box().on(axis);
      Range used = contour.extent(axis);
      if (!used.equals(have)) {
        diagnostics.add(
            Diagnostic.warning(
                    "outline-short",
                    entry.at(),
                    "the outline of %s uses only %s to %s on %s; the part runs from %s to %s"
                        .formatted(
                            blank.name(),
                            print(used.from()),
                            print(used.to()),
                            axis.word(),
                            print(have.from()),
                            print(have.to())))
                .also(blank.at(), blank.name() + " is defined here")
                .hint("let the part run just as far as its outline"));
      }
    }
  }

  private Contour lengthened(Contour contour) {
    return contour.mapped(contour.normal(), this::lengthened);
  }

  private Point lengthened(Point point) {
    Point moved = point;
    for (Axis axis : Axis.values()) {
      Range described = blank.described().on(axis);
      Range made = blank.box().on(axis);
      Length at = point.on(axis);
      if (at.equals(described.from())) {
        moved = moved.with(axis, made.from());
      } else if (at.equals(described.to())) {
        moved = moved.with(axis, made.to());
      }
    }
    return moved;
  }

  private Optional<Contour> changed(List<Entry> shapes) {
    for (Entry shape : shapes) {
      switch (shape.kind()) {
        case "hollow" -> hollow(shape);
        case "crown" -> crown(shape);
        case "round" -> round(shape);
        default -> throw new IllegalStateException("bug: a shape '" + shape.kind() + "' was read");
      }
    }
    List<Face> sides = sides();
    if (!faulty) {
      sides.forEach(this::checkRoom);
    }
    return faulty ? Optional.empty() : Optional.of(around(sides));
  }

  /** The four sides of the rectangle, counter-clockwise on the axes of its plane. */
  private List<Face> sides() {
    Axis across = face.axis() == Axis.X ? Axis.Y : Axis.X;
    Axis up = Axis.other(face.axis(), across);
    return List.of(Face.of(up, -1), Face.of(across, 1), Face.of(up, 1), Face.of(across, -1));
  }

  private Axis along(Face side) {
    return Axis.other(face.axis(), side.axis());
  }

  private Optional<Face> side(Entry shape) {
    Face side = shape.expect("edge", Face.class);
    if (side.axis() == face.axis()) {
      fail(
          Diagnostic.error(
                  "outline",
                  shape.at("edge"),
                  "%s is no edge of the outline of %s, which is %s thick on %s"
                      .formatted(
                          side.word(),
                          blank.name(),
                          print(blank.box().size(face.axis())),
                          face.axis().word()))
              .hint("name one of " + String.join(", ", sides().stream().map(Face::word).toList())));
      return Optional.empty();
    }
    return Optional.of(side);
  }

  private void hollow(Entry shape) {
    Optional<Face> side = side(shape);
    if (side.isEmpty()) {
      return;
    }
    Axis along = along(side.get());
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
              checkRise(shape, blank.shoulder().size(along(side)), side);
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
      corners().forEach(corner -> round(shape, corner));
    }
    for (Located<Edge> corner : given) {
      if (corner.value().touches(face) || corner.value().touches(face.opposite())) {
        fail(
            Diagnostic.error(
                    "outline",
                    corner.at(),
                    "%s is no corner of the outline of %s"
                        .formatted(corner.value().word(), blank.name()))
                .hint(
                    "name one of "
                        + String.join(", ", corners().stream().map(Edge::word).toList())));
      } else {
        round(shape, corner.value());
      }
    }
  }

  private void round(Entry shape, Edge corner) {
    if (rounds.put(corner, new Rounding(shape.length("radius"), shape)) != null) {
      fail(twice(shape, corner.word() + " corner"));
    }
  }

  private List<Edge> corners() {
    List<Face> sides = sides();
    List<Edge> corners = new ArrayList<>();
    for (int i = 0; i < sides.size(); i++) {
      corners.add(new Edge(sides.get(i), sides.get((i + 1) % sides.size())));
    }
    return corners;
  }

  /** What lies on a side, from its low end: roundings and hollows must not run into each other. */
  private void checkRoom(Face side) {
    Axis along = along(side);
    Range room = room(along);
    Face low = Face.of(along, -1);
    Face high = Face.of(along, 1);
    Length at = room.from();
    Optional<Rounding> first = Optional.ofNullable(rounds.get(new Edge(side, low)));
    Optional<Rounding> last = Optional.ofNullable(rounds.get(new Edge(side, high)));
    at = at.plus(first.map(Rounding::radius).orElse(Length.ZERO));
    Length end = room.to().minus(last.map(Rounding::radius).orElse(Length.ZERO));
    if (end.isShorterThan(at)) {
      fail(tooRound(first.or(() -> last).orElseThrow(), side, room.length()));
      return;
    }
    if (crowns.containsKey(side) && (first.isPresent() || last.isPresent())) {
      fail(
          Diagnostic.error(
                  "outline",
                  first.or(() -> last).orElseThrow().entry().at(),
                  "a corner of a crowned edge cannot be rounded this way")
              .hint("draw the whole outline as a path"));
    }
    List<Hollow> sorted = sorted(side);
    for (Hollow hollow : sorted) {
      if (hollow.range().from().isShorterThan(at) || hollow.range().to().isLongerThan(end)) {
        fail(
            Diagnostic.error(
                    "outline",
                    hollow.entry().at(),
                    "the hollow runs into another shape on the %s edge of %s"
                        .formatted(side.word(), blank.name()))
                .hint("make it shorter, or move it"));
      }
      at = hollow.range().to();
    }
  }

  private Diagnostic tooRound(Rounding rounding, Face side, Length have) {
    return Diagnostic.error(
            "outline",
            rounding.entry().at("radius"),
            "a radius of %s finds no room on the %s edge of %s, which is %s long"
                .formatted(print(rounding.radius()), side.word(), blank.name(), print(have)))
        .also(blank.at(), blank.name() + " is defined here")
        .hint("make the radius smaller");
  }

  private List<Hollow> sorted(Face side) {
    return hollows.getOrDefault(side, List.of()).stream()
        .sorted(java.util.Comparator.comparing(hollow -> hollow.range().from()))
        .toList();
  }

  /** From corner to corner on an axis, crowned sides having their corners further in. */
  private Range room(Axis axis) {
    return new Range(level(Face.of(axis, -1)), level(Face.of(axis, 1)));
  }

  private Length level(Face side) {
    return inwards(side, crowns.getOrDefault(side, Length.ZERO));
  }

  private Length inwards(Face side, Length by) {
    return blank.box().at(side).minus(by.times(side.sign()));
  }

  private Contour around(List<Face> sides) {
    Pencil pencil = new Pencil();
    for (int i = 0; i < sides.size(); i++) {
      side(sides.get(i), i < 2 ? 1 : -1, pencil);
    }
    return new Contour(face.axis(), pencil.closed());
  }

  /** Draws a side and the corner at its end; sign says which way it runs. */
  private void side(Face side, int sign, Pencil pencil) {
    Axis along = along(side);
    Point on = at(side, level(side));
    Face end = Face.of(along, sign);
    Point start = on.with(along, level(end.opposite()));
    pencil.to(start.moved(along, radius(side, end.opposite()).times(sign)));
    if (crowns.containsKey(side)) {
      Range arc = room(along).shared(blank.shoulder().on(along));
      Point top = at(side, blank.box().at(side)).with(along, middle(arc));
      pencil.to(on.with(along, arc.end(-sign)));
      pencil.arc(top, on.with(along, arc.end(sign)));
    }
    List<Hollow> inOrder = sign > 0 ? sorted(side) : sorted(side).reversed();
    for (Hollow hollow : inOrder) {
      Point top = at(side, inwards(side, hollow.rise())).with(along, middle(hollow.range()));
      pencil.to(on.with(along, hollow.range().end(-sign)));
      pencil.arc(top, on.with(along, hollow.range().end(sign)));
    }
    Length radius = radius(side, end);
    Point corner = on.with(along, level(end));
    pencil.to(corner.moved(along, radius.times(-sign)));
    if (radius.isPositive()) {
      Length out = corner.on(side.axis()).minus(radius.times(side.sign()));
      pencil.arc(rounded(corner, side, end, radius), corner.with(side.axis(), out));
    }
  }

  private Length radius(Face side, Face end) {
    Rounding rounding = rounds.get(new Edge(side, end));
    return rounding == null ? Length.ZERO : rounding.radius();
  }

  /** The middle of the arc that rounds a corner. */
  static Point rounded(Point corner, Face one, Face other, Length radius) {
    Length in = Length.nearest(radius.toMm() * (1 - Math.sqrt(0.5)));
    return corner
        .moved(one.axis(), in.times(-one.sign()))
        .moved(other.axis(), in.times(-other.sign()));
  }

  private Point at(Face side, Length at) {
    Box box = blank.box();
    return new Point(box.x().from(), box.y().from(), box.z().from())
        .with(face.axis(), box.at(face))
        .with(side.axis(), at);
  }

  static Length middle(Range range) {
    return range.from().plus(range.length().dividedBy(2, RoundingMode.FLOOR));
  }

  private String print(Length length) {
    return format.formatWithUnit(length);
  }

  private void fail(Diagnostic fault) {
    faulty = true;
    diagnostics.add(fault);
  }
}
