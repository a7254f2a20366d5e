package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever is wrong with what comes in: one clear message, its place, and what to do. */
class BadInputTest {
  private static final String AT = "project.yaml:%d:%d: error: %s";

  @TempDir Path folder;

  /** Where a stretch of the bench is put another way, and what is said about it. */
  static Stream<Arguments> slips() {
    return Stream.of(
        slip("depth: 17 1/2", "depht: 17 1/2", "depth", "unknown-name", "did you mean `depht`?"),
        slip(
            "stock: ash-thick\n    x: left-side.right to",
            "stok: ash-thick\n    x: left-side.right to",
            "stok",
            "unknown-key",
            "did you mean `stock`?"),
        slip(
            "into: left-stile",
            "into: left-stiel",
            "left-stiel",
            "unknown-name",
            "did you mean `left-stile`?"),
        slip(
            "box-height: 9",
            "box-height: box-depth + box-height",
            "box-depth + box-height",
            "cycle",
            ""),
        slip(
            "stile: 2\n",
            "stile: 2 apples\n",
            "apples",
            "formula",
            "lengths have mm, cm, m, in, ft"),
        slip("skirt: 1 ", "skirt: 3.5.2 ", ".2", "formula", "with one point"),
        slip("skirt: 1 ", "skirt: 1/0 ", "1/0", "division-by-zero", "another number"),
        slip("skirt: 1 ", "skirt: 1,5 ", ",5", "formula", "with one point"),
        slip(
            "skirt: 1 ",
            "skirt: 99999999999999999999 ",
            "99999999999999999999",
            "too-large",
            "look at the units"),
        slip(
            "y: 0 to ash.thickness\n        z: left-side.bottom",
            "y: 0 to 0 - ash.thickness\n        z: left-side.bottom",
            "0 to 0 - ash.thickness",
            "range",
            "smaller end first"),
        slip(
            "to left-side.right + bay + ply.thickness",
            "to left-side.right + bay + 3/4",
            "left-partition:",
            "no-thickness",
            "ply.thickness"),
        slip(
            "bay + ply.thickness\n    y: left-side.front to back.front\n    z: bottom.top to",
            "bay + ply.thickness\n    y: left-side.front to back.front\n    z: bottom.top + 1/64 to",
            "dado: {end: left-partition.bottom",
            "parts-do-not-meet",
            "bottom.top"),
        slip(
            "maker: Example",
            "maker: \ud83e\ude91 Example",
            "\ud83e\ude91",
            "unprintable",
            "another way"),
        slip(
            "project: Window bench",
            "project: \u672c\u68da",
            "\u672c",
            "unprintable",
            "another way"),
        slip("maker: Example", "maker: [Example", "summary", "yaml", "close every"),
        slip("\nsizes:", "\n\tsizes:", "\tsizes", "yaml", "spaces"),
        slip(
            "x: case-width - ply.thickness to",
            "x: case-width-ply.thickness to",
            "case-width-ply.thickness",
            "unknown-stock",
            "`case-width - ply.thickness`"),
        slip(
            "x: case-width - ply.thickness to",
            "x: case-width \u2013 ply.thickness to",
            "\u2013",
            "formula",
            "plain hyphen"),
        slip(
            "end: bottom.left, into: left-side",
            "end: bottom.front, into: left-side",
            "dado: {end: bottom.front",
            "parts-do-not-meet",
            "did you mean `bottom.left` here?"),
        slip("count: 5, brad", "count: 100000, brad", "100000", "count", "write a number"));
  }

  private static Arguments slip(String from, String to, String at, String code, String hint) {
    return Arguments.of(from, to, at, code, hint);
  }

  @ParameterizedTest(name = "{3}: {1}")
  @MethodSource("slips")
  void slipIsToldWithItsPlaceAndWhatToDo(
      String from, String to, String at, String code, String hint) {
    Path out = folder.resolve("out");
    Shell.write(out.resolve("plan-set.pdf"), "an earlier one");
    Map<String, byte[]> before = Shell.files(out);
    String text = Shell.bench(from, to);
    Path project = Shell.write(folder.resolve("p/project.yaml"), text);
    for (Shell shell : new Shell[] {Shell.build(project, out), Shell.check(project)}) {
      String told = shell.out() + shell.err();
      assertEquals(1, shell.code(), told);
      assertTold(told, text, at, code, hint);
    }
    Same.assertSame(before, Shell.files(out));
  }

  private static final Pattern ERROR =
      Pattern.compile(
          "project\\.yaml:(\\d+):(\\d+): error: (.+) \\[([a-z0-9-]+)]\\n(?s:(.*?))(?=\\n\\n)");

  private static void assertTold(String told, String text, String at, String code, String hint) {
    Matcher error = ERROR.matcher(told);
    boolean found = false;
    while (error.find()) {
      String line = text.lines().toList().get(Integer.parseInt(error.group(1)) - 1);
      String rest =
          line.substring(line.offsetByCodePoints(0, Integer.parseInt(error.group(2)) - 1));
      found |=
          error.group(4).equals(code)
              && line.contains(at.strip())
              && rest.strip().startsWith(at.strip()) | code.equals("yaml")
              && error.group(5).contains("  hint: ")
              && error.group(5).contains(hint);
    }
    assertTrue(found, told);
    assertPlain(told);
  }

  private static void assertPlain(String told) {
    assertFalse(
        Pattern.compile("\\tat |Exception|jackson|snakeyaml|\\bnull\\b|bug:").matcher(told).find(),
        told);
  }

  private void assertRefused(Path given, String start) {
    Shell shell = Shell.build(given, folder.resolve("out"));
    assertEquals(1, shell.code());
    assertTrue(shell.err().startsWith(start), shell.err());
    assertTrue(shell.err().contains("  hint: "), shell.err());
    assertPlain(shell.err());
    assertFalse(Files.exists(folder.resolve("out")));
  }

  @Test
  void missingFile() {
    Path missing = folder.resolve("nothing.yaml");
    assertRefused(missing, missing + ":1:1: error: there is no such file or folder [no-project]");
  }

  @Test
  void folderWithoutADescription() {
    assertRefused(
        folder,
        folder.resolve("project.yaml")
            + ":1:1: error: the folder holds no project.yaml [no-project]");
  }

  @Test
  void folderInPlaceOfADescription() throws IOException {
    Files.createDirectory(folder.resolve("project.yaml"));
    assertRefused(
        folder,
        folder.resolve("project.yaml") + ":1:1: error: this is a folder, not a file [no-project]");
  }

  @Test
  void emptyFile() {
    for (String nothing : new String[] {"", "\n\n", "# only a remark\n", "\ufeff", "---\n"}) {
      Path file = Shell.write(folder.resolve("project.yaml"), nothing);
      assertRefused(file, file + ":1:1: error: there is nothing in this file [empty-file]");
    }
  }

  @Test
  void textInAnotherEncodingIsToldAtItsFirstForeignByte() throws IOException {
    Path file = folder.resolve("project.yaml");
    Files.write(file, "project: A\nmaker: Caf\u00e9\n".getBytes(StandardCharsets.ISO_8859_1));
    assertRefused(
        file, file + ":2:11: error: the file is no longer text in UTF-8 from here on [not-utf-8]");
  }

  @Test
  void binaryFile() throws IOException {
    Path file = folder.resolve("project.yaml");
    Files.write(file, new byte[] {'p', ':', ' ', 0, 1, 2, 3, 10, 0});
    assertRefused(file, file + ":1:4: error: a character that no text should have [yaml]");
  }

  @Test
  void brokenUtf16() throws IOException {
    Path file = folder.resolve("project.yaml");
    Files.write(file, Shell.bench("\n", "\n").getBytes(StandardCharsets.UTF_16));
    assertRefused(
        file, file + ":1:1: error: the file is no longer text in UTF-8 from here on [not-utf-8]");
  }

  @Test
  void bracketsWithoutEnd() {
    Path file = Shell.write(folder.resolve("project.yaml"), "a: " + "[".repeat(20_000));
    assertRefused(file, file + ":1:");
  }

  @Test
  void formulaOfEndlessBrackets() {
    String deep = "(".repeat(20_000) + "1" + ")".repeat(20_000);
    Path file =
        Shell.write(
            folder.resolve("project.yaml"), Shell.bench("skirt: 1 ", "skirt: " + deep + " "));
    assertRefused(
        file, file + ":24:10: error: a formula of 40001 characters is too long [formula]");
  }

  @Test
  void tenThousandWrongLines() {
    String wrong = "k: 1\n".repeat(10_000);
    Path file = Shell.write(folder.resolve("project.yaml"), "project: x\n" + wrong);
    assertRefused(file, file + ":1:1: error: this project has no 'units' [missing-key]");
  }

  @Test
  void tenThousandRemarksLineEndsOfWindowsAndAMarkAreNoFaults() {
    String text = "\ufeff" + Shell.bench("\n", "\r\n") + "# a remark\r\n".repeat(10_000);
    Path file = Shell.write(folder.resolve("project.yaml"), text);
    Shell shell = Shell.check(file);
    assertEquals(0, shell.code(), shell.out());
    assertTrue(
        shell.out().contains(AT.formatted(112, 3, "").replace("error: ", "advice: top is")),
        shell.out());
  }
}
