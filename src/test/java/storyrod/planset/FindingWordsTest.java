package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import storyrod.words.Words;

/** What every message case says of a warning or an advice is said in German too. */
class FindingWordsTest {
  private static final Path CASES = Path.of("src/test/resources/messages");
  private static final Pattern SAID =
      Pattern.compile(
          "\\s*# (error|warning|advice): (?:\\S+:\\d+:)?(?:[\\d-]+ )?(.*) \\[([a-z0-9-]+)]\\s*");
  private static final Pattern HINT = Pattern.compile("\\s*# hint: (.*)");
  private static final FindingWords GERMAN = new FindingWords(Words.load("de"));

  /** A sentence of a check, and whether it is a hint. */
  private record Sentence(String code, String text, boolean hint) {
    boolean isGerman() {
      String told = hint ? GERMAN.hint(code, text) : GERMAN.message(code, text);
      return !told.equals(text);
    }
  }

  private static List<Sentence> sentences() throws IOException {
    List<Sentence> all = new ArrayList<>();
    try (Stream<Path> files = Files.walk(CASES)) {
      for (Path file : files.filter(each -> each.toString().endsWith(".yaml")).sorted().toList()) {
        add(Files.readAllLines(file), all);
      }
    }
    return all;
  }

  private static void add(List<String> lines, List<Sentence> all) {
    String code = "";
    for (String line : lines) {
      Matcher said = SAID.matcher(line);
      Matcher hint = HINT.matcher(line);
      if (said.matches()) {
        code = said.group(1).equals("error") ? "" : said.group(3);
        all.add(new Sentence(code, said.group(2), false));
      } else if (hint.matches()) {
        all.add(new Sentence(code, hint.group(1), true));
      }
    }
    all.removeIf(each -> each.code().isEmpty() || each.hint() && isForTheMaker(each.text()));
  }

  /** Hints that say what to write are not printed. */
  private static boolean isForTheMaker(String hint) {
    return hint.contains("`")
        || hint.matches("(write|name|give|add) .* (item|stock|description|project)\\b.*");
  }

  @Test
  void eachSentenceOfTheCasesIsSaidInGerman() throws IOException {
    List<Sentence> all = sentences();
    assertTrue(all.size() > 200, all.size() + " sentences");
    assertEquals(List.of(), all.stream().filter(each -> !each.isGerman()).toList());
  }

  @Test
  void valuesGoOverAndPartsOfSentencesAreTranslated() {
    assertEquals(
        "Platte (Y) kommt in Nuten oder Falze von 6,5 mm, 3 im Ganzen, aber solche Platten sind"
            + " 6,0 bis 6,9 mm dick (EN 315)",
        GERMAN.message(
            "sheet-in-slot",
            "Platte (Y) goes into slots of 6,5 mm, 3 in all, but such sheets come"
                + " from 6.0 to 6.9 mm thick (EN 315)"));
    assertEquals(
        "der Zapfen von A ist 3 mm dick in 20 mm: weniger als ein Viertel, darum schwach",
        GERMAN.message(
            "tenon-thickness",
            "the tenon of A is 3 mm thick in 20 mm: less than a quarter, and so it is weak"));
  }

  @Test
  void whatNoPatternFitsStaysAsItIs() {
    assertEquals("a new thing", GERMAN.message("tenon-thickness", "a new thing"));
  }
}
