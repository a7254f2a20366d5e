package storyrod.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.build.BuildPlan.Step;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Solid;
import storyrod.measure.Length;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * Plays a plan again: every part is moved out of its place in small steps, against the way in which
 * the plan brings it, and its solid is held against the solid of everything that stands by then. It
 * knows nothing of how the order was found.
 */
public final class Replay {
  /** Less than half of any board is thick, in mm. */
  private static final double STEP_MM = 3;

  /** What rounding leaves where slanted faces slide on each other, in mm³. */
  private static final double NOTHING_MM3 = 50;

  private final Piece piece;
  private final BuildPlan plan;
  private final Map<String, String> levels;
  private final Map<String, List<String>> standing = new LinkedHashMap<>();
  private final List<String> collisions = new ArrayList<>();
  private int moves;

  private Replay(Piece piece, BuildPlan plan) {
    this.piece = piece;
    this.plan = plan;
    this.levels = Levels.byUnit(piece);
  }

  /**
   * What a replay found.
   *
   * @param collisions what ran into what, in words
   * @param moves how many units were moved to others that stood
   */
  public record Found(List<String> collisions, int moves) {}

  public static Found of(Piece piece, BuildPlan plan) {
    Replay replay = new Replay(piece, plan);
    plan.steps().forEach(replay::play);
    return new Found(List.copyOf(replay.collisions), replay.moves);
  }

  private void play(Step step) {
    List<Operation> readyFirst =
        step.operations().stream()
            .sorted(Comparator.comparing(each -> isMoving(each, step)))
            .toList();
    for (Operation operation : readyFirst) {
      if (operation.verb() == Verb.FIT) {
        List<String> there =
            standing.computeIfAbsent(level(operation.target()), level -> new ArrayList<>());
        if (!there.isEmpty() && !step.cautions().contains("tilt")) {
          bring(step, operation, there);
          moves++;
        }
        there.addAll(operation.parts());
      }
    }
  }

  /** What a unit is put into; one of a group, into the smallest group that has it. */
  private String level(String unit) {
    return plan.steps().stream()
        .flatMap(step -> step.operations().stream())
        .map(Operation::target)
        .filter(
            group ->
                group.length() > unit.length() && ("+" + group + "+").contains("+" + unit + "+"))
        .min(Comparator.comparingInt(String::length))
        .orElseGet(() -> levels.get(Groups.first(unit)));
  }

  private static boolean isMoving(Operation operation, Step step) {
    return step.movingParts().containsAll(operation.parts());
  }

  private void bring(Step step, Operation operation, List<String> there) {
    Optional<Face> enters = step.enters(operation.parts());
    if (enters.isEmpty()) {
      collisions.add(operation.name() + " comes from nowhere in step " + step.number());
      return;
    }
    List<Part> moving = operation.parts().stream().map(piece::part).toList();
    List<Part> others = there.stream().map(piece::part).toList();
    Vector3D out = Passing.direction(moving, others, enters.get().opposite());
    for (Part mover : moving) {
      others.stream()
          .filter(other -> runsInto(mover, other, out, step.firstMove()))
          .forEach(
              other ->
                  collisions.add(
                      "step %d: %s, brought towards the %s, runs into %s"
                          .formatted(
                              step.number(), mover.name(), enters.get().word(), other.name())));
    }
  }

  private static boolean runsInto(
      Part mover, Part other, Vector3D way, Optional<FirstMove> firstMove) {
    if (firstMove.isEmpty()) {
      return runsInto(mover, other, Vector3D.ZERO, way);
    }
    double beside = mm(firstMove.get().beside());
    Solid solid = mover.placed();
    for (double at = STEP_MM; at < beside; at += STEP_MM) {
      if (other.placed().sharedVolumeMm3(solid, way.multiply(at)) > NOTHING_MM3) {
        return true;
      }
    }
    Vector3D out = firstMove.get().enters().opposite().normal();
    return runsInto(mover, other, way.multiply(beside), out);
  }

  private static boolean runsInto(Part mover, Part other, Vector3D from, Vector3D way) {
    Solid solid = mover.placed();
    Box box = solid.bounds().orElseThrow();
    Box by = other.placed().bounds().orElseThrow();
    Vector3D moved = from;
    for (double at = STEP_MM; !isPast(box, by, moved, way); at += STEP_MM) {
      moved = from.add(way.multiply(at));
      if (other.placed().sharedVolumeMm3(solid, moved) > NOTHING_MM3) {
        return true;
      }
    }
    return false;
  }

  /** Whether a box that has been moved is beyond another one for good. */
  private static boolean isPast(Box box, Box other, Vector3D moved, Vector3D way) {
    for (Face face : Face.values()) {
      double speed = way.dot(face.normal());
      double tail = face.sign() * mm(box.at(face.opposite())) + moved.dot(face.normal());
      if (speed >= 0 && tail >= face.sign() * mm(other.at(face))) {
        return true;
      }
    }
    return false;
  }

  private static double mm(Length length) {
    return length.toMm();
  }
}
