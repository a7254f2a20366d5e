package storyrod.drawing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.function.ThrowingConsumer;
import storyrod.cli.Pipeline;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.planset.PlanSet;

/** The plan sets of all projects of the repository, on which what holds for every one is tried. */
public final class AllProjects {
  private static final List<Sample> SAMPLES = samples();

  private AllProjects() {}

  /** A project by its folder's name. */
  public record Sample(String name, PlanSet set) {}

  private static List<Sample> samples() {
    List<Sample> samples = new ArrayList<>();
    try (Stream<Path> folders = Files.list(Path.of("projects"))) {
      for (Path folder : folders.sorted().toList()) {
        Path file = folder.resolve("project.yaml");
        SourceText source = new SourceText(file.toString(), Files.readString(file));
        PlanSet set = Pipeline.planSet(source, new Diagnostics()).orElseThrow();
        samples.add(new Sample(folder.getFileName().toString(), set));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return samples;
  }

  /** One test for each project. */
  public static List<DynamicTest> each(ThrowingConsumer<Sample> test) {
    return SAMPLES.stream()
        .map(sample -> DynamicTest.dynamicTest(sample.name, () -> test.accept(sample)))
        .toList();
  }

  public static List<Sample> all() {
    return List.copyOf(SAMPLES);
  }

  public static PlanSet named(String name) {
    return SAMPLES.stream().filter(each -> each.name.equals(name)).findFirst().orElseThrow().set();
  }
}
