package storyrod.build;

import java.util.ArrayList;
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
 * Tells which parts have a broad face that is hard to sand once they are built in, be it into a
 * sub-assembly or what that goes into: it looks at another part, or {@link Walls} stand round it,
 * as round a drawer bottom or a back. What goes in last does not count, nor what looks at the floor
 * between walls, which nobody sees.
 */
public final class Insides {
  private static final Length FAR = Length.inches(1000);

  /** In mm²; a smaller face, of a foot or a block, is soon sanded if it only looks at a part. */
  private static final double SMALL = 10_000;

  /** How much of a face has to be faced: a quarter, which the rails of an open case reach. */
  private static final double COVERED = 0.25;

  /** How much of it may be glued to others: less than the back of a face frame is. */
  private static final double GLUED = 0.2;

  private final List<Unit> units;
  private final Late late;

  public Insides(Piece piece) {
    this.units = Levels.of(piece).values().stream().flatMap(List::stream).toList();
    this.late = Late.of(piece);
  }

  boolean has(Part part) {
    return !faces(part).isEmpty();
  }

  /** The broad faces of a part that are hard to sand once it is built in; of a square one, any. */
  public List<Face> faces(Part part) {
    List<Part> others = others(part);
    boolean isSquare = part.finishedWidth().equals(part.finishedThickness());
    return (isSquare ? Stream.of(part.thickness(), part.width()) : Stream.of(part.thickness()))
        .flatMap(axis -> Stream.of(Face.of(axis, -1), Face.of(axis, 1)))
        .filter(face -> isHard(part, face, others))
        .toList();
  }

  /** What stands round a part on each level into which it is built for good, inner ones first. */
  List<Part> others(Part part) {
    List<Part> others = new ArrayList<>();
    for (Unit unit : units.stream().filter(unit -> unit.has(part.name())).toList()) {
      if (!isBuiltIn(unit)) {
        break;
      }
      others.addAll(others(unit));
    }
    return others;
  }

  private List<Part> others(Unit unit) {
    return units.stream()
        .filter(other -> other.level().equals(unit.level()) && !other.equals(unit))
        .filter(this::isBuiltIn)
        .flatMap(other -> other.parts().stream())
        .toList();
  }

  private boolean isBuiltIn(Unit unit) {
    return !late.isLate(unit);
  }

  private static boolean isHard(Part part, Face face, List<Part> others) {
    double area = area(part.box(), face.axis());
    List<Part> before = others.stream().filter(other -> !lies(other, part, face)).toList();
    List<Part> on = others.stream().filter(other -> lies(other, part, face)).toList();
    return before(on, part, face) < GLUED * area
        && (area >= SMALL && before(before, part, face) >= COVERED * area
            || face != Face.BOTTOM && new Walls(others).areRound(part, face));
  }

  /** How much of a face lies before parts, in mm². */
  private static double before(List<Part> parts, Part part, Face face) {
    Length at = part.bounds().at(face);
    Box before = part.bounds().with(face.axis(), new Range(at, at).extended(face.sign(), FAR));
    return parts.stream()
        .flatMap(other -> before.shared(other.bounds()).stream())
        .mapToDouble(shared -> area(shared, face.axis()))
        .sum();
  }

  /** Whether another part lies on a face, and so covers it for good. */
  private static boolean lies(Part other, Part part, Face face) {
    return other.bounds().at(face.opposite()).equals(part.bounds().at(face));
  }

  private static double area(Box box, Axis through) {
    return box.volumeMm3() / box.size(through).toMm();
  }
}
