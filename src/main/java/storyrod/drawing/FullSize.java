package storyrod.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.At;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Segment;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Mark;
import storyrod.piece.Piece;
import storyrod.piece.Slanted;

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
 * @param edges lines of the part that are there already, to lay the template against
 * @param holes holes to be bored
 */
public record FullSize(
    String name, Mark mark, List<TruePath> cuts, List<TruePath> edges, List<Hole> holes) {
  private static final int ROW = 4;
  private static final double PAST_ROW_MM = 15;

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
    return piece.marks().parallelStream().flatMap(mark -> of(mark).stream()).toList();
  }

  private static List<FullSize> of(Mark mark) {
    FlatPart flat = FlatPart.of(mark.shown());
    if (isShaped(flat)) {
      List<Hole> holes =
          flat.cuts(Cut.Holes.class).stream()
              .filter(FullSize::isSeen)
              .flatMap(h -> holes(flat, h))
              .toList();
      return List.of(new FullSize(mark.mark(), mark, TrueOutline.of(flat), List.of(), holes));
    }
    return strips(mark, flat);
  }

  private static boolean isShaped(FlatPart flat) {
    return flat.cuts(Cut.Shaped.class).stream().anyMatch(FullSize::isShaped)
        || flat.cuts(Slanted.Slope.class).stream()
            .anyMatch(slope -> slope.kind() == Slanted.Slope.Kind.TAPER && slope.along() == Axis.Y);
  }

  private static boolean isShaped(Cut.Shaped shaped) {
    boolean plain =
        shaped.contour().arcs().isEmpty()
            && shaped.contour().segments().stream().allMatch(FullSize::isSquare);
    return !plain && !new Curves(shaped.contour()).isLikeABox();
  }

  private static boolean isSquare(Segment segment) {
    return segment.from().x().equals(segment.to().x())
        || segment.from().z().equals(segment.to().z());
  }

  private static boolean isSeen(Cut.Holes holes) {
    return holes.from() == Face.FRONT || holes.from() == Face.BACK && holes.through();
  }

  private static Stream<Hole> holes(FlatPart flat, Cut.Holes holes) {
    return holes.centres().stream()
        .map(centre -> new Hole(at(flat, centre), holes.diameter().toMm()));
  }

  private static At at(FlatPart flat, Point point) {
    return new At(point.x().toMm(), flat.size(Axis.Z).minus(point.z()).toMm());
  }

  private static List<FullSize> strips(Mark mark, FlatPart flat) {
    Map<String, FullSize> strips = new LinkedHashMap<>();
    for (Cut.Holes row : flat.cuts(Cut.Holes.class)) {
      if (isSeen(row) && row.count() >= ROW && row.term().equals("hole")) {
        String name = strips.isEmpty() ? mark.mark() : mark.mark() + "-" + (strips.size() + 1);
        strips.putIfAbsent(key(flat, row), strip(name, mark, flat, row));
      }
    }
    return new ArrayList<>(strips.values());
  }

  /** Rows that begin alike from the nearer end are set out with one strip, from either edge. */
  private static String key(FlatPart flat, Cut.Holes row) {
    Length first = row.centres().getFirst().on(row.along());
    Length last = row.centres().getLast().on(row.along());
    Length end = first.min(last).min(flat.size(row.along()).minus(first.max(last)));
    return List.of(row.along(), end, row.step().abs(), row.count(), row.diameter()).toString();
  }

  private static FullSize strip(String name, Mark mark, FlatPart flat, Cut.Holes row) {
    List<Hole> holes = holes(flat, row).toList();
    Bounds reach = Bounds.NONE;
    for (Hole hole : holes) {
      reach = reach.with(hole.centre());
    }
    double width = flat.size(Axis.X).toMm();
    double height = flat.size(Axis.Z).toMm();
    boolean right = width - reach.right() < reach.left();
    boolean low = height - reach.bottom() < reach.top();
    double endX = right ? width : 0;
    double edgeY = low ? height : 0;
    double farX = right ? reach.left() - PAST_ROW_MM : reach.right() + PAST_ROW_MM;
    double farY = low ? reach.top() - PAST_ROW_MM : reach.bottom() + PAST_ROW_MM;
    At corner = new At(endX, edgeY);
    List<TruePath> edges =
        List.of(
            TruePath.line(new At(Math.clamp(farX, 0, width), edgeY), corner),
            TruePath.line(corner, new At(endX, Math.clamp(farY, 0, height))));
    return new FullSize(name, mark, List.of(), edges, holes);
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
        holes.stream().map(h -> new Hole(move.apply(h.centre()), h.diameterMm())).toList());
  }
}
