package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Ellipse;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Note;
import storyrod.drawing.Drawing.Role;
import storyrod.words.Words;

/**
 * An enlarged detail as somebody reads it: what is drawn in it is drawn, smaller, in the ring that
 * bears its name, and its dimensions hold there.
 */
final class ReadDetail {
  /** How near to a ring a leader ends that names it, in mm. */
  private static final double TOUCHES = 0.2;

  private final Group detail;
  private final double larger;
  private final At ring;
  private final List<Element> views;

  /**
   * Finds a detail's ring.
   *
   * @param views what the drawing shows beside its details
   * @param factor the drawing's own scale
   */
  ReadDetail(Group detail, List<Element> views, double factor) {
    this.detail = detail;
    this.larger = Clean.detailFactor(detail) / factor;
    this.ring = ring(views);
    this.views = views;
  }

  /** Whether an element is a ring round what a detail shows. */
  static boolean isRing(Element element) {
    return element instanceof Ellipse round && round.role() == Role.DIMENSION;
  }

  /** Whether a note names the ring of a detail. */
  static boolean names(Note note, Group detail) {
    String name = Words.ENGLISH.say("part.detail-at", Clean.detailName(detail));
    return String.join(" ", note.lines()).equals(name);
  }

  private At ring(List<Element> views) {
    List<Note> names =
        views.stream()
            .flatMap(each -> each instanceof Note note ? Stream.of(note) : Stream.empty())
            .filter(note -> names(note, detail))
            .toList();
    return views.stream()
        .filter(ReadDetail::isRing)
        .map(Ellipse.class::cast)
        .filter(round -> names.stream().anyMatch(note -> ends(note, round)))
        .map(Ellipse::centre)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no ring bears " + Clean.detailName(detail)));
  }

  private static boolean ends(Note note, Ellipse round) {
    return Math.abs(note.tip().distance(round.centre()) - round.rx()) < TOUCHES;
  }

  At ring() {
    return ring;
  }

  /** Its dimensions, each between the places of the view that it measures. */
  List<Dimension> dimensions(Bounds view) {
    Shift across = shift(true, view);
    Shift down = shift(false, view);
    List<Dimension> dimensions = new ArrayList<>();
    for (Dimension each : Clean.dimensions(detail.elements())) {
      Shift along = each.alongX() ? across : down;
      along.check(each);
      dimensions.add(
          new Dimension(
              new At(across.in(each.from().x()), down.in(each.from().y())),
              new At(across.in(each.to().x()), down.in(each.to().y())),
              each.alongX(),
              (each.alongX() ? down : across).in(each.line()),
              each.text(),
              each.measure()));
    }
    return dimensions;
  }

  /** The slanted edges of which its notes tell the slope, as they lie in the view. */
  List<ReadSlant> slants(Bounds view) {
    Shift across = shift(true, view);
    Shift down = shift(false, view);
    return ReadSlant.of(Clean.flat(detail.elements())).stream()
        .map(each -> each.moved(at -> new At(across.in(at.x()), down.in(at.y()))))
        .toList();
  }

  /** How places of a detail lie in its view: in line with one place there, and so much nearer. */
  private record Shift(double larger, double from, double to, List<Double> lines) {
    double in(double detail) {
      return to + (detail - from) / larger;
    }

    /** A dimension ends at lines that its detail shows. */
    void check(Dimension dimension) {
      boolean alongX = dimension.alongX();
      for (At at : List.of(dimension.from(), dimension.to())) {
        double end = alongX ? at.x() : at.y();
        if (lines.stream().noneMatch(line -> ReadSheet.near(line, end))) {
          throw new IllegalStateException("'" + dimension.text() + "' hooks on nothing");
        }
      }
    }
  }

  /**
   * Lays a detail on its view so that all its lines lie on lines there; where that can be done in
   * several ways, with its middle the nearest to that of the ring.
   */
  private Shift shift(boolean alongX, Bounds view) {
    List<Double> own = lines(detail.elements(), alongX, Bounds.ALL);
    List<Double> others = lines(views, alongX, view.widened(ReadSheet.IN_LINE));
    double middle = alongX ? ring.x() : ring.y();
    double shown = middle(alongX);
    if (own.isEmpty()) {
      return new Shift(larger, shown, middle, own);
    }
    return others.stream()
        .map(other -> new Shift(larger, own.getFirst(), other, own))
        .filter(shift -> shift.lines.stream().allMatch(line -> isIn(others, shift.in(line))))
        .min(Comparator.comparingDouble(shift -> Math.abs(shift.in(shown) - middle)))
        .orElseThrow(() -> new IllegalStateException(detail.name() + " shows other lines"));
  }

  private static boolean isIn(List<Double> lines, double at) {
    return lines.stream().anyMatch(each -> ReadSheet.near(each, at));
  }

  /** The middle of what the detail shows. */
  private double middle(boolean alongX) {
    Bounds bounds = Bounds.NONE;
    for (Element element : Clean.flat(detail.elements())) {
      if (element instanceof Line line && isEdge(line)) {
        bounds = bounds.with(Bounds.around(line.points()));
      }
    }
    return alongX ? bounds.middle().x() : bounds.middle().y();
  }

  private static boolean isEdge(Line line) {
    return line.role() == Role.VISIBLE || line.role() == Role.HIDDEN;
  }

  /** Where straight lines stand that run across a direction, and where slanted ones end. */
  private static List<Double> lines(List<Element> elements, boolean alongX, Bounds in) {
    List<List<At>> edges =
        elements.stream()
            .flatMap(
                each -> each instanceof Line line && isEdge(line) ? Stream.of(line) : Stream.of())
            .map(Line::points)
            .filter(points -> in.contains(points.getFirst()))
            .flatMap(ReadSlant::stretches)
            .toList();
    Stream<At> across = edges.stream().filter(edge -> runsAcross(edge, alongX)).map(List::getFirst);
    return Stream.concat(across, ReadSlant.corners(edges).stream())
        .map(at -> alongX ? at.x() : at.y())
        .sorted()
        .toList();
  }

  private static boolean runsAcross(List<At> edge, boolean alongX) {
    At one = edge.getFirst();
    At other = edge.getLast();
    return ReadSheet.near(alongX ? one.x() - other.x() : one.y() - other.y(), 0);
  }
}
