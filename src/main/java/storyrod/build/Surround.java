package storyrod.build;

import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** On which sides a piece is closed by its parts: how it can lie, and from where one reaches in. */
public record Surround(Piece piece) {
  /** So much of a side has to be covered to lie on it, or to be shut. */
  private static final double MOST = 0.5;

  private static final Length FAR = Length.inches(1000);

  /** Whether there is a back to lie on: parts in its rear half that cover most of it. */
  public boolean hasBack() {
    Box whole = around(piece.parts());
    Range rear = new Range(whole.y().middle(), whole.y().to());
    return covers(
        piece.parts().stream().filter(part -> part.thickness() == Axis.Y),
        whole.with(Axis.Y, rear),
        Axis.Y);
  }

  /** Whether what lies under some parts shuts them off from below. */
  public boolean isClosedBelow(Collection<String> parts) {
    List<Part> above = parts.stream().map(piece::part).toList();
    Box box = around(above);
    Range below = new Range(box.z().from(), box.z().from()).extended(-1, FAR);
    return covers(
        piece.parts().stream().filter(part -> part.thickness() == Axis.Z && !above.contains(part)),
        box.with(Axis.Z, below),
        Axis.Z);
  }

  private static boolean covers(Stream<Part> parts, Box side, Axis through) {
    double covered =
        parts
            .flatMap(part -> side.shared(part.bounds()).stream())
            .mapToDouble(shared -> area(shared, through))
            .sum();
    return covered > MOST * area(side, through);
  }

  private static double area(Box box, Axis through) {
    return box.volumeMm3() / box.size(through).toMm();
  }

  private static Box around(List<Part> parts) {
    return parts.stream().map(Part::bounds).reduce(Box::around).orElseThrow();
  }
}
