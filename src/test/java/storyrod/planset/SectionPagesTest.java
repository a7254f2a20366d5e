package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import storyrod.drawing.AllProjects;
import storyrod.drawing.Drawing.Balloon;
import storyrod.planset.Preview.Named;
import storyrod.words.Words;

/** What the templates of some sections make of a project, edition by edition. */
class SectionPagesTest {
  private static final PlanSet BENCH = AllProjects.named("window-bench");
  private static final PlanSet SIDEBOARD = AllProjects.named("sideboard");
  private static final PlanSet TABLE = AllProjects.named("dining-table");
  private static final Templates TEMPLATES = Templates.SHARED;

  private static Printing printing(String edition) {
    Printing usual = Printing.usual(Words.ENGLISH);
    return new Printing(
        TEMPLATES,
        Words.ENGLISH,
        Edition.named(edition, TEMPLATES).orElseThrow(),
        usual.paper(),
        usual.choice());
  }

  private static Pages pages(PlanSet set, String edition) {
    Printing printing = printing(edition);
    Print print = Print.of(set.piece(), set.build(), printing);
    return Pages.of(set, print, new StepTexts(set.piece(), set.build()).in(printing));
  }

  private static String page(String section, Pages pages) {
    return TEMPLATES.render(Sections.file(section), Words.ENGLISH, pages.data());
  }

  /** One field for several numbers would leave open which of them was measured. */
  @Test
  void eachOfSeveralChecksHasAFieldOfItsOwn() {
    Pages helper = pages(BENCH, "helper");
    String page = page("steps", helper);
    List<StepEntry> several =
        helper.steps().all().stream()
            .filter(step -> step.pictures().isEmpty())
            .filter(step -> step.text().settings().size() > 1)
            .filter(step -> step.text().settings().size() <= StepEntry.MOST_FIELDS)
            .toList();
    assertTrue(several.size() > 5, several.size() + " steps");
    assertEquals(
        several.stream().mapToInt(step -> step.text().settings().size()).sum(),
        count("<td class=\"measured\"", page));
    assertEquals(
        helper.steps().all().size() - several.size(),
        count("<td class=\"blank\">Measured</td>", page));
    assertEquals(several.size(), count("<td class=\"blank\">Remarks</td>", page));
    assertEquals(0, count("class=\"measured\"", page("steps", pages(BENCH, "publish"))));
  }

  private static long count(String sought, String page) {
    return Pattern.compile(Pattern.quote(sought)).matcher(page).results().count();
  }

  /** A name of several lines makes no row high where its tool has several. */
  @Test
  void theNameOfAToolStandsBesideAllOfItsRows() {
    Pages pages = pages(SIDEBOARD, "publish");
    String page = page("tools", pages);
    for (TableFlow.Part<ToolPages.Row> part : pages.tools().set()) {
      Map<String, Integer> rows = new TreeMap<>();
      part.rows().forEach(row -> rows.merge(row.tool(), 1, Integer::sum));
      rows.forEach(
          (tool, count) -> {
            String cell = "<td rowspan=\"" + count + "\"><b>" + tool + "</b></td>";
            assertTrue(page.contains(cell), cell);
          });
    }
  }

  @Test
  void theAllowanceOfBoardsIsExplained() {
    String told = Words.ENGLISH.say("shopping.allowance");
    assertTrue(page("lists/shopping", pages(BENCH, "publish")).contains(told));
  }

  /** A buyer reads what each letter of the picture is, and no size. */
  @Test
  void thePreviewNamesThePartsOfItsPicture() {
    for (PlanSet set : List.of(BENCH, SIDEBOARD, TABLE)) {
      Pages pages = pages(set, "preview");
      TreeSet<String> shown = new TreeSet<>();
      set.drawings().exploded().whole().elements().stream()
          .filter(Balloon.class::isInstance)
          .map(Balloon.class::cast)
          .filter(balloon -> balloon.count() == 0)
          .forEach(balloon -> shown.add(balloon.mark()));
      List<Named> parts = pages.preview().parts();
      assertEquals(shown, new TreeSet<>(parts.stream().map(Named::mark).toList()));
      String page = page("preview", pages);
      for (Named part : parts) {
        assertFalse(Pattern.compile("\\d").matcher(part.part()).find(), part.part());
        String row = "<td class=\"mark\">" + part.mark() + "</td><td>" + part.part() + "</td>";
        assertTrue(page.contains(row), row);
      }
    }
  }

  @Test
  void aBuyerIsToldThatThereIsNoLicence() {
    String told = Words.ENGLISH.say("licence.none");
    assertEquals(List.of(told), pages(TABLE, "publish").licence().lines());
    assertEquals(List.of(), pages(TABLE, "record").licence().lines());
    assertFalse(pages(BENCH, "publish").licence().lines().contains(told));
  }

  @Test
  void costsNameTheirCurrencyWhereTheMakerTellsIt() {
    String page = page("lists/shopping", pages(BENCH, "publish"));
    assertTrue(page.contains("Cost, USD") && page.contains("Total in USD"), page);
    assertFalse(page.contains(">Cost</th>"), page);
    Texts texts = new Texts(BENCH.piece().description().printed(), Words.ENGLISH);
    assertTrue(csvHead(Shopping.of(BENCH, texts), texts).endsWith(",cost_USD"));
    assertTrue(csvHead(Shopping.NONE, texts).endsWith(",cost"));
    assertEquals("Total in USD", new RecordedSums(BENCH, texts).costs().total().title());
    assertEquals("Total", new RecordedSums(BENCH, texts).hours().total().title());
  }

  private static String csvHead(Shopping shopping, Texts texts) {
    return new String(ShoppingCsv.write(shopping, texts), StandardCharsets.UTF_8)
        .lines()
        .findFirst()
        .orElseThrow();
  }
}
