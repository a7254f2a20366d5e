package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import storyrod.drawing.Drawing.At;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Fineness;
import storyrod.measure.Length;
import storyrod.piece.Carving;
import storyrod.piece.Cut;
import storyrod.piece.Slots;

/**
 * Finds on which line of a drawing a corner of the part lies. Only that: no size comes from here.
 * Where a view is broken, each piece of it is to scale, and what lies in it follows in order.
 */
final class Tracing {
  private final FlatPart flat;
  private final ReadSheet sheet;
  private final double scale;
  private final Map<Axis, Length> start = new EnumMap<>(Axis.class);
  private final List<Piece> pieces = new ArrayList<>();

  /** A piece of the front view between two breaks: where on paper, and by how much it is moved. */
  private record Piece(double from, double to, double shift) {}

  /** A corner of the part lies on no line of the drawing. */
  static final class NotDrawn extends RuntimeException {
    private static final long serialVersionUID = 1;

    NotDrawn(Axis axis, Length at) {
      super("nothing is drawn at " + axis.word() + " = " + at);
    }
  }

  Tracing(FlatPart flat, ReadSheet sheet, double scale) {
    Box bounds = Carving.of(flat.box(), flat.cuts(), Fineness.DRAWN).bounds().orElseThrow();
    for (Axis axis : Axis.values()) {
      start.put(axis, bounds.on(axis).from());
    }
    double whole = bounds.size(Axis.X).toMm() * scale;
    this.flat = flat;
    this.sheet = sheet;
    this.scale = scale;
    List<Double> ends = new ArrayList<>(List.of(0.0));
    ends.addAll(sheet.breaks);
    ends.add(sheet.front().width());
    TreeSet<Length> features = features();
    for (int i = 0; i + 1 < ends.size(); i += 2) {
      double from = ends.get(i);
      double to = ends.get(i + 1);
      boolean last = i > 0 && i + 2 == ends.size();
      double shift = last ? whole - to : shift(from, to, features);
      pieces.add(new Piece(from, to, shift));
    }
  }

  private double shift(double from, double to, TreeSet<Length> features) {
    if (pieces.isEmpty()) {
      return 0;
    }
    double done = pieces.getLast().to + pieces.getLast().shift;
    List<Double> next =
        features.stream().map(at -> at.toMm() * scale).filter(at -> at > done).limit(9).toList();
    return sheet.places(Axis.X).subMap(from, to).keySet().stream()
        .flatMap(drawn -> next.stream().map(at -> at - drawn))
        .max(Comparator.comparingLong(shift -> inLine(shift, from, to, features)))
        .orElse(0.0);
  }

  /** How many of the part's corners fall on drawn lines if a piece is moved so far. */
  private long inLine(double shift, double from, double to, TreeSet<Length> features) {
    return features.stream()
        .mapToDouble(at -> at.toMm() * scale - shift)
        .filter(at -> at > from && at < to)
        .filter(at -> sheet.place(Axis.X, at).stream().anyMatch(sheet::isFirm))
        .count();
  }

  double scale() {
    return scale;
  }

  private TreeSet<Length> features() {
    List<Cut> others = flat.cuts().stream().filter(cut -> !(cut instanceof Slots)).toList();
    TreeSet<Length> features = Features.of(flat.with(others));
    flat.cuts(Slots.class).forEach(slots -> slots.centres().forEach(at -> features.add(at.x())));
    return features;
  }

  /** Where on the paper, from the end, edge or face, a coordinate of the part is drawn. */
  double paper(Axis axis, Length at) {
    double to = at.minus(start.get(axis)).toMm() * scale;
    return axis != Axis.X ? to : along(to);
  }

  private double along(double to) {
    for (Piece piece : pieces) {
      if (to - piece.shift < piece.to + ReadSheet.IN_LINE) {
        return to - piece.shift;
      }
    }
    return to - pieces.getLast().shift;
  }

  OptionalInt drawn(Axis axis, Length at) {
    return sheet.hooked(axis, paper(axis, at), scale);
  }

  /** Where in its frame the part begins on an axis. */
  Length start(Axis axis) {
    return start.get(axis);
  }

  /** A place that may lie beyond what is left of the part: where two of its lines would meet. */
  int beyond(Axis axis, Length at) {
    return drawn(axis, at).orElseGet(() -> sheet.added(axis, paper(axis, at)));
  }

  int place(Axis axis, Length at) {
    return drawn(axis, at).orElseThrow(() -> new NotDrawn(axis, at));
  }

  /** How far a point of a view lies from what a box covers there, in mm of paper. */
  double away(Face view, At point, Box box) {
    double sum = 0;
    for (Axis axis : DimensionSides.inPlane(view)) {
      double at = sheet.paper(view, axis, point);
      double low = paper(axis, box.on(axis).from());
      double high = paper(axis, box.on(axis).to());
      double off = Math.max(0, Math.max(low - at, at - high));
      sum += off * off;
    }
    return Math.sqrt(sum);
  }

  FlatPart flat() {
    return flat;
  }

  Optional<Face> viewAt(At point) {
    return sheet.views.entrySet().stream()
        .filter(each -> each.getValue().widened(0.5).contains(point))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  List<Cut> cuts() {
    return flat.cuts();
  }
}
