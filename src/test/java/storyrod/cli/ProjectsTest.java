package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import storyrod.description.Description;
import storyrod.description.Diagnostic;
import storyrod.description.DiagnosticPrinter;
import storyrod.description.Diagnostics;
import storyrod.description.Entry;
import storyrod.description.EntryType;
import storyrod.description.Outlines;
import storyrod.description.Shipped;
import storyrod.description.SourceText;
import storyrod.piece.CutTypes;
import storyrod.piece.JointTypes;
import storyrod.piece.PieceBuilder;
import storyrod.planset.PlanSet;

/** Every project of the repository and every project for tests, through all stages in memory. */
class ProjectsTest {
  private static final Path OWN = Path.of("projects");

  /** Test projects that are wrong on purpose; tests of their own say how. */
  private static final List<String> WRONG = List.of("window-bench-glued-too-early");

  static List<Path> projects() {
    return Stream.of(OWN, Shell.PROJECTS)
        .flatMap(folder -> folders(folder).stream())
        .filter(project -> !WRONG.contains(project.getFileName().toString()))
        .toList();
  }

  private static List<Path> folders(Path folder) {
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(each -> Files.exists(each.resolve("project.yaml"))).sorted().toList();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static SourceText source(Path project) {
    Path file = project.resolve("project.yaml");
    return new SourceText(file.toString(), Shell.read(file));
  }

  @ParameterizedTest
  @MethodSource("projects")
  void projectHasNoErrorAndAPlanOfSteps(Path project) {
    Diagnostics found = new Diagnostics();
    Optional<PlanSet> plan = Pipeline.planSet(source(project), found);
    assertFalse(found.hasErrors(), () -> DiagnosticPrinter.print(found.sorted()));
    PlanSet set = plan.orElseThrow();
    Set<String> brought = new TreeSet<>();
    set.build().steps().forEach(step -> brought.addAll(step.newParts()));
    assertEquals(new TreeSet<>(names(set)), brought, "each part comes to its place in a step");
  }

  private static List<String> names(PlanSet set) {
    return set.piece().parts().stream().map(part -> part.name()).toList();
  }

  /** The versions of a project are pieces without an error too. */
  @ParameterizedTest
  @MethodSource("projects")
  void everyOptionIsAPieceWithoutErrors(Path project) {
    for (String option : described(project, Optional.empty()).options().keySet()) {
      Diagnostics found = new Diagnostics();
      Description version = described(project, Optional.of(option));
      PieceBuilder.build(version, found)
          .ifPresent(piece -> storyrod.check.Checks.run(piece, found));
      List<Diagnostic> errors = found.sorted().stream().filter(Diagnostic::isError).toList();
      assertEquals(List.of(), errors, () -> option + ":\n" + DiagnosticPrinter.print(errors));
    }
  }

  private static Description described(Path project, Optional<String> option) {
    Diagnostics found = new Diagnostics();
    return Pipeline.reader()
        .read(source(project), option, found)
        .orElseThrow(() -> new AssertionError(DiagnosticPrinter.print(found.sorted())));
  }

  /**
   * Between them the projects use every word for joints, cuts and outlines, and what is shipped.
   */
  @Test
  void projectsUseTheWholeLanguage() {
    Set<String> unused = new TreeSet<>(words());
    for (Path project : folders(OWN)) {
      unused.removeAll(used(project));
    }
    assertEquals(Set.of(), unused, "what no project uses");
  }

  private static List<String> words() {
    List<String> words = new ArrayList<>();
    words.addAll(named("joint ", JointTypes.words()));
    words.addAll(named("cut ", CutTypes.words()));
    words.addAll(named("outline ", Outlines.ALL));
    Shipped.NAMES.forEach(name -> words.add("use " + name));
    return words;
  }

  private static List<String> named(String what, List<EntryType> kinds) {
    return kinds.stream().map(kind -> what + kind.name()).toList();
  }

  private static Set<String> used(Path project) {
    Description read = described(project, Optional.empty());
    Set<String> used = new TreeSet<>();
    used.addAll(kinds("joint ", read.joints()));
    used.addAll(kinds("cut ", read.cuts()));
    read.parts().forEach(part -> used.addAll(kinds("outline ", part.outline())));
    String text = Shell.read(project.resolve("project.yaml"));
    Shipped.NAMES.stream()
        .filter(name -> text.matches("(?s).*\\buse: %s\\b.*".formatted(name)))
        .forEach(name -> used.add("use " + name));
    return used;
  }

  private static List<String> kinds(String what, List<Entry> entries) {
    return entries.stream().map(entry -> what + entry.kind()).toList();
  }

  @Test
  void testsKnowTheProjects() {
    assertTrue(folders(OWN).size() >= 3);
  }
}
