package storyrod.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.check.Balance.Load;
import storyrod.description.ItemEntry;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.wood.Mass;

/**
 * A piece as it stands on the floor: the masses of its parts about the line on which its front
 * stands, and the drawers and doors that can be pulled out beyond it.
 *
 * @param body the masses of what does not open
 * @param openings the drawers and doors, each with its masses shut and open
 * @param backMm how far the back of the piece lies behind the line
 */
record Standing(List<Load> body, List<Opening> openings, double backMm) {
  /** A child of 72 months in the reasoning of ASTM F2057-23: 60 lb. */
  static final double CHILD_KG = 27.2155;

  /** What a static reckoning should have in hand (our own suggestion). */
  static final double MARGIN = 1.2;

  /** Parts within this of the lowest one stand on the floor. */
  private static final double LEVEL_MM = 0.5;

  /**
   * A drawer or a door.
   *
   * @param edgeMm how far its front edge lies behind the line when it is open; mostly negative
   */
  record Opening(Hung hung, List<Load> shut, List<Load> open, double edgeMm) {}

  /** The worst that a child on one open drawer or door does, and to which. */
  record Worst(Opening opening, Balance balance) {}

  /** None where a density is unknown, nothing opens, or it does not stand on the floor. */
  static Optional<Standing> of(Piece piece) {
    Map<String, Double> kg = masses(piece);
    if (piece.parts().isEmpty() || kg.size() < piece.parts().size()) {
      return Optional.empty();
    }
    return new Weighing(piece, kg).standing();
  }

  private static Map<String, Double> masses(Piece piece) {
    Map<String, Double> kg = new LinkedHashMap<>();
    for (Part part : piece.parts()) {
      Mass.density(part.stock())
          .ifPresent(density -> kg.put(part.name(), Mass.kg(part.solid().volumeMm3(), density)));
    }
    return kg;
  }

  /** Everything open and empty. */
  Balance allOpen() {
    List<Load> loads = new ArrayList<>(body);
    openings.forEach(opening -> loads.addAll(opening.open()));
    return Balance.of(loads);
  }

  /** One open, with a child's weight on its front edge: the one that is worst. */
  Worst childOnOne() {
    return openings.stream()
        .map(opening -> new Worst(opening, childOn(opening)))
        .reduce((one, two) -> two.balance().ratio() < one.balance().ratio() ? two : one)
        .orElseThrow();
  }

  private Balance childOn(Opening opening) {
    List<Load> loads = new ArrayList<>(body);
    openings.forEach(each -> loads.addAll(each.equals(opening) ? each.open() : each.shut()));
    return Balance.of(loads, new Load(CHILD_KG, opening.edgeMm()));
  }

  /** Whether it stands in both cases with a margin. */
  boolean stands() {
    return allOpen().ratio() >= MARGIN && childOnOne().balance().ratio() >= MARGIN;
  }

  private record Weighing(Piece piece, Map<String, Double> kg) {
    Optional<Standing> standing() {
      List<Hung> drawers = Hung.drawers(piece);
      List<Hung> doors = Hung.doors(piece);
      List<Part> still =
          piece.parts().stream()
              .filter(part -> Stream.of(drawers, doors).noneMatch(all -> isIn(part, all)))
              .toList();
      if (drawers.size() + doors.size() == 0 || still.isEmpty()) {
        return Optional.empty();
      }
      double line = frontLineMm(still);
      List<Opening> openings = new ArrayList<>();
      drawers.forEach(drawer -> openings.add(drawer(drawer, line)));
      doors.forEach(door -> openings.add(door(door, line)));
      double back = still.stream().mapToDouble(part -> mm(part, Face.BACK)).max().orElseThrow();
      return Optional.of(new Standing(loads(still, line), openings, back - line));
    }

    private static boolean isIn(Part part, List<Hung> hung) {
      return hung.stream().anyMatch(each -> each.has(part));
    }

    private Opening drawer(Hung drawer, double line) {
      List<Load> shut = loads(drawer.parts(), line);
      double out =
          piece
              .item(drawer.by().item().value())
              .flatMap(ItemEntry::length)
              .orElse(drawer.box().size(Axis.Y))
              .toMm();
      List<Load> open = shut.stream().map(load -> load.forward(out)).toList();
      double edge = drawer.box().at(Face.FRONT).toMm() - line - out;
      return new Opening(drawer, shut, open, edge);
    }

    /** It swings about the edge of its front, so that its width stands out before that. */
    private Opening door(Hung door, double line) {
      List<Load> shut = loads(door.parts(), line);
      double front = door.box().at(Face.FRONT).toMm() - line;
      double wide = door.box().size(Axis.X).toMm();
      double mass = shut.stream().mapToDouble(Load::kg).sum();
      List<Load> open = List.of(new Load(mass, front - wide / 2));
      return new Opening(door, shut, open, front - wide);
    }

    private List<Load> loads(List<Part> parts, double line) {
      return parts.stream()
          .map(
              part ->
                  new Load(kg.get(part.name()), part.bounds().on(Axis.Y).middle().toMm() - line))
          .toList();
    }

    /** The foremost point that touches the floor. */
    private static double frontLineMm(List<Part> still) {
      double floor = still.stream().mapToDouble(part -> mm(part, Face.BOTTOM)).min().orElseThrow();
      return still.stream()
          .filter(part -> mm(part, Face.BOTTOM) - floor < LEVEL_MM)
          .flatMap(part -> part.placed().faces().stream())
          .flatMap(face -> face.outer().stream())
          .filter(point -> point.getZ() - floor < LEVEL_MM)
          .mapToDouble(Vector3D::getY)
          .min()
          .orElseThrow();
    }

    private static double mm(Part part, Face face) {
      return part.bounds().at(face).toMm();
    }
  }
}
