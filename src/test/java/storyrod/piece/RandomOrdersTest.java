package storyrod.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import storyrod.build.BuildPlan;
import storyrod.build.Planner;
import storyrod.build.Replay;
import storyrod.build.Verb;
import storyrod.description.Diagnostics;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.piece.RandomJoints.Maker;
import storyrod.piece.RandomJoints.Sample;

/** Random pieces of every joint, turned about: what the plan brings in reaches its place. */
class RandomOrdersTest {
  private static final int TRIES = 12;
  private static final long SEED = 20261127;

  static List<Maker> makers() {
    return RandomJoints.ALL.stream()
        .filter(maker -> !maker.make(new Random(SEED)).body().contains("peg"))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("makers")
  void plannedWayInIsFree(Maker maker) {
    Random random = new Random(SEED);
    for (int i = 0; i < TRIES; i++) {
      List<Axis> axes = new ArrayList<>(Arrays.asList(Axis.values()));
      Collections.shuffle(axes, random);
      Sample sample = maker.make(random).turned(axes);
      Piece piece = Pieces.of(sample.fitting());
      BuildPlan plan = Planner.plan(piece, new Diagnostics()).orElseThrow();
      assertEquals(List.of(), Replay.of(piece, plan).collisions(), sample.body());
      assertTrue(isKnownToBeFree(plan, sample), sample.body());
    }
  }

  /** Whether the rail leaves the post, or the post the rail, as the maker of the sample says. */
  private static boolean isKnownToBeFree(BuildPlan plan, Sample sample) {
    return plan.steps().stream()
        .filter(step -> step.verb() == Verb.FIT && step.newParts().contains("rail"))
        .filter(step -> step.newParts().contains("post"))
        .allMatch(
            step -> {
              Optional<Face> enters = step.enters();
              boolean isRail = step.movingParts().contains("rail");
              return enters
                  .map(way -> isRail ? way.opposite() : way)
                  .filter(sample.free()::contains)
                  .isPresent();
            });
  }
}
