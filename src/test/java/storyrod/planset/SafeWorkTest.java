package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan;
import storyrod.build.Planner;
import storyrod.description.Diagnostics;
import storyrod.piece.Piece;
import storyrod.words.Words;

/** Steps tell a safe way of working, and their cautions fit it: common practice. */
class SafeWorkTest {
  private static final List<String> PROJECTS =
      List.of(
          "bookcase",
          "dining-table",
          "nightstand",
          "sewing-box",
          "sideboard",
          "step-stool",
          "window-bench");

  private static final Words GERMAN = Words.load("de");
  private static final Map<String, List<StepText>> ENGLISH_STEPS = new LinkedHashMap<>();
  private static final Map<String, List<StepText>> GERMAN_STEPS = new LinkedHashMap<>();

  @BeforeAll
  static void write() throws IOException {
    for (String project : PROJECTS) {
      Piece piece = StepWordsTest.piece(project);
      BuildPlan plan = Planner.plan(piece, new Diagnostics()).orElseThrow();
      ENGLISH_STEPS.put(project, written(piece, plan, Words.ENGLISH));
      GERMAN_STEPS.put(project, written(piece, plan, GERMAN));
    }
  }

  private static List<StepText> written(Piece piece, BuildPlan plan, Words words) {
    StepWriter writer = new StepWriter(piece, words, new Templates(), plan);
    return plan.steps().stream().map(writer::write).toList();
  }

  private static List<StepText> all(Map<String, List<StepText>> steps) {
    return steps.values().stream().flatMap(List::stream).toList();
  }

  private static String said(StepText step) {
    return String.join(" ", step.sentences());
  }

  private static StepText step(String project, String title) {
    return ENGLISH_STEPS.get(project).stream()
        .filter(step -> step.title().startsWith(title))
        .findFirst()
        .orElseThrow(() -> new AssertionError(title));
  }

  private static List<StepText> without(List<StepText> steps, Predicate<StepText> asked) {
    return steps.stream().filter(asked.negate()).toList();
  }

  /** A rough edge along the fence pinches the blade. */
  @Test
  void roughBoardsAreMadeStraightBeforeTheyGoAlongAFence() {
    List<StepText> rough =
        all(ENGLISH_STEPS).stream().filter(step -> said(step).contains("rough size")).toList();
    assertTrue(rough.size() >= PROJECTS.size() - 1, rough::toString);
    String caution = Words.ENGLISH.say("caution.rough-board");
    assertTrue(caution.contains("only with a flat face down, a jointed edge"), caution);
    assertEquals(
        List.of(),
        without(
            rough, step -> step.cautions().contains(caution) && step.tools().contains("bandsaw")));
    List<StepText> german =
        all(GERMAN_STEPS).stream().filter(step -> said(step).contains("Rohmaß")).toList();
    assertEquals(rough.size(), german.size());
    assertEquals(
        List.of(),
        without(german, step -> step.cautions().contains(GERMAN.say("caution.rough-board"))));
  }

  /** No guard belongs to a hand-held router; it is held with both hands. */
  @Test
  void handHeldRoutersAreHeldWithBothHands() {
    List<StepText> routed =
        all(ENGLISH_STEPS).stream()
            .filter(step -> step.cautions().contains(Words.ENGLISH.say("caution.router")))
            .toList();
    assertTrue(routed.size() > 5, routed::toString);
    for (StepText each : routed) {
      assertTrue(
          each.tools().stream()
              .anyMatch(tool -> tool.endsWith("router") || tool.startsWith("plunge router")),
          each::toString);
      assertFalse(String.join(" ", each.cautions()).contains("guard on"), each::toString);
    }
    assertTrue(Words.ENGLISH.say("caution.router").contains("with both hands"));
    assertTrue(GERMAN.say("caution.router").contains("mit beiden Händen"));
  }

  /** "Not both hands near the bit" would let one be there. */
  @Test
  void noHandComesNearARoundoverBit() {
    String english = Words.ENGLISH.say("caution.roundover");
    assertTrue(english.contains("Keep every hand away from the bit, both on the handles"), english);
    String german = GERMAN.say("caution.roundover");
    assertTrue(german.contains("Keine Hand in die Nähe des Fräsers bringen, beide an"), german);
  }

  /** A featherboard cannot press what crosses the table with the mitre gauge. */
  @Test
  void featherboardsHoldOnlyWhatRunsAlongTheFence() {
    String along = Words.ENGLISH.say("caution.dado-set");
    String across = Words.ENGLISH.say("caution.dado-set-across");
    assertTrue(along.contains("featherboards"), along);
    assertFalse(across.contains("featherboards"), across);
    for (String title :
        List.of(
            "Cut the box joints",
            "Cut the cross-laps",
            "Cut the half-laps",
            "Cut the bridle cheeks")) {
      StepText step = step("sewing-box", title);
      assertTrue(step.cautions().contains(across), step::toString);
      assertFalse(step.cautions().contains(along), step::toString);
      assertTrue(step.tools().contains("mitre gauge with a stop"), step::toString);
    }
    assertTrue(step("window-bench", "Cut the rabbets").cautions().contains(across));
    assertTrue(step("window-bench", "Cut the grooves in the sides").cautions().contains(along));
  }

  /** Along an edge, a cutter wider than its cut would run into the fence. */
  @Test
  void cutsAlongAnEdgeHaveABoardOfScrapOnTheFence() {
    StepText lid = step("sewing-box", "Thin the edges of the lid");
    assertTrue(said(lid).contains("Screw a board of scrap to the fence"), lid::toString);
    assertTrue(lid.tools().contains("board of scrap for the fence"), lid::toString);
    List<StepText> sacrificed =
        all(ENGLISH_STEPS).stream()
            .filter(step -> said(step).contains("the cutter reaches"))
            .filter(step -> step.tools().contains("dado set"))
            .toList();
    assertEquals(
        List.of(),
        without(sacrificed, step -> step.tools().contains("board of scrap for the fence")));
  }

  /** The base of a router tips on the end of a stick and on a narrow face. */
  @Test
  void blocksCarryTheRouterWhereThePartIsTooSmall() {
    String tool = "clamps and straight blocks that carry the router";
    StepText end = step("sewing-box", "Rout the mortises for the loose tenons in the long");
    assertTrue(
        said(end).contains("Clamp the long stretcher (G) upright between two straight blocks"),
        end::toString);
    assertTrue(end.tools().contains(tool), end::toString);
    StepText face = step("sewing-box", "Rout the mortises for the loose tenons in the end");
    assertTrue(
        said(face)
            .contains(
                "The base of the router tips on a face as narrow as that of the two end stretchers (C)"),
        face::toString);
    assertTrue(face.tools().contains(tool), face::toString);
  }

  /** A strip of 1/4 in passes hardly any pressure on beside a jaw. */
  @Test
  void thinStripsAreClampedUnderABatten() {
    for (String title :
        List.of("Glue the left side strip", "Glue the right side strip", "Glue the frieze")) {
      StepText step = step("bookcase", title);
      assertTrue(
          said(step).contains("a stiff batten") || said(step).contains("stiff battens"),
          step::toString);
      assertTrue(said(step).contains("so thin a strip"), step::toString);
      assertTrue(step.tools().contains("battens"), step::toString);
    }
    assertFalse(said(step("window-bench", "Glue the bottom")).contains("so thin a strip"));
  }

  /** The glue of six seams skins over before the last board lies. */
  @Test
  void wideWoodIsGluedUpInGroupsThatThePlanerTakes() {
    StepText slab = step("dining-table", "Glue up the boards for the slab");
    assertTrue(
        said(slab).contains("Glue up the slab (D) in two goes")
            && said(slab).contains("six seams at once: first groups of two boards"),
        slab::toString);
    assertTrue(said(slab).contains("glue them together, with a helper"), slab::toString);
    StepText top = step("nightstand", "Glue up the boards for the top");
    assertFalse(said(top).contains("in two goes"), top::toString);
  }

  /** A board has to be as long as what stays in one blank, not as its parts. */
  @Test
  void blanksOfShortPartsAreToldWithTheirLength() {
    StepText chosen = step("step-stool", "Choose the boards");
    assertTrue(said(chosen).contains("B × 2 in one (23 11/32 in)"), chosen::toString);
    StepText milled = step("nightstand", "Mill the European oak to 45 mm");
    assertTrue(
        said(milled).contains("G × 4 as one long blank, end to end (788 mm)"), milled::toString);
    assertTrue(said(step("nightstand", "Choose the boards")).contains("G × 4 in one ("));
  }

  /** A slot of 1/4 in is two kerfs wide. */
  @Test
  void whatCutsAWideSlotStandsAmongTheTools() {
    StepText slots = step("sewing-box", "Cut the spline slots");
    assertTrue(
        slots.tools().contains("dado set, or a blade in passes side by side"), slots::toString);
    assertTrue(said(slots).contains("A thinner blade cuts the slot in passes"), slots::toString);
    assertFalse(said(step("window-bench", "Drill the shelf pin holes")).contains("boring guide"));
  }

  /** The stretcher's pocket holes begin in its underside, the countersinks in its top. */
  @Test
  void aPartWithoutAFaceMarkLiesByWhereItWillLook() {
    StepText pockets = step("sideboard", "Drill the pocket holes");
    assertTrue(
        said(pockets).contains("D × 2 with the face up that will look down"), pockets::toString);
  }

  /** The legs splay, so their upper ends lean towards the middle. */
  @Test
  void leaningWallsAreToldWithTheirWay() {
    StepText dados = step("step-stool", "Cut the leaning dados");
    assertTrue(
        said(dados).contains("from the face down, the walls lean towards the middle of the part."),
        dados::toString);
  }

  /** Only what the maker does is counted; crossed slots hold themselves; a stand is levelled. */
  @Test
  void smallWordsAreRight() {
    StepText dividers = step("sewing-box", "Glue the short dividers");
    assertFalse(dividers.tools().contains("bar clamps"), dividers::toString);
    assertTrue(dividers.tools().contains("square"), dividers::toString);
    assertTrue(said(dividers).contains("cross at right angles"), dividers::toString);
    assertEquals("17 min", step("sewing-box", "Set up the stand").working());
    for (StepText each : all(ENGLISH_STEPS)) {
      assertFalse(said(each).contains("Line the jig up with each line:"), each::toString);
      assertFalse(said(each).contains("neither is seen"), each::toString);
      assertFalse(said(each).contains("the end of a narrow part"), each::toString);
      assertFalse(said(each).contains("with the plug named"), each::toString);
      assertFalse(said(each).contains("as thick as the plywood"), each::toString);
    }
    assertTrue(said(step("bookcase", "Tie the piece")).contains("wall plug named for masonry"));
  }

  @Test
  void aWallPlugIsNoPlug() {
    assertEquals(
        List.of("Wall plug"),
        Glossary.used("Take the wall plug.", Words.ENGLISH).stream()
            .map(Glossary.Entry::term)
            .toList());
    assertEquals(
        List.of("Plug", "Wall plug"),
        Glossary.used("Glue a plug in; take wall plugs.", Words.ENGLISH).stream()
            .map(Glossary.Entry::term)
            .toList());
  }
}
