package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.planset.Edition;
import storyrod.planset.Paper;
import storyrod.planset.PlanSet;
import storyrod.planset.Printing;
import storyrod.words.Words;

/** What editions share is made once, and is what it would be if it were made for each. */
class PlanSetsTest {
  private static final Path FILE = Path.of("projects", "step-stool", "project.yaml");

  private final Diagnostics diagnostics = new Diagnostics();
  private final Pipeline.Planned planned = planned();
  private final PlanSets sets = new PlanSets(planned, diagnostics);

  private Pipeline.Planned planned() {
    try {
      SourceText source = new SourceText(FILE.toString(), Files.readString(FILE));
      return Pipeline.plan(source, diagnostics).orElseThrow();
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static Printing printing(String edition, String paper) {
    Printing usual = Printing.usual(Words.ENGLISH);
    return new Printing(
        usual.templates(),
        usual.words(),
        Edition.named(edition, usual.templates()).orElseThrow(),
        Optional.of(Paper.BY_NAME.get(paper)),
        usual.choice());
  }

  @Test
  void eachEditionIsWhatItWouldBeAlone() {
    for (String paper : List.of("letter", "a3", "letter")) {
      for (String edition : List.of("publish", "helper", "preview")) {
        Printing printing = printing(edition, paper);
        PlanSets alone = new PlanSets(planned, diagnostics);
        PlanSet expected = alone.of(printing);
        PlanSet shared = sets.of(printing);
        assertEquals(expected.drawings(), shared.drawings(), edition + " on " + paper);
        assertArrayEquals(
            alone.writer(printing).pdf(expected), sets.writer(printing).pdf(shared), edition);
      }
    }
  }

  @Test
  void anEditionOnTheSamePaperDrawsNoPartAnew() {
    PlanSet publish = sets.of(printing("publish", "letter"));
    PlanSet helper = sets.of(printing("helper", "letter"));
    PlanSet large = sets.of(printing("publish", "a3"));
    assertSame(publish.drawings().exploded(), helper.drawings().exploded());
    publish
        .drawings()
        .parts()
        .forEach((mark, drawing) -> assertSame(drawing, helper.drawings().parts().get(mark), mark));
    assertNotSame(publish.drawings().exploded(), large.drawings().exploded());
  }
}
