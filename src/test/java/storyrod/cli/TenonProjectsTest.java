package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A table of mortises and tenons and a frame-and-panel door, from the shell to the plan. */
class TenonProjectsTest {
  private static final Path TABLE = Shell.PROJECTS.resolve("side-table");
  private static final Path DOOR = Shell.PROJECTS.resolve("panel-door");

  private static String plan(Path project, Path out) {
    return new String(Shell.built(project, out).get("plan.json"), StandardCharsets.UTF_8);
  }

  private static List<String> all(String regex, String text) {
    return Pattern.compile(regex).matcher(text).results().map(MatchResult::group).toList();
  }

  /**
   * A tenon is 3/4 in = 19,050 µm long, a mortise 13/16 in = 20,637.5 deep. The plan gives a part
   * for each mark: two aprons with two tenons, and a leg with two mortises.
   */
  @Test
  void planHoldsTenonsAndMortisesToTheMicrometre(@TempDir Path out) {
    String plan = plan(TABLE, out.resolve("plan"));
    assertEquals(4, all("\"kind\"\\s*:\\s*\"tenon\"", plan).size());
    assertEquals(4, all("\"length_um\"\\s*:\\s*19050\\b", plan).size());
    assertEquals(2, all("\"term\"\\s*:\\s*\"mortise\"", plan).size());
    assertEquals(2, all("\"depth_um\"\\s*:\\s*2063[78]\\b", plan).size());
  }

  @Test
  void mortisesAreCutBeforeTheTenonsThatAreFittedToThem(@TempDir Path out) {
    String plan = plan(TABLE, out.resolve("plan"));
    int mortises = plan.indexOf("Cut the mortises in the legs");
    int tenons = plan.indexOf("Cut the tenons on ");
    assertTrue(mortises > 0 && tenons > mortises, mortises + ", " + tenons);
  }

  @Test
  void anOwnOrderThatCutsTenonsFirstIsToldWhy(@TempDir Path folder) {
    String text =
        Shell.read(TABLE.resolve("project.yaml"))
            + "\nbuild: [{stage: Joints, order: [cut front-apron, cut left-end.front-leg]}]\n";
    Shell shell = Shell.check(Shell.write(folder.resolve("project.yaml"), text));
    assertEquals(1, shell.code());
    assertTrue(
        shell.out().contains("a tenon or a tongue is fitted to what it goes into"), shell.out());
  }

  /** Both rails go onto the first stile, the panel between them, the second stile last. */
  @Test
  void thePanelGoesInBeforeTheFrameCloses(@TempDir Path out) {
    String plan = plan(DOOR, out.resolve("plan"));
    List<String> fits = all("\"fit [a-z-]+\"", plan);
    int panel = fits.indexOf("\"fit panel\"");
    int left = fits.indexOf("\"fit left-stile\"");
    int right = fits.indexOf("\"fit right-stile\"");
    assertTrue(panel >= 0 && panel < Math.max(left, right), fits.toString());
  }
}
