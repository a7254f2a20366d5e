package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import storyrod.words.Words;

/** A project's options, planned and compared. The project and its prices are invented. */
class OptionTest {
  private static final String SHELF =
      """
      project: Wall shelf
      units: inch
      sizes: {width: 30}
      numbers: {shelves: 3}
      stock:
        wood: {kind: solid, species: "oak, northern red", thickness: 3/4, price: 8 per board-foot}
      options:
        plywood:
          say: All of it from a sheet.
          stock:
            wood: {kind: sheet, species: birch plywood, thickness: 18 mm, sheet: 96 x 48, price: 70 per sheet}
        narrow: {sizes: {width: 20}, numbers: {shelves: 2}}
      parts:
        left-side:  {stock: wood, x: 0 to wood.thickness, y: 0 to 9, z: 0 to 36, grain: z}
        right-side: {stock: wood, x: width - wood.thickness to width, y: 0 to 9, z: 0 to 36, grain: z}
        shelf:
          stock: wood
          repeat: {count: shelves, along: z, over: 0 to 36, size: wood.thickness}
          x: left-side.right to right-side.left
          y: 0 to 9
          z: each.bottom to each.top
          grain: x
      joints:
        - dado: {end: shelf.left, into: left-side, depth: 1/4, glue: yes}
        - dado: {end: shelf.right, into: right-side, depth: 1/4, glue: yes}
      """;

  private static Path project(Path folder, String text) throws Exception {
    return Files.writeString(folder.resolve("project.yaml"), text);
  }

  @Test
  void eachOptionIsAColumnBesideTheProjectAsWritten(@TempDir Path folder) throws Exception {
    Path csv = folder.resolve("table.csv");
    String project = project(folder, SHELF).toString();
    Shell shell = Shell.run("compare", project, "--out", csv.toString());
    assertEquals(0, shell.code(), shell.err());
    assertTrue(
        shell.out().lines().findFirst().orElseThrow().matches(" +as written +plywood +narrow"),
        shell.out());
    List<Map<String, String>> rows = Rows.of(Files.readAllBytes(csv));
    assertEquals(List.of("5", "5", "4"), column(rows, "parts"));
    assertEquals(List.of("0", "1", "0"), column(rows, "sheets"));
    assertEquals("70.00", rows.get(1).get("cost"));
    assertTrue(
        Double.parseDouble(rows.get(2).get("weight"))
            < Double.parseDouble(rows.get(0).get("weight")));
    assertEquals(List.of("0", "0", "0"), column(rows, "errors"));
  }

  private static List<String> column(List<Map<String, String>> rows, String key) {
    return rows.stream().map(row -> row.get(key)).toList();
  }

  @Test
  void optionWithAFaultStandsBesideThoseWithout(@TempDir Path folder) throws Exception {
    String text = SHELF.replace("width: 20}", "width: 1}");
    Shell shell = Shell.run("compare", project(folder, text).toString());
    assertEquals(0, shell.code(), shell.err());
    assertTrue(shell.out().matches("(?s).*Parts +5 +5 +-\n.*"), shell.out());
    assertTrue(shell.out().matches("(?s).*Errors +0 +0 +[1-9].*"), shell.out());
  }

  @Test
  void optionIsBuiltInsteadOfTheProjectAsWritten(@TempDir Path folder) throws Exception {
    String project = project(folder, SHELF).toString();
    String out = folder.resolve("out").toString();
    Shell built = Shell.run("build", project, "--option", "plywood", "--out", out);
    assertEquals(0, built.code(), built.err());
    String parts = Files.readString(folder.resolve("out/plan.json"));
    assertTrue(parts.contains("birch plywood") && !parts.contains("oak, northern red"));
  }

  @Test
  void checkLooksAtTheOptionAlone(@TempDir Path folder) throws Exception {
    String project = project(folder, SHELF.replace("width: 20}", "width: 1}")).toString();
    assertEquals(0, Shell.run("check", project).code());
    assertEquals(0, Shell.run("check", project, "--option", "plywood").code());
    assertEquals(1, Shell.run("check", project, "--option", "narrow").code());
  }

  @Test
  void unknownOptionIsAnErrorThatNamesTheNearest(@TempDir Path folder) throws Exception {
    String project = project(folder, SHELF).toString();
    String said = Shell.run("check", project, "--option", "plywod").out();
    assertTrue(said.contains("error: this project has no option 'plywod' [unknown-option]"), said);
    assertTrue(said.contains("hint: did you mean `plywood`?"), said);
    assertEquals(1, Shell.run("build", project, "--option", "plywod").code());
  }

  @Test
  void projectWithoutOptionsSaysSo(@TempDir Path folder) throws Exception {
    String text = SHELF.replaceAll("(?s)options:.*?parts:", "parts:");
    String said = Shell.run("check", project(folder, text).toString(), "--option", "x").out();
    assertTrue(said.contains("hint: it has no options; leave --option out"), said);
  }

  @Test
  void variantsAreComparedInTheLanguageAskedFor() {
    Shell shell = Shell.run("compare", "projects/step-stool", "--language", "de");
    assertEquals(0, shell.code(), shell.toString());
    assertTrue(shell.out().contains("wie geschrieben") && shell.out().contains("Teile"));
    assertFalse(shell.out().contains("as written"), shell.out());
  }

  @ParameterizedTest
  @ValueSource(strings = {"layout", "compare", "build"})
  void helpNamesTheLanguagesThatThereAreWordsIn(String command) {
    String help = Shell.run(command, "--help").out().replaceAll("\\s+", " ");
    assertTrue(help.contains(String.join(", ", Words.LANGUAGES)), help);
  }

  @Test
  void projectIsComparedOnTheScreenAndInAFile(@TempDir Path folder) throws Exception {
    Path csv = folder.resolve("table.csv");
    Path shelf = Shell.PROJECTS.resolve("wall-shelf");
    Shell shell = Shell.run("compare", shelf.toString(), "--out", csv.toString());
    assertEquals(0, shell.code(), shell.err());
    assertTrue(shell.out().contains("Working time, h"), shell.out());
    assertEquals("1", Rows.of(Files.readAllBytes(csv)).getFirst().get("sheets"));
    assertEquals(1, Shell.run("compare", folder.resolve("no").toString()).code());
  }
}
