package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import storyrod.planset.Paper;

/** The German edition of all projects of the repository. */
class GermanEditionTest {
  private static final Path TEMPLATES = Path.of("templates");

  /** The projects of the repository, and what they are called in German. */
  private static final Map<String, String> TITLES =
      Map.of(
          "bookcase", "Bücherregal",
          "dining-table", "Esstisch",
          "nightstand", "Nachttisch",
          "sewing-box", "Nähkasten auf Gestell",
          "sideboard", "Anrichte",
          "step-stool", "Tritthocker",
          "window-bench", "Fensterbank");

  private static final List<String> EDITIONS = List.of("publish", "helper", "preview", "record");

  private static final Pattern WORD = Pattern.compile("[\\p{L}’']{2,}");

  /** The codes of the projects' currencies (ISO 4217) are words of no language. */
  private static final Pattern NO_WORDS = Pattern.compile("\\b(?:USD|EUR)\\b");

  private static final Pattern TEXT = Pattern.compile("\"([^\"]*)\"");

  private static Set<String> words(String text) {
    return WORD.matcher(text)
        .results()
        .map(found -> found.group().toLowerCase(Locale.ROOT))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> ofProperties(Path file) throws IOException {
    Properties properties = new Properties();
    properties.load(Files.newBufferedReader(file));
    return words(String.join(" ", properties.values().stream().map(String::valueOf).toList()));
  }

  /** The words of a template's texts; those of one word may be keys. */
  private static Set<String> ofTemplate(Path file) throws IOException {
    return words(
        TEXT.matcher(Files.readString(file))
            .results()
            .map((MatchResult found) -> found.group(1))
            .filter(text -> text.contains(" ") && !text.startsWith(".*"))
            .collect(Collectors.joining(" ")));
  }

  /** All that the descriptions in a project's folder are written with. */
  private static Set<String> ofFolder(Path project) throws IOException {
    Set<String> words = new TreeSet<>();
    try (DirectoryStream<Path> files = Files.newDirectoryStream(project, "*.yaml")) {
      for (Path file : files) {
        words.addAll(words(Files.readString(file)));
      }
    }
    return words;
  }

  private static Set<String> all(List<Set<String>> sets) {
    return sets.stream().flatMap(Set::stream).collect(Collectors.toCollection(TreeSet::new));
  }

  /** The words of English pages and of the description that German pages do not use. */
  private static Set<String> english(String name) throws IOException {
    Path project = Path.of("projects", name);
    Set<String> english =
        all(
            List.of(
                ofProperties(TEMPLATES.resolve("words/en.properties")),
                ofTemplate(TEMPLATES.resolve("steps/text.ftl")),
                ofFolder(project)));
    english.removeAll(
        all(
            List.of(
                ofProperties(TEMPLATES.resolve("words/de.properties")),
                ofTemplate(TEMPLATES.resolve("steps/text_de.ftl")),
                ofProperties(project.resolve("templates/words/de.properties")))));
    return english;
  }

  static Stream<Arguments> allEditions() {
    return TITLES.entrySet().stream()
        .flatMap(
            project ->
                EDITIONS.stream()
                    .map(edition -> Arguments.of(project.getKey(), project.getValue(), edition)));
  }

  @Test
  void everyProjectIsLookedAt() throws IOException {
    try (Stream<Path> folders = Files.list(Path.of("projects"))) {
      assertEquals(
          new TreeSet<>(TITLES.keySet()),
          folders
              .map(each -> each.getFileName().toString())
              .collect(Collectors.toCollection(TreeSet::new)));
    }
  }

  @ParameterizedTest
  @MethodSource("allEditions")
  void noEnglishWordIsLeftOnAnyPage(String project, String title, String edition)
      throws IOException {
    PrintedProjects german = PrintedProjects.named(project, "de");
    byte[] pdf = german.on(Paper.A4, edition).pdf();
    Set<String> english = english(project);
    assertTrue(english.size() > 800 && english.contains("the"), english.size() + " words");
    try (PDDocument document = Loader.loadPDF(pdf)) {
      String text = PageText.of(document);
      assertTrue(text.contains(title), text);
      assertEquals("de", document.getDocumentCatalog().getLanguage());
      assertEquals(title, document.getDocumentInformation().getTitle());
      Set<String> found = words(NO_WORDS.matcher(text).replaceAll(" "));
      found.retainAll(english);
      assertEquals(Set.of(), found);
    }
  }

  /** The term of ISO 5456-2 in its German edition, from memory. */
  @Test
  void theKindOfProjectionHasTheTermOfTheTrade() throws IOException {
    byte[] pdf = PrintedProjects.named("window-bench", "de").on(Paper.A4, "publish").pdf();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      String text = PageText.of(document);
      assertTrue(text.contains("Methode 3") && !text.contains("Quadrant"), text);
    }
  }
}
