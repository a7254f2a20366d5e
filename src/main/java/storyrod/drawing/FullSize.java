package storyrod.drawing;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.At;
import storyrod.geometry.Parallel;
import storyrod.piece.Mark;
import storyrod.piece.Piece;

/**
 * A full-size template. A part has one of its whole outline where
 *
 * <ul>
 *   <li>its outline or an opening has a curve or a slant, unless that only rounds the corners of a
 *       rectangle, or
 *   <li>its face is tapered.
 * </ul>
 *
 * A part without any of these has one for each row of four or more equal holes that its description
 * bores, unless another row begins as far from its end: a strip with the end and the edge from
 * which the row is set out. All else is quicker laid out from its drawing.
 *
 * @param name the part's mark, with a number if there are several
 * @param cuts lines to be cut
 * @param edges lines of the part that are there already, to lay the template against; on an
 *     outline, where the face that looks up ends at the short point of a bevel
 * @param holes holes to be bored
 * @param text what its sheets say of it
 */
public record FullSize(
    String name,
    Mark mark,
    List<TruePath> cuts,
    List<TruePath> edges,
    List<Hole> holes,
    TemplateText text) {
  public FullSize {
    cuts = List.copyOf(cuts);
    edges = List.copyOf(edges);
    holes = List.copyOf(holes);
  }

  /** A hole in the plane of the template, in mm. */
  public record Hole(At centre, double diameterMm) {
    /** Its rim. */
    TruePath rim() {
      return TruePath.circle(centre, diameterMm / 2);
    }
  }

  /** All templates of a piece, in the order of the marks. */
  public static List<FullSize> of(Piece piece) {
    TemplateShapes shapes = new TemplateShapes(piece, piece.description().words());
    return Parallel.map(piece.marks(), shapes::of).stream().flatMap(List::stream).toList();
  }

  /** Whether it is a strip for one row of holes, not the outline of a part. */
  public boolean isStrip() {
    return cuts.isEmpty();
  }

  /** Where the paper of a strip ends, but for the edges that it is laid to. */
  List<TruePath> freeSides() {
    if (!isStrip()) {
      return List.of();
    }
    Bounds all = Bounds.NONE;
    for (TruePath edge : edges) {
      all = all.with(edge.points().getFirst()).with(edge.points().getLast());
    }
    return all.sides().stream().filter(side -> edges.stream().noneMatch(side::isAlong)).toList();
  }

  /** All its lines. */
  List<TruePath> lines() {
    return Stream.of(cuts.stream(), edges.stream(), holes.stream().map(Hole::rim))
        .flatMap(each -> each)
        .toList();
  }

  /** The rectangle round all its lines. */
  Bounds bounds() {
    Bounds bounds = Bounds.NONE;
    for (TruePath path : lines()) {
      for (At at : path.points()) {
        bounds = bounds.with(at);
      }
    }
    return bounds;
  }

  FullSize mapped(UnaryOperator<At> move) {
    return new FullSize(
        name,
        mark,
        cuts.stream().map(path -> path.mapped(move)).toList(),
        edges.stream().map(path -> path.mapped(move)).toList(),
        holes.stream().map(h -> new Hole(move.apply(h.centre()), h.diameterMm())).toList(),
        text.mapped(move));
  }
}
