package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import storyrod.description.Description;
import storyrod.description.DescriptionReader;
import storyrod.description.DiagnosticPrinter;
import storyrod.description.Diagnostics;
import storyrod.description.EntryType;
import storyrod.description.FolderLibrary;
import storyrod.description.Key;
import storyrod.description.Kinds;
import storyrod.description.SourceText;
import storyrod.measure.Length;
import storyrod.planset.Printable;

class ReferenceTest {
  private static final String PAGE = ReferenceCommand.page();
  private static final Pattern RESULT =
      Pattern.compile("  ([a-z-]+): [^#]*# = (-?[0-9.]+) (in|mm)\\b.*");

  /** Reads the files that chapters and examples name. */
  private static final DescriptionReader READER =
      new DescriptionReader(
          Pipeline.VOCABULARY,
          Printable::has,
          new FolderLibrary(Path.of("src/main/resources/storyrod/reference/files")));

  static List<SourceText> chapters() {
    return Shipped.all("reference/chapters");
  }

  static List<SourceText> examples() {
    return Shipped.all("reference/examples");
  }

  @ParameterizedTest
  @MethodSource("chapters")
  void chapterIsReadWithoutAFaultAndItsRemarksAreTrue(SourceText chapter) {
    Diagnostics diagnostics = new Diagnostics();
    Description read = READER.read(chapter, diagnostics).orElseThrow();
    assertEquals("no faults\n", DiagnosticPrinter.print(diagnostics.sorted()));
    for (String line : chapter.text().lines().toList()) {
      Matcher result = RESULT.matcher(line);
      if (result.matches()) {
        Length size = read.sizes().get(result.group(1));
        double unit = result.group(3).equals("in") ? 25.4 : 1;
        assertEquals(Double.parseDouble(result.group(2)), size.toMm() / unit, 1e-9, line);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("examples")
  void exampleIsPlannedWithoutAnError(SourceText example) {
    Diagnostics diagnostics = new Diagnostics();
    assertTrue(
        READER
            .read(example, diagnostics)
            .flatMap(read -> Pipeline.plan(read, diagnostics))
            .isPresent(),
        () -> DiagnosticPrinter.print(diagnostics.sorted()));
  }

  @Test
  void everyKindAndKeyIsOnThePage() {
    Kinds.of(Pipeline.VOCABULARY).forEach(ReferenceTest::assertTold);
  }

  private static void assertTold(EntryType kind, String id) {
    int start = PAGE.indexOf("<section id=\"" + id + "\">");
    assertTrue(start > 0, id);
    String section = PAGE.substring(start, PAGE.indexOf("</section>", start));
    assertTrue(section.contains(escaped(kind.summary())), id);
    for (Key key : kind.keys()) {
      assertTrue(section.contains("<code>" + key.name() + "</code>"), id + "." + key.name());
      assertTrue(section.contains(escaped(key.help())), id + "." + key.name());
      key.standard()
          .ifPresent(
              standard -> assertTrue(section.contains("<code>" + standard.inch() + "</code>"), id));
    }
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace("'", "&#39;");
  }

  @Test
  void everyLinkLeadsSomewhereOnThePageAndNoneElsewhere() {
    Matcher link = Pattern.compile("href=\"([^\"]*)\"").matcher(PAGE);
    int links = 0;
    while (link.find()) {
      assertTrue(PAGE.contains("id=\"" + link.group(1).substring(1) + "\""), link.group());
      links++;
    }
    assertTrue(links > 40, "links: " + links);
    assertTrue(!PAGE.contains("src=") && !PAGE.contains("http"), "the page needs another file");
  }

  @Test
  void subAssemblyIsShownWithItsSizesAndText() {
    String text =
        """
        # A plinth under a case.
        # It stands back at the front.

        sizes:
          height: 3        # over the floor
          wide: 2 * height
        stock:
          board:           # what it is made of
            kind: solid
        parts:
          rail: {stock: board}
        """;
    String page = ReferenceCommand.page(List.of(new SourceText("plinth.yaml", text)));
    String section = page.substring(page.indexOf("<section id=\"use-plinth\">"));
    assertTrue(section.contains("A plinth under a case. It stands back at the front."), section);
    assertTrue(
        section.contains("<code>height</code></td><td><code>3</code></td><td>over the floor"));
    assertTrue(section.contains("<code>board</code></td><td></td><td>what it is made of"), section);
    assertTrue(!section.contains("<code>kind</code></td>"), section);
    assertTrue(section.contains("rail: {stock: board}"), section);
  }

  @Test
  void goesToAFileOrToTheScreen(@TempDir Path folder) throws Exception {
    assertEquals(PAGE, Shell.run("reference").out());
    Path file = folder.resolve("new/reference.html");
    assertEquals(0, Shell.run("reference", "--out", file.toString()).code());
    assertEquals(PAGE, Files.readString(file));
    assertEquals(1, Files.list(file.getParent()).count());
    assertEquals(0, Shell.run("schema", "--out", folder.resolve("s.json").toString()).code());
    assertEquals(Shell.run("schema").out(), Files.readString(folder.resolve("s.json")));
    assertEquals(2, Shell.run("schema", "--out", " ").code());
    Shell refused = Shell.run("schema", "--out", file.resolve("x").toString());
    assertEquals(1, refused.code());
    assertTrue(refused.err().contains("is a file, not a folder"), refused.err());
  }
}
