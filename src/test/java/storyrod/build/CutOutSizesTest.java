package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.build.BuildPlan.Setting;
import storyrod.build.BuildPlan.Step;
import storyrod.drawing.AllProjects;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** A notch through a board has two sizes; the step that makes it names both. */
class CutOutSizesTest {
  @TestFactory
  List<DynamicTest> eachStepNamesBothSizesOfWhatItCutsOut() {
    return AllProjects.each(
        sample -> {
          List<String> missing = new ArrayList<>();
          for (Step step : sample.set().build().steps()) {
            for (Operation operation : step.operations()) {
              sizes(sample.set().piece(), operation)
                  .filter(size -> !values(step).contains(size))
                  .forEach(size -> missing.add(step.number() + " " + operation + " " + size));
            }
          }
          assertEquals(List.of(), missing);
        });
  }

  @Test
  void thereAreSuchNotches() {
    Piece piece = AllProjects.named("bookcase").piece();
    List<Length> all =
        AllProjects.named("bookcase").build().steps().stream()
            .flatMap(step -> step.operations().stream())
            .flatMap(operation -> sizes(piece, operation))
            .toList();
    assertFalse(all.isEmpty());
  }

  private static Set<Length> values(Step step) {
    return step.settings().stream().map(Setting::value).collect(Collectors.toSet());
  }

  /** The sizes of cuts that go through a part's thickness and end within it on both other ways. */
  private static Stream<Length> sizes(Piece piece, Operation operation) {
    return operation.verb() == Verb.CUT
        ? Cut.only(Cut.Trench.class, operation.cuts()).stream()
            .flatMap(trench -> sizes(piece.part(operation.target()), trench.removed()))
        : Stream.empty();
  }

  private static Stream<Length> sizes(Part part, Box removed) {
    List<Axis> within =
        Stream.of(Axis.values())
            .filter(axis -> removed.size(axis).isShorterThan(part.box().size(axis)))
            .toList();
    boolean isCutOut =
        within.size() == 2 && removed.on(part.thickness()).equals(part.box().on(part.thickness()));
    return isCutOut ? within.stream().map(removed::size) : Stream.empty();
  }
}
