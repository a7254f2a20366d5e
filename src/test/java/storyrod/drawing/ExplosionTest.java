package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import storyrod.build.Levels;
import storyrod.piece.Joint;
import storyrod.piece.Piece;

/** How far parts stand apart in exploded views. */
class ExplosionTest {
  private static final double EXACT_MM = 1e-6;

  /** What two ends hold between them is not drawn beyond one of them. */
  @TestFactory
  List<DynamicTest> noPartIsDrawnBeyondWhatItIsJoinedTo() {
    return AllProjects.each(
        sample -> {
          Piece piece = sample.set().piece();
          List<String> faults = new ArrayList<>();
          Levels.withFronts(piece)
              .forEach(
                  (level, units) -> {
                    Explosion one =
                        Explosion.ofLevel(piece, sample.set().build(), View.USUAL, level);
                    Set<String> parts =
                        units.stream()
                            .flatMap(unit -> unit.partNames().stream())
                            .collect(Collectors.toSet());
                    faults.addAll(beyond(piece, parts, one.offsets()));
                  });
          assertEquals(List.of(), faults);
        });
  }

  private static List<String> beyond(
      Piece piece, Set<String> parts, Map<String, Vector3D> offsets) {
    return piece.joints().stream()
        .filter(joint -> parts.contains(joint.first()) && parts.contains(joint.second()))
        .filter(joint -> apartMm(joint, offsets) < -EXACT_MM)
        .map(joint -> joint.first() + " and " + joint.second())
        .toList();
  }

  /** How far the two parts have gone from each other, at right angles to where they meet. */
  private static double apartMm(Joint joint, Map<String, Vector3D> offsets) {
    Vector3D apart = offsets.get(joint.second()).subtract(offsets.get(joint.first()));
    return apart.dot(joint.firstFace().normal());
  }
}
