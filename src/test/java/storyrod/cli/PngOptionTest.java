package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PngOptionTest {
  private static final Path SHELF = Shell.PROJECTS.resolve("wall-shelf");

  @Test
  void picturesStandBesideTheDrawingsAndGoWithTheNextRun(@TempDir Path folder) throws IOException {
    Shell shell = Shell.run("build", SHELF.toString(), "--png", "--out", folder.toString());
    assertEquals(0, shell.code(), shell.err());
    Map<String, byte[]> files = Shell.files(folder);
    TreeSet<String> drawings =
        files.keySet().stream()
            .filter(name -> name.endsWith(".svg") && !name.contains("template-"))
            .map(name -> name.replace(".svg", ".png"))
            .collect(Collectors.toCollection(TreeSet::new));
    TreeSet<String> pictures =
        files.keySet().stream()
            .filter(name -> name.endsWith(".png"))
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(drawings, pictures);
    assertTrue(pictures.contains("drawings/exploded.png"), pictures::toString);
    for (String name : pictures) {
      assertTrue(ImageIO.read(new ByteArrayInputStream(files.get(name))).getWidth() > 300, name);
    }
    Map<String, byte[]> without = Shell.built(SHELF, folder);
    assertTrue(without.keySet().stream().noneMatch(name -> name.endsWith(".png")));
  }
}
