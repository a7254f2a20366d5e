package storyrod.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import storyrod.description.Diagnostics;
import storyrod.planset.PlanSet;
import storyrod.planset.PlanSetWriter;
import storyrod.planset.Stamp;
import storyrod.words.Words;

/** Writes the plan set of a project. */
@Command(
    name = "build",
    description = "Write the plan set of a project.",
    mixinStandardHelpOptions = true)
final class BuildCommand implements Callable<Integer> {
  private static final String PLAN_SET = "plan-set.pdf";

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "PROJECT", description = "The project's folder or its description.")
  private Path project;

  @Mixin private OptionName option;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Where to write; out/NAME if not given, or out/NAME-OPTION.")
  private Path out;

  @Option(names = "--png", description = "Write the drawings as PNG too, at 300 dots an inch.")
  private boolean png;

  @Mixin private Buyers buyers;

  @Override
  public Integer call() throws IOException {
    if (out != null && out.toString().isBlank()) {
      throw new ParameterException(spec.commandLine(), "--out needs the name of a folder");
    }
    getReadyMeanwhile();
    Diagnostics diagnostics = new Diagnostics();
    List<Stamp> stamps = buyers.stamps(spec, diagnostics);
    ProjectFile file = ProjectFile.at(project);
    Optional<PlanSet> planSet =
        file.read(diagnostics)
            .flatMap(source -> Pipeline.planSet(source, option.name(), diagnostics));
    PrintWriter err = spec.commandLine().getErr();
    err.print(ToldOnce.print(diagnostics.bySeverity()));
    err.flush();
    if (planSet.isEmpty() || diagnostics.hasErrors()) {
      return 1;
    }
    write(planSet.get(), stamps, out == null ? Path.of("out", option.after(file.name())) : out);
    return 0;
  }

  /** Fonts and layout load while the stages before them work; what fails here fails there again. */
  private static void getReadyMeanwhile() {
    Thread.ofPlatform()
        .daemon()
        .uncaughtExceptionHandler((thread, failure) -> {})
        .start(PlanSetWriter::getReady);
  }

  private void write(PlanSet planSet, List<Stamp> stamps, Path folder) throws IOException {
    Map<String, byte[]> files = new PlanSetWriter(Words.ENGLISH).write(planSet);
    if (png) {
      files.putAll(PlanSetWriter.pictures(planSet));
    }
    new OutputFolder(folder).replace(files);
    PrintWriter to = spec.commandLine().getOut();
    to.println(
        "%d files in %s, the plan set in %s"
            .formatted(files.size(), folder, folder.resolve(PLAN_SET)));
    if (!stamps.isEmpty()) {
      Path copies = new CopyFolder(folder.resolve("copies")).write(files.get(PLAN_SET), stamps);
      to.println(
          stamps.size() == 1
              ? "one stamped copy: " + copies
              : "%d stamped copies, the last: %s".formatted(stamps.size(), copies));
    }
    to.flush();
  }
}
