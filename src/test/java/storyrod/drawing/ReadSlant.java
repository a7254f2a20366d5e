package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Note;
import storyrod.drawing.Drawing.Role;

/**
 * A slanted edge as somebody reads it: between two corners, and as steep as a note says whose arrow
 * touches it.
 *
 * @param run how far it goes for a rise of one: 7 for "slope 1:7"
 * @param degrees the angle that the note gives beside it
 */
record ReadSlant(At from, At to, double run, double degrees) {
  private static final Pattern SLOPE =
      Pattern.compile("slope 1:(\\d+(?:\\.\\d+)?) \\((\\d+\\.\\d)°\\)");

  /** By how much print may have rounded a slope and an angle to a tenth. */
  private static final double HALF_TENTH = 0.0501;

  /** The edges that bear a slope; a note that touches none is an error. */
  static List<ReadSlant> of(List<Element> elements) {
    List<List<At>> edges =
        elements.stream()
            .flatMap(each -> each instanceof Line line ? Stream.of(line) : Stream.empty())
            .filter(line -> line.role() == Role.VISIBLE || line.role() == Role.HIDDEN)
            .map(Line::points)
            .flatMap(ReadSlant::stretches)
            .filter(ReadSlant::isSlanted)
            .toList();
    return elements.stream()
        .flatMap(each -> each instanceof Note note ? Stream.of(note) : Stream.empty())
        .map(note -> slant(note, edges))
        .toList();
  }

  private static ReadSlant slant(Note note, List<List<At>> edges) {
    String text = String.join(" ", note.lines());
    Matcher said = SLOPE.matcher(text);
    List<At> edge =
        edges.stream()
            .min(Comparator.comparingDouble(each -> away(note.tip(), each)))
            .orElse(List.of());
    if (!said.matches() || edge.isEmpty() || away(note.tip(), edge) > ReadSheet.IN_LINE) {
      throw new IllegalStateException("'" + text + "' points at no slanted edge");
    }
    double run = Double.parseDouble(said.group(1));
    double degrees = Double.parseDouble(said.group(2));
    return new ReadSlant(edge.getFirst(), edge.getLast(), run, degrees);
  }

  private static double away(At at, List<At> edge) {
    At from = edge.getFirst();
    At to = edge.getLast();
    return at.distance(from) + at.distance(to) - from.distance(to);
  }

  static Stream<List<At>> stretches(List<At> points) {
    return IntStream.range(1, points.size())
        .mapToObj(i -> List.of(points.get(i - 1), points.get(i)));
  }

  static boolean isSlanted(List<At> edge) {
    At from = edge.getFirst();
    At to = edge.getLast();
    return !ReadSheet.near(from.x(), to.x()) && !ReadSheet.near(from.y(), to.y());
  }

  /** Where slanted edges end at another edge, and are not merely broken off. */
  static List<At> corners(List<List<At>> edges) {
    List<At> corners = new ArrayList<>();
    for (List<At> edge : edges) {
      if (isSlanted(edge)) {
        edge.stream()
            .filter(at -> edges.stream().anyMatch(other -> other != edge && ends(other, at)))
            .forEach(corners::add);
      }
    }
    return corners;
  }

  private static boolean ends(List<At> edge, At at) {
    return edge.stream().anyMatch(each -> each.distance(at) < ReadSheet.IN_LINE);
  }

  ReadSlant moved(UnaryOperator<At> way) {
    return new ReadSlant(way.apply(from), way.apply(to), run, degrees);
  }

  /** Whether it rises along the paper's x and runs along its y. */
  boolean risesAlongX() {
    return Math.abs(from.x() - to.x()) < Math.abs(from.y() - to.y());
  }

  /** What of the note is not so by the other half of it or as the edge is drawn. */
  List<String> faults() {
    double across = Math.abs(from.x() - to.x());
    double down = Math.abs(from.y() - to.y());
    double drawn = Math.max(across, down) / Math.min(across, down);
    List<String> faults = new ArrayList<>();
    if (Math.abs(drawn - run) > HALF_TENTH) {
      faults.add("slope 1:" + run + " is drawn 1:" + drawn);
    }
    if (Math.abs(Math.toDegrees(Math.atan(1 / run)) - degrees) > HALF_TENTH) {
      faults.add("slope 1:" + run + " is not " + degrees + "°");
    }
    return faults;
  }
}
