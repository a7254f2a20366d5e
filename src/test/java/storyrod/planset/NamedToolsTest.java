package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a step tells the maker to take up stands among its tools. */
class NamedToolsTest {
  /** By words of a sentence, the words of a tool that does it. */
  private static final Map<String, String> TOOLS = new TreeMap<>();

  static {
    TOOLS.put("thin shims|on shims", "shims");
    TOOLS.put("with a knife|[Cc]ut it to lie", "knife");
    TOOLS.put("[Cc]hisel(?! that)|pare a", "chisel|block plane");
    TOOLS.put("coping saw", "coping saw");
    TOOLS.put("marking gauge", "marking gauge");
    TOOLS.put("sliding bevel", "sliding bevel");
    TOOLS.put("pilot hole", "pilot bit");
    TOOLS.put("clamp the front", "clamp");
    TOOLS.put("mitre gauge", "mitre gauge|crosscut sled|table saw");
    TOOLS.put("hand plane", "plane");
    TOOLS.put("plane the edge", "plane");
    TOOLS.put("with a mallet", "mallet");
    TOOLS.put("masking tape|mask with tape", "masking tape");
    TOOLS.put("Draw a (level )?line", "pencil");
    TOOLS.put("calipers", "calipers");
    TOOLS.put("Mark the place", "pencil");
    TOOLS.put("Mark the place|both diagonals|the two diagonals of (it|each)", "tape measure");
    TOOLS.put("Scrape the squeezed-out glue|\\bscrape it", "scraper");
    TOOLS.put("on the jointer|Joint one edge", "jointer");
    TOOLS.put("track saw", "track saw");
    TOOLS.put("Clamp a block", "clamp");
    TOOLS.put("Clamp a block, planed|Plane the frame", "plane");
    TOOLS.put("find a stud", "stud finder");
    TOOLS.put("[Ss]crew (a|the) strap", "screwdriver");
    TOOLS.put("double-sided tape", "double-sided tape");
    TOOLS.put("temporary screws", "wood screws.*screwdriver");
    TOOLS.put("board of scrap to the fence", "board of scrap");
    TOOLS.put("a level shows", "level");
    TOOLS.put("straightedge across", "straightedge");
    TOOLS.put("[Mm]easure (both|the two) diagonals", "tape measure");
    TOOLS.put("two diagonals", "tape measure");
    TOOLS.put("on (two )?battens", "battens");
    TOOLS.put("thin wedge", "wedge");
    TOOLS.put("as much off the other legs", "saw");
    TOOLS.put("straightedge", "straightedge");
    TOOLS.put("[Ss]aw off (the ends|what stands out)", "flush-cut saw");
    TOOLS.put("(?<!no )[Gg]lue only the|glue a sliver", "glue");
    TOOLS.put("fill the holes?: ", "wood filler");
    TOOLS.put("paraffin wax", "paraffin wax");
    TOOLS.put("mineral spirits", "mineral spirits");
    TOOLS.put("wrap it in tape", "masking tape");
    TOOLS.put("drill on through it from the front", "brad-point bit");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "sideboard",
        "bookcase",
        "dining-table",
        "nightstand",
        "step-stool",
        "sewing-box",
        "window-bench"
      })
  void whatTheWordsTakeUpStandsAmongTheTools(String project) throws IOException {
    assertEquals(
        List.of(), StepWordsTest.steps(project).stream().flatMap(NamedToolsTest::missing).toList());
  }

  /** A caution asks for a stop, and what is drilled for a screw is screwed. */
  @ParameterizedTest
  @ValueSource(strings = {"bookcase", "nightstand", "sideboard", "step-stool", "window-bench"})
  void pilotHolesTakeAStopAndTheirScrewsADriver(String project) throws IOException {
    List<StepText> steps = StepWordsTest.steps(project);
    assertEquals(List.of(), without(steps, NamedToolsTest::asksForAStop, "depth stop"));
    assertEquals(List.of(), without(steps, NamedToolsTest::drivesScrews, ".*driver.*"));
    assertFalse(steps.stream().noneMatch(NamedToolsTest::asksForAStop));
  }

  private static boolean asksForAStop(StepText step) {
    return step.cautions().stream().anyMatch(each -> each.contains("depth stop"));
  }

  /** Elsewhere pilot holes are drilled for screws that go in later, or for nails. */
  private static boolean drivesScrews(StepText step) {
    return step.tools().contains("pilot bit")
        && !step.title().startsWith("Drill")
        && step.sentences().stream().anyMatch(each -> each.contains("screw"));
  }

  private static List<String> without(
      List<StepText> steps, Predicate<StepText> which, String tool) {
    return steps.stream()
        .filter(which)
        .filter(step -> step.tools().stream().noneMatch(each -> each.matches(tool)))
        .map(step -> step.title() + ": " + step.tools())
        .toList();
  }

  private static Stream<String> missing(StepText step) {
    String tools = String.join("; ", step.tools());
    return TOOLS.entrySet().stream()
        .filter(each -> !Pattern.compile(each.getValue()).matcher(tools).find())
        .flatMap(
            each ->
                step.sentences().stream()
                    .filter(words -> Pattern.compile(each.getKey()).matcher(words).find())
                    .map(words -> step.title() + ": " + words + " [" + tools + "]"));
  }
}
