package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Verb;
import storyrod.cli.Pipeline;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.Balloon;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Tone;
import storyrod.planset.PlanSet;

/** Where hardware goes that has no size of its own. */
class SpotPictureTest {
  private static final PlanSet BOX = unsized();

  /** The sewing box with felt and dots of which no size is told. */
  private static PlanSet unsized() {
    Path file = Path.of("projects", "sewing-box", "project.yaml");
    try {
      String text = Files.readString(file);
      String bare =
          text.replace(" length: 18, width: 12, thickness: 1/16,", "")
              .replace(" diameter: 3/8, thickness: 1/16,", "");
      assertEquals(text.length() - 72, bare.length(), "both lines are there");
      SourceText source = new SourceText(file.toString(), bare);
      return Pipeline.planSet(source, new Diagnostics()).orElseThrow();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Step mounting(String item) {
    return BOX.build().steps().stream()
        .filter(step -> step.verb() == Verb.MOUNT)
        .filter(step -> step.operations().getFirst().target().equals(item))
        .findFirst()
        .orElseThrow();
  }

  private static Drawing picture(Step step) {
    return PicturedStep.of(BOX.piece(), BOX.build(), step, Hardware.of(BOX.piece()))
        .orElseThrow()
        .drawn(new Size(190, 100));
  }

  private static TreeSet<String> toned(Drawing drawing) {
    TreeSet<String> toned = new TreeSet<>();
    for (Drawing.Element each : drawing.elements()) {
      if (each instanceof Group group
          && group.elements().stream().anyMatch(SpotPictureTest::isToned)) {
        toned.add(group.id());
      }
    }
    return toned;
  }

  private static boolean isToned(Drawing.Element element) {
    return element instanceof Area area && area.tone() != Tone.WHITE;
  }

  private static void assertShown(Step step) {
    Drawing drawing = picture(step);
    TreeSet<String> wanted = new TreeSet<>();
    TreeSet<String> marks = new TreeSet<>();
    step.targets().stream()
        .map(BOX.piece()::part)
        .forEach(
            part -> {
              wanted.add(Ink.id(part));
              marks.add(part.mark());
            });
    assertEquals(wanted, toned(drawing));
    assertEquals(
        marks,
        new TreeSet<>(
            drawing.elements().stream()
                .flatMap(each -> each instanceof Balloon b ? Stream.of(b.mark()) : Stream.empty())
                .toList()));
  }

  @Test
  void whatTakesFeltIsToned() {
    assertShown(mounting("felt"));
  }

  @Test
  void whatTakesDotsIsToned() {
    assertShown(mounting("dot"));
    assertTrue(mounting("dot").targets().size() > 4);
  }
}
