package storyrod.drawing;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.At;

/** Where a template is wood: inside its outline, or for a strip inside its rectangle. */
record TemplateBody(FullSize shape, Path2D area) {
  static TemplateBody of(FullSize shape) {
    Path2D area = new Path2D.Double(Path2D.WIND_EVEN_ODD);
    shape.cuts().forEach(path -> area.append(ring(path.points()), false));
    if (shape.isStrip()) {
      Bounds all = shape.bounds();
      area.append(new Rectangle2D.Double(all.left(), all.top(), all.width(), all.height()), false);
    }
    return new TemplateBody(shape, area);
  }

  static Path2D ring(List<At> points) {
    Path2D ring = new Path2D.Double();
    ring.moveTo(points.getFirst().x(), points.getFirst().y());
    points.forEach(at -> ring.lineTo(at.x(), at.y()));
    ring.closePath();
    return ring;
  }

  boolean contains(At at) {
    return area.contains(at.x(), at.y());
  }

  /** Whether a rectangle that no line meets lies inside. */
  boolean contains(Bounds room) {
    return Stream.of(
            new At(room.left(), room.top()),
            new At(room.right(), room.top()),
            new At(room.left(), room.bottom()),
            new At(room.right(), room.bottom()))
        .allMatch(this::contains);
  }

  /** The lines that bound the wood outwards, not round openings in it. */
  List<TruePath> outer() {
    return shape.isStrip()
        ? shape.edges()
        : shape.cuts().stream().filter(path -> !isOpening(path)).toList();
  }

  private boolean isOpening(TruePath path) {
    At at = path.stretches().getFirst().from();
    return shape.cuts().stream()
                .filter(other -> other != path)
                .filter(other -> ring(other.points()).contains(at.x(), at.y()))
                .count()
            % 2
        == 1;
  }
}
