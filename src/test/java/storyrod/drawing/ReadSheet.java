package storyrod.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Ellipse;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Note;
import storyrod.drawing.Drawing.Role;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;

/**
 * A part's drawing as somebody reads it: its views in third angle, and the places that are drawn in
 * them, each one unknown. What is drawn in line is one place.
 */
final class ReadSheet {
  /** Nearer on the paper than this, in mm, two lines lie in line. */
  static final double IN_LINE = 2e-3;

  /** What a break leaves open between two pieces of a view, in mm, with some room. */
  private static final double BREAK = 1.1;

  /** By how much the chords of a drawn arc fall short of its top, in mm of wood at most. */
  private static final double CHORD = 0.011;

  private static final int ZIGZAG = 6;

  /** What marks a place, the plainest last: a straight seen edge has to be set out by itself. */
  private enum Drawn {
    HIDDEN,
    MIDDLE,
    EDGE
  }

  final Map<Face, Bounds> views = new EnumMap<>(Face.class);
  final List<Dimension> dimensions = new ArrayList<>();
  final List<Note> notes = new ArrayList<>();
  final List<ReadSlant> slants = new ArrayList<>();
  final TreeSet<Double> breaks = new TreeSet<>();
  private final Map<Axis, TreeMap<Double, Integer>> places = new EnumMap<>(Axis.class);
  private final Map<Integer, Drawn> drawnAs = new HashMap<>();
  private int count = 0;

  ReadSheet(Drawing drawing) {
    List<Element> elements = beside(drawing, Clean.details(drawing).toList());
    for (Axis axis : Axis.values()) {
      places.put(axis, new TreeMap<>());
    }
    findViews(elements);
    elements.forEach(this::findBreak);
    elements.forEach(this::read);
    Clean.details(drawing)
        .map(each -> new ReadDetail(each, elements, drawing.scale().orElseThrow().factor()))
        .forEach(this::read);
    notes.removeIf(note -> Clean.details(drawing).anyMatch(it -> ReadDetail.names(note, it)));
  }

  private void read(ReadDetail detail) {
    Bounds view = views.get(ringed(detail));
    dimensions.addAll(detail.dimensions(view));
    slants.addAll(detail.slants(view));
  }

  /** What stands beside the details. */
  private static List<Element> beside(Drawing drawing, List<Group> details) {
    Set<Element> others = Collections.newSetFromMap(new IdentityHashMap<>());
    details.forEach(each -> others.addAll(Clean.flat(each.elements())));
    return Clean.flat(drawing.elements()).stream().filter(each -> !others.contains(each)).toList();
  }

  private Face ringed(ReadDetail detail) {
    return viewAt(detail.ring())
        .orElseThrow(() -> new IllegalStateException("the ring of a detail lies in no view"));
  }

  /** The first area is the face's; what lies beside or below it in line are its edges. */
  private void findViews(List<Element> elements) {
    List<Bounds> clusters = new ArrayList<>();
    for (Element element : elements) {
      if (element instanceof Area area) {
        Bounds bounds = Bounds.NONE;
        for (At at : area.rings().getFirst()) {
          bounds = bounds.with(at);
        }
        join(bounds, clusters);
      }
    }
    Bounds front = clusters.getFirst();
    views.put(Face.FRONT, front);
    for (Bounds each : clusters.subList(1, clusters.size())) {
      boolean level = near(each.top(), front.top()) && near(each.bottom(), front.bottom());
      boolean inLine = near(each.left(), front.left()) && near(each.right(), front.right());
      if (level) {
        views.put(each.left() > front.right() ? Face.RIGHT : Face.LEFT, each);
      } else if (inLine) {
        views.put(each.top() > front.bottom() ? Face.BOTTOM : Face.TOP, each);
      }
    }
  }

  private static void join(Bounds bounds, List<Bounds> clusters) {
    for (int i = 0; i < clusters.size(); i++) {
      Bounds other = clusters.get(i);
      boolean meets =
          bounds.left() - BREAK < other.right() + BREAK
              && other.left() - BREAK < bounds.right() + BREAK
              && bounds.top() < other.bottom() + IN_LINE
              && other.top() < bounds.bottom() + IN_LINE;
      if (meets) {
        clusters.set(i, other.with(bounds));
        return;
      }
    }
    clusters.add(bounds);
  }

  static boolean near(double one, double other) {
    return Math.abs(one - other) < IN_LINE;
  }

  private void findBreak(Element element) {
    boolean zigzag =
        element instanceof Line line
            && line.role() == Role.DIMENSION
            && line.points().size() == ZIGZAG;
    if (zigzag) {
      breaks.add(
          Math.round((((Line) element).points().getFirst().x() - front().left()) * 1e6) / 1e6);
    }
  }

  Bounds front() {
    return views.get(Face.FRONT);
  }

  private void read(Element element) {
    switch (element) {
      case Dimension dimension -> dimensions.add(dimension);
      case Note note -> notes.add(note);
      case Ellipse round when !ReadDetail.isRing(round) ->
          viewAt(round.centre()).ifPresent(view -> addBoth(view, round.centre(), Drawn.MIDDLE));
      case Line line -> {
        if (line.role() == Role.VISIBLE || line.role() == Role.HIDDEN) {
          addLine(line);
        } else if (line.role() == Role.CENTRE) {
          addArm(line.points().getFirst(), line.points().getLast());
        }
      }
      default -> {}
    }
  }

  /** A seen line along an axis has to be set out; ends of slanted and curved ones follow. */
  private void addLine(Line line) {
    At from = line.points().getFirst();
    At to = line.points().getLast();
    boolean alone = line.role() == Role.VISIBLE && line.points().size() == 2;
    Optional<Face> view = viewAt(from);
    if (view.isPresent()) {
      Drawn ends = line.role() == Role.VISIBLE ? Drawn.MIDDLE : Drawn.HIDDEN;
      line.points().forEach(at -> addBoth(view.get(), at, ends));
      if (alone && near(from.x(), to.x())) {
        add(view.get(), axis(view.get(), true), from, Drawn.EDGE);
      } else if (alone && near(from.y(), to.y())) {
        add(view.get(), axis(view.get(), false), from, Drawn.EDGE);
      }
    }
  }

  /** An arm of a cross says where the middle lies that it runs through, on the other axis. */
  private void addArm(At from, At to) {
    viewAt(from)
        .ifPresent(view -> add(view, axis(view, near(from.x(), to.x())), from, Drawn.MIDDLE));
  }

  private void addBoth(Face view, At at, Drawn drawn) {
    DimensionSides.inPlane(view).forEach(axis -> add(view, axis, at, drawn));
  }

  private void add(Face view, Axis axis, At at, Drawn drawn) {
    double paper = paper(view, axis, at);
    if (axis != Axis.X || !atBreak(paper)) {
      int place = place(axis, paper).orElseGet(() -> added(axis, paper));
      drawnAs.merge(place, drawn, (one, other) -> one.compareTo(other) > 0 ? one : other);
    }
  }

  private boolean atBreak(double paper) {
    return breaks.stream().anyMatch(each -> near(each, paper));
  }

  int added(Axis axis, double paper) {
    places.get(axis).put(paper, count);
    return count++;
  }

  /** The view in which a point lies. */
  Optional<Face> viewAt(At at) {
    return views.entrySet().stream()
        .filter(each -> each.getValue().widened(CHORD).contains(at))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  /** How far from the part's left end, lower edge or shown face a point lies, in mm of paper. */
  double paper(Face view, Axis axis, At at) {
    Bounds bounds = views.get(view);
    return switch (axis) {
      case X -> at.x() - front().left();
      case Z -> front().bottom() - at.y();
      case Y ->
          switch (view) {
            case RIGHT -> at.x() - bounds.left();
            case LEFT -> bounds.right() - at.x();
            case TOP -> bounds.bottom() - at.y();
            case BOTTOM -> at.y() - bounds.top();
            case FRONT, BACK -> throw new IllegalStateException("a face shows no thickness");
          };
    };
  }

  /** The axis that runs across the paper in a view. */
  static Axis across(Face view) {
    return view.axis() == Axis.X ? Axis.Y : Axis.X;
  }

  static Axis axis(Face view, boolean alongX) {
    return alongX ? across(view) : Axis.other(view.axis(), across(view));
  }

  /** The place that is drawn so far from the part's end, edge or face. */
  OptionalInt place(Axis axis, double paper) {
    return places.get(axis).subMap(paper - IN_LINE, paper + IN_LINE).values().stream()
        .mapToInt(each -> each)
        .findFirst();
  }

  /** The place at which a dimension ends: on what is drawn, or at the true top of drawn chords. */
  OptionalInt hooked(Axis axis, double paper, double scale) {
    double reach = Math.max(IN_LINE, CHORD * scale);
    return places.get(axis).subMap(paper - reach, paper + reach).entrySet().stream()
        .min(Comparator.comparingDouble(each -> Math.abs(each.getKey() - paper)))
        .map(each -> OptionalInt.of(each.getValue()))
        .orElse(OptionalInt.empty());
  }

  /** All places on an axis, by how far they are drawn from the part's end, edge or face. */
  TreeMap<Double, Integer> places(Axis axis) {
    return places.get(axis);
  }

  /** Whether a straight seen line ends there, which has to be set out by itself. */
  boolean isSeen(int place) {
    return drawnAs.get(place) == Drawn.EDGE;
  }

  /** Whether more than hidden lines end there. */
  boolean isFirm(int place) {
    return drawnAs.getOrDefault(place, Drawn.HIDDEN) != Drawn.HIDDEN;
  }
}
