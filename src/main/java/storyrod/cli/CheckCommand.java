package storyrod.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import storyrod.description.DiagnosticPrinter;
import storyrod.description.Diagnostics;

/** Says what is wrong with a project, and writes nothing. */
@Command(
    name = "check",
    description = "Say what is wrong with a project; write nothing.",
    mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "PROJECT", description = "The project's folder or its description.")
  private Path project;

  @Mixin private OptionName option;

  @Override
  public Integer call() throws IOException {
    Diagnostics diagnostics = new Diagnostics();
    ProjectFile.at(project)
        .read(diagnostics)
        .ifPresent(source -> Pipeline.plan(source, option.name(), diagnostics));
    PrintWriter out = spec.commandLine().getOut();
    out.print(DiagnosticPrinter.print(diagnostics.bySeverity()));
    out.flush();
    return diagnostics.hasErrors() ? 1 : 0;
  }
}
