package storyrod.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import storyrod.build.ShowFaces;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.FullSize.Hole;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Segment;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Mark;
import storyrod.piece.Piece;
import storyrod.piece.Slanted;
import storyrod.words.Words;

/** Finds which parts of a piece have full-size templates, and takes their lines from the parts. */
final class TemplateShapes {
  private static final int ROW = 4;
  private static final double PAST_ROW_MM = 15;

  private final TemplateWords written;

  TemplateShapes(Piece piece, Words words) {
    this.written = new TemplateWords(piece, new ShowFaces(piece), words);
  }

  /** The templates of a mark; none where nothing of the part is left to lay out. */
  List<FullSize> of(Mark mark) {
    FlatPart flat = FlatPart.of(mark.shown());
    if (!isShaped(flat)) {
      return strips(mark, flat);
    }
    List<TruePath> outline = TrueOutline.of(flat);
    return outline.isEmpty() ? List.of() : List.of(shaped(mark, flat, outline));
  }

  private FullSize shaped(Mark mark, FlatPart flat, List<TruePath> outline) {
    List<Cut.Holes> seen =
        flat.cuts(Cut.Holes.class).stream().filter(TemplateShapes::isSeen).toList();
    List<Hole> holes = seen.stream().flatMap(each -> holes(flat, each)).toList();
    List<TruePath> bevels = FaceEnds.of(flat);
    return new FullSize(
        mark.mark(), mark, outline, bevels, holes, written.outline(mark, flat, seen, bevels));
  }

  private static boolean isShaped(FlatPart flat) {
    return flat.cuts(Cut.Shaped.class).stream().anyMatch(TemplateShapes::isShaped)
        || flat.cuts(Slanted.Slope.class).stream()
            .anyMatch(slope -> slope.kind() == Slanted.Slope.Kind.TAPER && slope.along() == Axis.Y);
  }

  private static boolean isShaped(Cut.Shaped shaped) {
    boolean plain =
        shaped.contour().arcs().isEmpty()
            && shaped.contour().segments().stream().allMatch(TemplateShapes::isSquare);
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

  /** A point of the flat part on the paper, from the part's top left corner. */
  static At at(FlatPart flat, Point point) {
    return new At(point.x().toMm(), flat.size(Axis.Z).minus(point.z()).toMm());
  }

  private List<FullSize> strips(Mark mark, FlatPart flat) {
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

  private FullSize strip(String name, Mark mark, FlatPart flat, Cut.Holes row) {
    List<Hole> holes = holes(flat, row).toList();
    Bounds reach = Bounds.NONE;
    for (Hole hole : holes) {
      reach = reach.with(hole.centre());
    }
    List<TruePath> edges = edges(flat, reach);
    return new FullSize(name, mark, List.of(), edges, holes, written.strip(mark, flat, row));
  }

  /** The nearer end and the nearer edge, each a little longer than the row needs. */
  private static List<TruePath> edges(FlatPart flat, Bounds reach) {
    double width = flat.size(Axis.X).toMm();
    double height = flat.size(Axis.Z).toMm();
    boolean right = width - reach.right() < reach.left();
    boolean low = height - reach.bottom() < reach.top();
    double endX = right ? width : 0;
    double edgeY = low ? height : 0;
    double farX = right ? reach.left() - PAST_ROW_MM : reach.right() + PAST_ROW_MM;
    double farY = low ? reach.top() - PAST_ROW_MM : reach.bottom() + PAST_ROW_MM;
    At corner = new At(endX, edgeY);
    return List.of(
        TruePath.line(new At(Math.clamp(farX, 0, width), edgeY), corner),
        TruePath.line(corner, new At(endX, Math.clamp(farY, 0, height))));
  }
}
