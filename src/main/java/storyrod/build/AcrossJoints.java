package storyrod.build;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Edge;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.Slanted;

/**
 * Finds the edges that are shaped when their parts are together: rounded or chamfered alike on both
 * sides of a joint at which they meet. Shaped one by one, they would show a step there.
 */
public final class AcrossJoints {
  private final Piece piece;
  private final Nesting nesting;
  private final Map<String, String> levels = new LinkedHashMap<>();
  private final Map<String, List<Cut>> cuts = new LinkedHashMap<>();

  public AcrossJoints(Piece piece) {
    this.piece = piece;
    this.nesting = Nesting.of(piece);
    piece.joints().stream().filter(Joint::holding).forEach(this::look);
  }

  /** The sub-assembly, or the piece, that has to be together before a part's edges are shaped. */
  public Optional<String> level(String part) {
    return Optional.ofNullable(levels.get(part));
  }

  boolean isShapedLater(Part part, Cut cut) {
    return cuts.getOrDefault(part.name(), List.of()).contains(cut);
  }

  private void look(Joint joint) {
    Part first = piece.part(joint.first());
    Part second = piece.part(joint.second());
    for (Cut one : first.cuts()) {
      for (Cut other : second.cuts()) {
        if (isOneShape(first, one, second, other)) {
          note(first, one, joint);
          note(second, other, joint);
        }
      }
    }
  }

  private void note(Part part, Cut cut, Joint joint) {
    cuts.computeIfAbsent(part.name(), key -> new ArrayList<>()).add(cut);
    levels.merge(part.name(), level(joint), (one, other) -> nesting.isIn(one, other) ? other : one);
  }

  /** The innermost sub-assembly around both parts of a joint. */
  private String level(Joint joint) {
    return nesting.around(joint.first()).stream()
        .filter(unit -> !unit.equals(joint.first()) && nesting.isIn(joint.second(), unit))
        .findFirst()
        .orElse(Nesting.PIECE);
  }

  private static boolean isOneShape(Part first, Cut one, Part second, Cut other) {
    return !edges(one).isEmpty()
        && CutKind.of(first, one).equals(CutKind.of(second, other))
        && edges(one).stream()
            .map(edge -> line(first, edge))
            .anyMatch(
                line -> edges(other).stream().anyMatch(edge -> touch(line, line(second, edge))));
  }

  private static List<Edge> edges(Cut cut) {
    if (cut instanceof Cut.Roundover roundover) {
      return roundover.edges();
    }
    boolean isChamfer =
        cut instanceof Slanted.Slope slope && slope.kind() == Slanted.Slope.Kind.CHAMFER;
    return isChamfer ? List.of(edge((Slanted.Slope) cut)) : List.of();
  }

  private static Edge edge(Slanted.Slope chamfer) {
    return new Edge(chamfer.from(), chamfer.towards());
  }

  private static Box line(Part part, Edge edge) {
    Box line = part.box();
    for (Face face : List.of(edge.one(), edge.other())) {
      line = line.with(face.axis(), new Range(part.box().at(face), part.box().at(face)));
    }
    return line;
  }

  private static boolean touch(Box one, Box other) {
    return Arrays.stream(Axis.values()).allMatch(axis -> touch(one.on(axis), other.on(axis)));
  }

  private static boolean touch(Range one, Range other) {
    return !starts(one, other).isLongerThan(ends(one, other));
  }

  private static Length starts(Range one, Range other) {
    return Stream.of(one.from(), other.from()).max(Length::compareTo).orElseThrow();
  }

  private static Length ends(Range one, Range other) {
    return Stream.of(one.to(), other.to()).min(Length::compareTo).orElseThrow();
  }
}
