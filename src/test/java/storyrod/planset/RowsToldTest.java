package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Operation;
import storyrod.build.RowLines;
import storyrod.drawing.AllProjects;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.measure.LengthFormat;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.words.Words;

/** Whoever reads where a row of holes lies reads both ways, or where else to look. */
class RowsToldTest {
  private static final String TOLD = "the middles of the ";
  private static final String DRAWN = "the part drawing shows";

  @Test
  void bothDistancesOfEachHoleInARowAreTold() {
    List<String> faults = new ArrayList<>();
    int rows = 0;
    for (AllProjects.Sample sample : AllProjects.all()) {
      Piece piece = sample.set().piece();
      BuildPlan plan = sample.set().build();
      StepWriter writer = new StepWriter(piece, Words.ENGLISH, new Templates(), plan);
      for (Step step : plan.steps()) {
        String said = said(writer.write(step));
        for (Operation each : said.isEmpty() ? List.<Operation>of() : step.operations()) {
          if (each.cuts().isEmpty()) {
            continue;
          }
          Part part = piece.part(each.target());
          rows += RowLines.of(each.cuts()).size();
          new Row(piece, part, said)
              .untold(each.cuts())
              .forEach(at -> faults.add(part.mark() + at + said));
        }
      }
    }
    assertEquals(List.of(), faults);
    assertTrue(rows > 10, "only " + rows);
  }

  private static String said(StepText step) {
    return step.sentences().stream()
        .filter(each -> each.contains(TOLD))
        .collect(Collectors.joining("\n"));
  }

  /** What a step says of a part with rows of holes. */
  private record Row(Piece piece, Part part, String said) {
    /** The holes of which no sentence has both distances. */
    Stream<Point> untold(List<Cut> cuts) {
      return RowLines.of(cuts).stream()
          .flatMap(rows -> rows.centres().stream().filter(at -> !isTold(rows, at)));
    }

    private boolean isTold(RowLines rows, Point at) {
      return said.lines()
          .filter(this::names)
          .anyMatch(
              each ->
                  each.contains(DRAWN)
                      || tells(each, at, rows.across()) && tells(each, at, rows.along()));
    }

    private boolean names(String sentence) {
      String listed = sentence.substring(0, sentence.indexOf(TOLD));
      return Arrays.asList(listed.split("[^A-Z]+")).contains(part.mark());
    }

    private boolean tells(String sentence, Point at, Axis axis) {
      LengthFormat format = piece.description().printed();
      return Stream.of(Face.of(axis, -1), Face.of(axis, 1))
          .map(face -> part.box().at(face).minus(at.on(axis)).abs())
          .anyMatch(off -> sentence.contains(" " + format.toldWithUnit(off)));
    }
  }
}
