package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Verb;
import storyrod.piece.Piece;
import storyrod.planset.PlanSet;

class PicturedStepTest {
  private static final List<Verb> SHOP = List.of(Verb.MILL, Verb.SIZE, Verb.CUT, Verb.DRILL);

  /** To carve all parts as they are by then takes long, so steps that show none of it do not. */
  @Test
  void aStepInTheShopDoesNotAskForThePieceAsItStands() {
    PlanSet set = AllProjects.named("step-stool");
    BuildPlan plan = set.build();
    Supplier<Piece> never =
        () -> {
          throw new IllegalStateException("nothing of the piece is to be shown");
        };
    List<Step> shop = plan.steps().stream().filter(step -> SHOP.contains(step.verb())).toList();
    assertTrue(shop.size() > 2);
    for (Step step : shop) {
      StepHardware hardware = StepHardware.of(plan, step, Hardware.of(set.piece()));
      assertEquals(Optional.empty(), StepPicture.of(never, step, hardware));
      assertEquals(Optional.empty(), MountPicture.of(never, plan, step, hardware));
      assertEquals(Optional.empty(), FinishPicture.of(never, plan, step));
    }
  }
}
