package storyrod.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
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
import storyrod.words.Words;

/** Writes the plan set of a project. */
@Command(
    name = "build",
    description = "Write the plan set of a project.",
    mixinStandardHelpOptions = true)
final class BuildCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "PROJECT", description = "The project's folder or its description.")
  private Path project;

  @Mixin private OptionName option;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Where to write; out/NAME if not given, or out/NAME-OPTION.")
  private Path out;

  @Override
  public Integer call() throws IOException {
    if (out != null && out.toString().isBlank()) {
      throw new ParameterException(spec.commandLine(), "--out needs the name of a folder");
    }
    getReadyMeanwhile();
    Diagnostics diagnostics = new Diagnostics();
    ProjectFile file = ProjectFile.at(project);
    Optional<PlanSet> planSet =
        file.read(diagnostics)
            .flatMap(source -> Pipeline.planSet(source, option.name(), diagnostics));
    PrintWriter err = spec.commandLine().getErr();
    err.print(ToldOnce.print(diagnostics.bySeverity()));
    err.flush();
    if (planSet.isEmpty()) {
      return 1;
    }
    write(planSet.get(), out == null ? Path.of("out", option.after(file.name())) : out);
    return 0;
  }

  /** Fonts and layout load while the stages before them work; what fails here fails there again. */
  private static void getReadyMeanwhile() {
    Thread.ofPlatform()
        .daemon()
        .uncaughtExceptionHandler((thread, failure) -> {})
        .start(PlanSetWriter::getReady);
  }

  private void write(PlanSet planSet, Path folder) throws IOException {
    Map<String, byte[]> files = new PlanSetWriter(Words.ENGLISH).write(planSet);
    new OutputFolder(folder).replace(files);
    PrintWriter to = spec.commandLine().getOut();
    to.println(
        "%d files in %s, the plan set in %s"
            .formatted(files.size(), folder, folder.resolve("plan-set.pdf")));
    to.flush();
  }
}
