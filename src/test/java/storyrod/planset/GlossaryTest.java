package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.cli.PrintedProjects;
import storyrod.cli.PrintedProjects.Printed;
import storyrod.words.Words;

/** The glossary has the trade terms that the plan set uses, and no others. */
class GlossaryTest {
  private static List<String> terms(String text) {
    return Glossary.used(text, Words.ENGLISH).stream().map(Glossary.Entry::term).toList();
  }

  @Test
  void aTermIsFoundInEachOfItsForms() {
    assertEquals(List.of("Dado"), terms("Cut the Dados."));
    assertEquals(
        List.of("Crosscut sled", "Kerf"),
        terms("the kerf of a\ncrosscut sled").stream()
            .filter(term -> !term.equals("Crosscut"))
            .toList());
  }

  /** Across the grain it is a dado, along it a groove: the one is no heading for the other. */
  @Test
  void aStoppedGrooveIsNoStoppedDado() {
    List<String> terms = terms("Rout the stopped grooves.");
    assertTrue(terms.contains("Stopped groove"), terms.toString());
    assertTrue(!terms.contains("Stopped dado"), terms.toString());
  }

  @Test
  void aTermInsideAnotherWordIsNone() {
    assertEquals(List.of(), terms("Ripple, reripped, endgrained, trail."));
  }

  @Test
  void germanTermsAreFoundAtTheBoundsOfTheirWords() {
    List<String> found =
        Glossary.used("ÜBERBLATTUNGEN, Zapfenlöcher; Übernuten, Nutöl", Words.load("de")).stream()
            .map(Glossary.Entry::term)
            .toList();
    assertEquals(List.of("Überblattung", "Zapfenloch"), found);
  }

  /** Whoever adds a term says what it means, in words that do not only repeat it. */
  @Test
  void everyTermHasItsMeaning() {
    for (String key : Words.ENGLISH.byKey().keySet()) {
      if (key.startsWith("term.")) {
        String name = key.replace(".words", "");
        assertTrue(Words.ENGLISH.has(name) && Words.ENGLISH.has(name + ".words"), key);
        assertTrue(Words.ENGLISH.say(name).endsWith("."), name);
      }
    }
  }

  @TestFactory
  List<DynamicTest> thePagesUseEachTermAndEachTermOfTheStepsHasItsEntry() {
    return List.of("step-stool", "sewing-box").stream()
        .map(name -> DynamicTest.dynamicTest(name, () -> assertTerms(name)))
        .toList();
  }

  private static void assertTerms(String project) throws java.io.IOException {
    PrintedProjects projects = PrintedProjects.named(project);
    Paper paper = projects.usualPaper();
    Printed printed = projects.on(paper, "publish");
    FinishedPdf pdf = FinishedPdf.of(printed.pdf(), printed.set(), paper);
    int glossary = page(pdf, "glossary.title");
    String before = text(printed, 2, glossary - 1);
    String listed = text(printed, glossary, pdf.count());
    Set<String> known = known();
    int found = 0;
    for (String term : known) {
      String forms = Words.ENGLISH.say(term + ".words");
      String head = forms.split("\\|")[0].toLowerCase(Locale.ROOT);
      String row = head + " " + Words.ENGLISH.say(term).toLowerCase(Locale.ROOT);
      boolean isListed = listed.contains(row);
      boolean isUsed = Arrays.stream(forms.split("\\|")).anyMatch(form -> has(before, form));
      found += isListed ? 1 : 0;
      assertTrue(isUsed || !isListed, term + " is listed and nowhere used");
    }
    String steps = text(printed, page(pdf, "tools.title"), page(pdf, "finish.title"));
    assertEquals(List.of(), missing(known, steps, listed));
    assertTrue(found > 15, found + " terms");
  }

  /** The terms that the steps use in one of their forms and the glossary does not list. */
  private static List<String> missing(Set<String> known, String text, String listed) {
    return known.stream()
        .filter(
            term ->
                Arrays.stream(Words.ENGLISH.say(term + ".words").split("\\|"))
                    .anyMatch(form -> has(text, form)))
        .filter(
            term ->
                !listed.contains(
                    Words.ENGLISH.say(term + ".words").split("\\|")[0].toLowerCase(Locale.ROOT)))
        .toList();
  }

  private static boolean has(String text, String form) {
    return (" " + text.replaceAll("[^\\p{L}-]+", " ") + " ")
        .contains(" " + form.toLowerCase(Locale.ROOT) + " ");
  }

  private static Set<String> known() {
    return Words.ENGLISH.byKey().keySet().stream()
        .filter(key -> key.startsWith("term.") && !key.endsWith(".words"))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static int page(FinishedPdf pdf, String title) {
    String text = FinishedPdf.squeezed(Words.ENGLISH.say(title));
    return pdf.bookmarks().stream()
        .filter(each -> each.text().equals(text))
        .findFirst()
        .orElseThrow()
        .target();
  }

  private static String text(Printed printed, int from, int to) {
    return IntStream.rangeClosed(from, to)
        .mapToObj(page -> PdfText.text(printed.pdf(), page))
        .collect(Collectors.joining(" "))
        .replaceAll("\\s+", " ")
        .toLowerCase(Locale.ROOT);
  }
}
