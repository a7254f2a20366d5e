package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import storyrod.drawing.CutNotes.CutNote;
import storyrod.geometry.Axis;
import storyrod.geometry.Edge;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.geometry.Segment.Arc;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Cut;
import storyrod.words.Words;

/** Notes on curves: the radius of each arc, and which edges are rounded over. */
final class CurveNotes {
  private static final double EXACT_MM = 0.02;

  private final FlatPart flat;
  private final LengthFormat format;
  private final Words words;
  private final List<CutNote> notes = new ArrayList<>();

  private CurveNotes(FlatPart flat, LengthFormat format, Words words) {
    this.flat = flat;
    this.format = format;
    this.words = words;
  }

  static List<CutNote> of(FlatPart flat, LengthFormat format, Words words) {
    CurveNotes curves = new CurveNotes(flat, format, words);
    for (int i = 0; i < flat.cuts().size(); i++) {
      if (flat.cuts().get(i) instanceof Cut.Shaped shaped) {
        curves.add(shaped);
      } else if (flat.cuts().get(i) instanceof Cut.Roundover roundover) {
        curves.add(roundover, (Cut.Roundover) flat.part().cuts().get(i));
      }
    }
    return curves.notes;
  }

  private void add(Cut.Shaped shaped) {
    Curves curves = new Curves(shaped.contour());
    Map<String, List<Point>> byRadius = new LinkedHashMap<>();
    for (Arc arc : shaped.contour().arcs()) {
      byRadius
          .computeIfAbsent(radius(shaped.contour().flat(arc).radius()), key -> new ArrayList<>())
          .add(curves.middle(arc));
    }
    if (shaped.inside()) {
      addOpening(shaped, byRadius);
    } else {
      byRadius.forEach(
          (radius, tips) ->
              notes.add(new CutNote(Face.FRONT, counted(radius, tips.size()), tips, 0)));
    }
  }

  private String counted(String said, int count) {
    return count == 1 ? said : words.say("part.times", count, said);
  }

  /** A radius; where print rounds it, it says so. */
  private String radius(double mm) {
    Length exact = Length.nearest(mm);
    boolean rounded = Math.abs(format.rounded(exact).toMm() - mm) > EXACT_MM;
    return words.say(rounded ? "part.radius-about" : "part.radius", format.format(exact));
  }

  private void addOpening(Cut.Shaped shaped, Map<String, List<Point>> byRadius) {
    String term = new CutTerms(words).of(shaped, 1);
    List<Point> tips = byRadius.values().stream().flatMap(List::stream).toList();
    String said =
        byRadius.isEmpty()
            ? term
            : words.say("part.curved." + shaped.term(), term, String.join(", ", byRadius.keySet()));
    List<Point> all = tips.isEmpty() ? corners(shaped) : tips;
    notes.add(new CutNote(Face.FRONT, words.say("part.through", said), all, 0));
  }

  private static List<Point> corners(Cut.Shaped shaped) {
    return shaped.contour().segments().stream().map(each -> each.from()).toList();
  }

  private void add(Cut.Roundover roundover, Cut.Roundover named) {
    String radius = words.say("part.roundover", format.forBits().format(roundover.radius()));
    String on = words.say("part.face." + named.from().word());
    String said =
        roundover.around()
            ? words.say("part.roundover-around", radius, on)
            : words.say("part.roundover-edges", radius, edges(named));
    List<Point> tips = roundover.edges().stream().map(this::tip).toList();
    notes.add(new CutNote(Face.FRONT, said, tips, 0));
  }

  private String edges(Cut.Roundover named) {
    boolean shared = named.edges().stream().allMatch(edge -> edge.touches(named.from()));
    String each =
        named.edges().stream()
            .map(edge -> shared ? word(edge.beside(named.from())) : word(edge))
            .collect(Collectors.joining(", "));
    return shared
        ? words.say("part.edges-of", each, words.say("part.face." + named.from().word()))
        : each;
  }

  private String word(Face face) {
    return words.say("edge." + face.word());
  }

  private String word(Edge edge) {
    return words.say("part.edge-between", word(edge.one()), word(edge.other()));
  }

  /** The middle of an edge in the front view; on a curved outline, the point next to it. */
  private Point tip(Edge edge) {
    Point middle = new Point(middle(Axis.X), middle(Axis.Y), middle(Axis.Z));
    for (Face face : List.of(edge.one(), edge.other())) {
      middle = middle.with(face.axis(), flat.box().at(face));
    }
    Point wanted = middle;
    return flat.cuts(Cut.Shaped.class).stream()
        .filter(shaped -> !shaped.inside())
        .flatMap(outline -> onPath(outline).stream())
        .min(Comparator.comparingDouble(at -> at.toMm().distance(wanted.toMm())))
        .orElse(wanted);
  }

  private static List<Point> onPath(Cut.Shaped outline) {
    Curves curves = new Curves(outline.contour());
    return outline.contour().segments().stream()
        .map(each -> each instanceof Arc arc ? curves.middle(arc) : halfway(each.from(), each.to()))
        .toList();
  }

  private static Point halfway(Point one, Point two) {
    return new Point(half(one.x(), two.x()), half(one.y(), two.y()), half(one.z(), two.z()));
  }

  private static Length half(Length one, Length two) {
    return one.plus(two).dividedBy(2, java.math.RoundingMode.FLOOR);
  }

  private Length middle(Axis axis) {
    Range range = flat.box().on(axis);
    return half(range.from(), range.to());
  }
}
