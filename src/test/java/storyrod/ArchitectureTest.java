package storyrod;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A package uses only those before it in the list; only the command line touches files. */
class ArchitectureTest {
  /** The order of the stages. */
  private static final List<String> PACKAGES =
      List.of(
          "measure",
          "words",
          "geometry",
          "description",
          "wood",
          "piece",
          "check",
          "layout",
          "stock",
          "build",
          "drawing",
          "planset",
          "cli");

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("storyrod");

  @Test
  void noStageKnowsALaterOne() {
    for (int i = 0; i < PACKAGES.size(); i++) {
      String[] later =
          PACKAGES.subList(i + 1, PACKAGES.size()).stream()
              .map(name -> "storyrod." + name + "..")
              .toArray(String[]::new);
      if (later.length > 0) {
        noClasses()
            .that()
            .resideInAPackage("storyrod." + PACKAGES.get(i) + "..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(later)
            .check(CLASSES);
      }
    }
  }

  /** Jobs and plans, then what finds plans, then the way in. */
  @Test
  void layoutsHaveOneWayIn() {
    noClasses()
        .that()
        .resideInAPackage("storyrod.layout")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "storyrod.layout.sheet", "storyrod.layout.length", "storyrod.layout.search")
        .check(CLASSES);
    noClasses()
        .that()
        .resideInAPackage("storyrod.layout.sheet")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("storyrod.layout.length", "storyrod.layout.search")
        .check(CLASSES);
    noClasses()
        .that()
        .resideInAPackage("storyrod.layout.length")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("storyrod.layout.sheet", "storyrod.layout.search")
        .check(CLASSES);
  }

  /** Fonts may write the small file without which a machine with no fonts of its own loads none. */
  @Test
  void onlyTheCommandLineTouchesFiles() {
    noClasses()
        .that()
        .resideOutsideOfPackage("storyrod.cli..")
        .and()
        .haveNameNotMatching("storyrod\\.drawing\\.Fonts.*")
        .should()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.nio.file.Files")
        .check(CLASSES);
  }

  @Test
  void everyPackageStandsInTheList() {
    List<String> found =
        CLASSES.stream()
            .map(each -> each.getPackageName().split("\\."))
            .filter(names -> names.length > 1)
            .map(names -> names[1])
            .distinct()
            .filter(name -> !PACKAGES.contains(name))
            .toList();
    org.junit.jupiter.api.Assertions.assertEquals(List.of(), found);
  }
}
