package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.drawing.Drawing;
import storyrod.drawing.SvgWriter;
import storyrod.planset.PlanSet;

/**
 * The README's pictures are what the tool draws today. {@code -Dgolden.update} draws them anew;
 * look at the difference.
 */
class ReadmePicturesTest {
  private static final Path BENCH = Path.of("projects/window-bench");

  @ParameterizedTest
  @ValueSource(strings = {"exploded", "part-A"})
  void pictureIsWhatTheToolDraws(String name) throws IOException {
    String drawn = SvgWriter.write(drawing(planSet(), name));
    Path picture = BENCH.resolve("pictures/" + name + ".svg");
    if (!System.getProperty("golden.update", "no").equals("no")) {
      Files.writeString(picture, drawn, StandardCharsets.UTF_8);
    }
    assertEquals(Files.readString(picture, StandardCharsets.UTF_8), drawn);
  }

  private static PlanSet planSet() throws IOException {
    Path file = BENCH.resolve("project.yaml");
    SourceText source = new SourceText(file.toString(), Files.readString(file));
    return Pipeline.planSet(source, new Diagnostics()).orElseThrow();
  }

  private static Drawing drawing(PlanSet set, String name) {
    return name.equals("exploded")
        ? set.drawings().exploded().whole()
        : set.drawings().parts().get(name.substring("part-".length()));
  }
}
