package storyrod.piece;

import java.util.List;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.Entry;
import storyrod.geometry.Axis;
import storyrod.geometry.Contour;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;

/**
 * Reads a part's outline: the rectangle with hollows, crowns and rounded corners, or a whole path.
 * Coordinates at an end that joints lengthen, or that a slant moves, go with it.
 */
final class OutlineReader {
  private final Rectangle rectangle;
  private final Blank blank;
  private final LengthFormat format;
  private final Diagnostics diagnostics;

  OutlineReader(Blank blank, LengthFormat format, Diagnostics diagnostics) {
    this.rectangle = Rectangle.of(blank);
    this.blank = blank;
    this.format = format;
    this.diagnostics = diagnostics;
  }

  /** The outline as a cut; nothing where the part is a plain rectangle or the outline is faulty. */
  Optional<Cut> read() {
    List<Entry> shapes = blank.entry().outline();
    if (shapes.isEmpty()) {
      return Optional.empty();
    }
    Entry first = shapes.getFirst();
    Optional<Contour> contour = contour(shapes);
    contour.ifPresent(found -> checkSize(first, found));
    return contour.map(
        found ->
            new Cut.Shaped(
                Cut.Shaped.OUTLINE, rectangle.face(), found, false, Optional.empty(), first.at()));
  }

  private Optional<Contour> contour(List<Entry> shapes) {
    PathReader paths = new PathReader(blank, format, diagnostics);
    Optional<Entry> path = shapes.stream().filter(each -> each.kind().equals("path")).findFirst();
    if (path.isEmpty()) {
      return shaped(shapes).flatMap(found -> paths.whole(shapes.getFirst(), found));
    }
    if (shapes.size() > 1) {
      diagnostics.add(
          Diagnostic.error("outline", path.get().at(), "a path is the whole outline")
              .hint("draw the other shapes as points of the path, or take the path away"));
      return Optional.empty();
    }
    return paths.read(path.get()).map(this::lengthened);
  }

  private Optional<Contour> shaped(List<Entry> shapes) {
    return new EdgeShapeReader(rectangle, format, diagnostics)
        .read(shapes)
        .filter(this::hasRoom)
        .map(OutlineTracer::trace);
  }

  private boolean hasRoom(EdgeShapes shapes) {
    List<Diagnostic> faults = EdgeRoom.faults(shapes, format);
    diagnostics.addAll(faults);
    return faults.isEmpty();
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
                            format.formatWithUnit(used.from()),
                            format.formatWithUnit(used.to()),
                            axis.word(),
                            format.formatWithUnit(have.from()),
                            format.formatWithUnit(have.to())))
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
}
