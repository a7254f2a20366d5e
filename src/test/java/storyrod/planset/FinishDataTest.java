package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import storyrod.build.PreFinished;
import storyrod.cli.Pipeline;
import storyrod.description.Diagnostics;
import storyrod.description.FinishEntry;
import storyrod.description.SourceText;
import storyrod.drawing.AllProjects;
import storyrod.wood.Cures;
import storyrod.words.Words;

/** The finishing schedule and what is masked. */
class FinishDataTest {
  private static final String BOARD =
      """
      project: Board
      units: inch
      stock:
        oak: {kind: solid, species: "oak, white", thickness: 3/4}
      parts:
        board: {stock: oak, x: 0 to 14, y: 0 to 9, z: 0 to 3/4, grain: x}
      finish: {product: oil-based varnish, kind: oil-varnish, coats: 2%s}
      """;

  private static FinishData finish(PlanSet set) {
    Texts texts = new Texts(set.piece().description().format(), Words.ENGLISH);
    return FinishData.of(set, new Notes(List.of(), List.of()), texts).orElseThrow();
  }

  private static Map<String, String> rows(String more) {
    SourceText source = new SourceText("project.yaml", BOARD.formatted(more));
    PlanSet set = Pipeline.planSet(source, new Diagnostics()).orElseThrow();
    Map<String, String> rows = new TreeMap<>();
    finish(set).rows().forEach(row -> rows.put(row.label(), row.value()));
    return rows;
  }

  @Test
  void theLabelsOwnFiguresComeFirst() {
    Map<String, String> rows = rows(", sheen: satin, cure-days: 12, sand-to: 220");
    assertEquals("satin", rows.get("Sheen"));
    assertEquals("after 12 days", rows.get("Fully hardened"));
    assertEquals("varnish on oil base", rows.get("Sort of product"));
    assertTrue(rows.get("Sand").contains("220"), rows.toString());
  }

  @Test
  void whatTheLabelWasNotAskedIsARangeWithItsWarning() {
    Map<String, String> rows = rows("");
    assertEquals(
        "after 7 to 30 days: a range of common practice, the label rules",
        rows.get("Fully hardened"));
    assertEquals("to be settled on the test piece", rows.get("Sheen"));
  }

  @Test
  void everySortOfFinishHasWordsAndEveryCureIsOfASort() {
    for (String kind : FinishEntry.KINDS) {
      assertTrue(Words.ENGLISH.has("finish.kind." + kind), kind);
    }
    for (String sheen : FinishEntry.SHEENS) {
      assertTrue(Words.ENGLISH.has("finish.sheen." + sheen), sheen);
    }
    for (Cures.Cure cure : Cures.all()) {
      assertTrue(FinishEntry.KINDS.contains(cure.kind()), cure.kind());
      assertTrue(cure.least() > 0 && cure.least() < cure.most(), cure.kind());
    }
  }

  /** Wherever a joint face is finished early, its mark and that of what is glued there are told. */
  @Test
  void everyJointThatNeedsBareWoodIsMasked() {
    int joints = 0;
    for (AllProjects.Sample sample : AllProjects.all()) {
      PlanSet set = sample.set();
      PreFinished early = new PreFinished(set.piece());
      List<Masks.Mask> masks = finish(set).masks();
      for (String part : early.parts()) {
        String mark = set.piece().part(part).mark();
        for (var joint : early.masked(part)) {
          joints++;
          String other = joint.first().equals(part) ? joint.second() : joint.first();
          String glued = "where " + set.piece().part(other).mark() + " is glued on";
          assertTrue(
              masks.stream()
                  .anyMatch(
                      mask ->
                          List.of(mask.on().split(", ")).contains(mark)
                              && mask.what().contains(glued)),
              sample.name() + ": " + mark + " " + glued + " " + masks);
        }
      }
    }
    assertTrue(joints > 0, "no project has a face that is finished early and glued to");
  }
}
