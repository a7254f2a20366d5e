package storyrod.build;

import java.util.List;
import java.util.stream.Stream;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * Tells which parts have a broad face that looks at another part of what they are built into, and
 * so is hard to sand later. Small faces and what goes in last do not count.
 */
public final class Insides {
  private static final Length FAR = Length.inches(1000);

  /** In mm²; a smaller face is soon sanded at any time (common practice). */
  private static final double SMALL = 20_000;

  /** How much of a face has to be faced: a quarter, which the rails of an open case reach. */
  private static final double COVERED = 0.25;

  private final List<Unit> units;
  private final Late late;

  public Insides(Piece piece) {
    this.units = Levels.of(piece).values().stream().flatMap(List::stream).toList();
    this.late = Late.of(piece);
  }

  boolean has(Part part) {
    return !faces(part).isEmpty();
  }

  /** The broad faces of a part that are hard to sand once it is built in. */
  public List<Face> faces(Part part) {
    return units.stream()
        .filter(unit -> unit.parts().equals(List.of(part)) && isBuiltIn(unit))
        .flatMap(unit -> Stream.of(-1, 1).filter(sign -> isFaced(part, unit.level(), sign)))
        .map(sign -> Face.of(part.thickness(), sign))
        .toList();
  }

  private boolean isBuiltIn(Unit unit) {
    return !late.isLoose(unit) && !late.isTop(unit) && !late.isFront(unit);
  }

  private boolean isFaced(Part part, String level, int sign) {
    Axis through = part.thickness();
    double area = area(part.box(), through);
    Face face = Face.of(through, sign);
    Box before = before(part, face);
    List<Part> others = others(part, level);
    double hidden = area(others.stream().filter(other -> lies(other, part, face)), before, through);
    double faced = area(others.stream().filter(other -> !lies(other, part, face)), before, through);
    return area >= SMALL && hidden < area / 2 && faced >= COVERED * area;
  }

  private List<Part> others(Part part, String level) {
    return units.stream()
        .filter(unit -> unit.level().equals(level) && isBuiltIn(unit))
        .flatMap(unit -> unit.parts().stream())
        .filter(other -> !other.equals(part))
        .toList();
  }

  private static double area(Stream<Part> parts, Box before, Axis through) {
    return parts
        .flatMap(other -> before.shared(other.bounds()).stream())
        .mapToDouble(shared -> area(shared, through))
        .sum();
  }

  /** Whether another part lies on a face, and so covers it for good. */
  private static boolean lies(Part other, Part part, Face face) {
    return other.bounds().at(face.opposite()).equals(part.bounds().at(face));
  }

  private static Box before(Part part, Face face) {
    Length at = part.bounds().at(face);
    return part.bounds().with(face.axis(), new Range(at, at).extended(face.sign(), FAR));
  }

  private static double area(Box box, Axis through) {
    return box.volumeMm3() / box.size(through).toMm();
  }
}
