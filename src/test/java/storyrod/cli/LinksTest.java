package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** No link makes a plan set tell of files that lie outside the project's folder. */
class LinksTest {
  private static final Path SIDEBOARD = Path.of("projects/sideboard");

  @TempDir Path folder;
  private Path project;

  /** The sideboard without its shop. */
  @BeforeEach
  void copied() throws IOException {
    project = Files.createDirectories(folder.resolve("project"));
    for (String each : new String[] {"project.yaml", "hardware.yaml"}) {
      Files.copy(SIDEBOARD.resolve(each), project.resolve(each));
    }
  }

  private Shell checked(Path shop) throws IOException {
    Files.createSymbolicLink(project.resolve("shop.yaml"), shop.toAbsolutePath());
    return Shell.run("check", project.toString());
  }

  @Test
  void aFileBehindALinkThatLeadsOutIsNotRead() throws IOException {
    Path secret = Files.writeString(folder.resolve("secret"), "password: swordfish\n");
    Shell shell = checked(secret);
    assertEquals(1, shell.code());
    assertTrue(shell.toString().contains("'shop.yaml' leads out of the folder"), shell.toString());
    assertFalse(shell.toString().contains("swordfish"), shell.toString());
  }

  @Test
  void aLinkInsideTheFolderIsFollowed() throws IOException {
    Path shop = Files.createDirectories(project.resolve("shops")).resolve("mine.yaml");
    Files.copy(SIDEBOARD.resolve("shop.yaml"), shop);
    assertEquals(0, checked(shop).code());
  }

  @Test
  void aTemplateBehindALinkThatLeadsOutIsNotRead() throws IOException {
    Files.copy(SIDEBOARD.resolve("shop.yaml"), project.resolve("shop.yaml"));
    Path secret = Files.writeString(folder.resolve("secret"), "swordfish\n");
    Path cover = Files.createDirectories(project.resolve("templates/cover")).resolve("page.ftl");
    Files.createSymbolicLink(cover, secret.toAbsolutePath());
    Shell shell = Shell.run("build", project.toString(), "--out", folder.resolve("out").toString());
    assertEquals(1, shell.code());
    assertTrue(shell.err().contains("a link leads out of the folder"), shell.err());
    assertFalse(Files.exists(folder.resolve("out")));
  }
}
