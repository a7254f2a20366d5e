package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Verb;
import storyrod.drawing.AllProjects.Sample;
import storyrod.drawing.Drawing.Group;
import storyrod.piece.Nesting;
import storyrod.piece.Piece;

/** A lid that is tried in its grooves, long before it goes in for good. */
class TriedPartsTest {
  private static final Sample BOX =
      AllProjects.all().stream()
          .filter(s -> s.name().equals("sewing-box"))
          .findFirst()
          .orElseThrow();

  private static final Piece PIECE = BOX.set().piece();
  private static final BuildPlan PLAN = BOX.set().build();

  private static List<Step> tried() {
    TriedParts tries = new TriedParts(PLAN, Nesting.of(PIECE));
    return PLAN.steps().stream().flatMap(step -> tries.in(step).stream()).toList();
  }

  private static Step trial() {
    return PLAN.steps().stream()
        .filter(step -> step.verb() == Verb.TRIAL_FIT && step.targets().contains("lid"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void onlyTheLidIsTried() {
    assertEquals(List.of(trial().number()), tried().stream().map(Step::number).toList());
  }

  /** The whole box lies on the bench, without the stand, which is not under it yet. */
  @Test
  void theLidSlidesIntoTheWholeBoxAndNothingElseIsThere() {
    Set<String> wanted =
        PIECE.parts().stream()
            .map(part -> part.name())
            .filter(name -> name.equals("lid") || name.startsWith("box."))
            .collect(Collectors.toCollection(TreeSet::new));
    Step step = tried().getFirst();
    List<String> there = new ArrayList<>(step.standing());
    there.addAll(step.newParts());
    assertEquals(wanted, new TreeSet<>(there));
  }

  @Test
  void itsPictureShowsTheLidOnItsWay() {
    Drawing picture =
        PicturedStep.of(PIECE, PLAN, trial(), Hardware.of(PIECE))
            .orElseThrow()
            .drawn(new Size(190, 120));
    Set<String> groups =
        picture.elements().stream()
            .flatMap(each -> each instanceof Group group ? Stream.of(group.id()) : Stream.empty())
            .collect(Collectors.toSet());
    assertTrue(groups.contains(Ink.id(PIECE.part("lid"))), groups::toString);
    assertTrue(groups.contains(Ink.id(PIECE.part("box.bottom"))), groups::toString);
    assertEquals("step-" + trial().number(), picture.name());
  }
}
