package storyrod.drawing;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.Note;
import storyrod.drawing.Equations.Known;
import storyrod.drawing.Equations.News;
import storyrod.drawing.Figures.Figure;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Contour;
import storyrod.geometry.Face;
import storyrod.measure.Length;

/** What a drawing's dimensions and notes say of the places drawn in it, as equations. */
final class Givens {

  private static final Pattern RADIUS =
      Pattern.compile("R (?:≈ )?(" + Figures.NUMBER + ")(?! roundover)(?:,|$)");

  /** By how much a line may be drawn off its place, in mm of wood. */
  private static final double DRAWN = 0.05;

  private final ReadSheet sheet;
  private final Tracing tracing;
  private final Figures figures;
  private final Equations equations = new Equations();
  private final List<String> faults = new ArrayList<>();
  private final List<Hooked> auxiliary = new ArrayList<>();

  /** Where dimensions end: the first of each axis is where its frame is laid. */
  private final Map<Axis, TreeSet<Double>> feet = new EnumMap<>(Axis.class);

  private final Map<String, Set<Face>> stretches = new HashMap<>();

  Givens(ReadSheet sheet, Tracing tracing, Figures figures) {
    this.sheet = sheet;
    this.tracing = tracing;
    this.figures = figures;
    for (Axis axis : Axis.values()) {
      feet.put(axis, new TreeSet<>());
    }
    sheet.dimensions.forEach(this::add);
    feet.forEach(this::lay);
    sheet.slants.forEach(this::add);
  }

  /** A slanted edge rises by its run over the slope that a detail's note gives it. */
  private void add(ReadSlant slant) {
    Face view = sheet.viewAt(slant.from()).orElseThrow();
    Map<Integer, Double> sum = new TreeMap<>();
    for (boolean alongX : new boolean[] {true, false}) {
      Axis axis = ReadSheet.axis(view, alongX);
      double one = sheet.paper(view, axis, slant.from());
      double other = sheet.paper(view, axis, slant.to());
      double times = alongX == slant.risesAlongX() ? slant.run() : -1;
      sum.merge(place(axis, Math.max(one, other)), times, Double::sum);
      sum.merge(place(axis, Math.min(one, other)), -times, Double::sum);
    }
    faults.addAll(slant.faults());
    note(sum, new Figure(0, 0), "slope 1:" + slant.run());
  }

  private int place(Axis axis, double paper) {
    return sheet.place(axis, paper).orElseThrow();
  }

  /** Lays the frame of an axis at the first place that is measured on it. */
  private void lay(Axis axis, TreeSet<Double> measured) {
    if (measured.isEmpty()) {
      faults.add("nothing is measured along " + axis);
      return;
    }
    int place = sheet.hooked(axis, measured.first(), tracing.scale()).orElseThrow();
    equations.add(Map.of(place, 1.0), drawnAt(axis, measured.first()), 0);
  }

  private double drawnAt(Axis axis, double paper) {
    return tracing.start(axis).toMm() + paper / tracing.scale();
  }

  /** Places whose figures say another thing than the drawing, which is to scale. */
  List<String> notToScale() {
    List<String> off = new ArrayList<>();
    for (Axis axis : Axis.values()) {
      boolean toScale = axis != Axis.X || sheet.breaks.isEmpty();
      sheet
          .places(axis)
          .forEach(
              (paper, place) ->
                  equations
                      .known(place)
                      .filter(known -> toScale)
                      .map(known -> Math.abs(known.mm() - drawnAt(axis, paper)) - known.offMm())
                      .filter(more -> more > DRAWN)
                      .ifPresent(more -> off.add(axis + " = " + paper + " on paper is off")));
    }
    return off;
  }

  List<String> faults() {
    return List.copyOf(faults);
  }

  /** Where a coordinate of the part lies by what the drawing says. */
  Known known(Axis axis, Length at) {
    return equations
        .known(tracing.place(axis, at))
        .orElseThrow(() -> new IllegalStateException(axis.word() + " = " + at + " is not given"));
  }

  boolean isDrawn(Axis axis, Length at) {
    return tracing.drawn(axis, at).isPresent();
  }

  boolean isKnown(Axis axis, Length at) {
    OptionalInt place = tracing.drawn(axis, at);
    return place.isPresent() && equations.known(place.getAsInt()).isPresent();
  }

  /** The radius that a note whose arrow touches a path gives for its arcs. */
  Optional<String> radius(Contour contour) {
    Box box = new Box(contour.extent(Axis.X), tracing.flat().box().y(), contour.extent(Axis.Z));
    for (Note note : sheet.notes) {
      Matcher radius = RADIUS.matcher(String.join(" ", note.lines()));
      if (radius.find() && tracing.away(Face.FRONT, note.tip(), box) < 1) {
        return Optional.of(radius.group(1));
      }
    }
    return Optional.empty();
  }

  /** Takes in what a note says, be it once more; what contradicts the dimensions is a fault. */
  void note(Map<Integer, Double> sum, Figure figure, String text) {
    if (equations.add(sum, figure.mm(), figure.halfStep()) == News.CONTRADICTS) {
      fault("a note's '" + text + "' contradicts a dimension");
    }
  }

  void fault(String text) {
    faults.add(text);
  }

  /** The lines that are seen but whose place nothing gives. */
  List<String> open() {
    List<String> open = new ArrayList<>();
    for (Axis axis : Axis.values()) {
      sheet
          .places(axis)
          .forEach(
              (paper, place) -> {
                if (sheet.isSeen(place) && equations.known(place).isEmpty()) {
                  open.add("the line at %s = %.2f on paper".formatted(axis.word(), paper));
                }
              });
    }
    return open;
  }

  /** A dimension in brackets with the sum of places that it is. */
  private record Hooked(Dimension dimension, Map<Integer, Double> sum) {}

  /** What stands in brackets says nothing new and agrees with what says it. */
  void addAuxiliary() {
    for (Hooked each : auxiliary) {
      String text = each.dimension.text();
      Figure figure = figures.total(text);
      switch (equations.add(each.sum, figure.mm(), figure.halfStep())) {
        case REPEATS -> {}
        case NEW -> faults.add("'" + text + "' is in brackets, but nothing else says it");
        case CONTRADICTS -> faults.add("'" + text + "' contradicts what else is said");
      }
    }
  }

  private void add(Dimension dimension) {
    Face view =
        sheet
            .viewAt(dimension.from())
            .orElseThrow(() -> new IllegalStateException("in no view: " + dimension.text()));
    Axis axis = ReadSheet.axis(view, dimension.alongX());
    double one = sheet.paper(view, axis, dimension.from());
    double other = sheet.paper(view, axis, dimension.to());
    OptionalInt from = sheet.hooked(axis, Math.min(one, other), tracing.scale());
    OptionalInt to = sheet.hooked(axis, Math.max(one, other), tracing.scale());
    if (from.isEmpty() || to.isEmpty()) {
      faults.add("'" + dimension.text() + "' on " + view + " hooks on nothing");
      return;
    }
    if (Figures.isAuxiliary(dimension.text())) {
      auxiliary.add(new Hooked(dimension, apart(from.getAsInt(), to.getAsInt())));
      return;
    }
    feet.get(axis).addAll(List.of(one, other));
    Figure figure = figures.total(dimension.text());
    News news =
        equations.add(apart(from.getAsInt(), to.getAsInt()), figure.mm(), figure.halfStep());
    if (news == News.CONTRADICTS) {
      faults.add("'" + dimension.text() + "' on " + view + " along " + axis + " " + news);
    }
    String stretch = axis + " " + from.getAsInt() + " " + to.getAsInt();
    Set<Face> before = stretches.computeIfAbsent(stretch, key -> EnumSet.noneOf(Face.class));
    boolean beside = axis != Axis.Y && (view == Face.FRONT || before.contains(Face.FRONT));
    if (before.contains(view) || beside && !before.isEmpty()) {
      faults.add("'" + dimension.text() + "' on " + view + " is given twice");
    }
    before.add(view);
    Figures.steps(dimension.text())
        .ifPresent(
            steps ->
                divide(axis, new double[] {Math.min(one, other), Math.max(one, other)}, steps));
  }

  static Map<Integer, Double> apart(int from, int to) {
    return Map.of(from, -1.0, to, 1.0);
  }

  /** What is drawn between the ends of a chain, at equal steps on the paper, is so in the wood. */
  private void divide(Axis axis, double[] ends, int steps) {
    int from = sheet.place(axis, ends[0]).orElseThrow();
    int to = sheet.place(axis, ends[1]).orElseThrow();
    for (int i = 1; i < steps; i++) {
      double share = i / (double) steps;
      sheet
          .place(axis, ends[0] + share * (ends[1] - ends[0]))
          .ifPresent(place -> equations.add(Map.of(from, share - 1, to, -share, place, 1.0), 0, 0));
    }
  }
}
