package storyrod.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import storyrod.check.Check;
import storyrod.check.Checks;
import storyrod.description.Diagnostics;

/** Says what is wrong with a project, or what a check is about; writes nothing. */
@Command(
    name = "check",
    description = "Say what is wrong with a project; write nothing.",
    mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @ArgGroup(multiplicity = "1")
  private Subject subject;

  @Mixin private OptionName option;

  /** A project, or the code of a check. */
  static final class Subject {
    @Parameters(paramLabel = "PROJECT", description = "The project's folder or its description.")
    private Path project;

    @Option(
        names = "--explain",
        paramLabel = "CODE",
        description = "Say what a check does, from what source, and what it does not see.")
    private String code;
  }

  @Override
  public Integer call() throws IOException {
    return subject.code == null ? check() : explain();
  }

  private int check() throws IOException {
    Diagnostics diagnostics = new Diagnostics();
    ProjectFile.at(subject.project)
        .read(diagnostics)
        .ifPresent(source -> Pipeline.plan(source, option.name(), diagnostics));
    print(ToldOnce.print(diagnostics.bySeverity()));
    return diagnostics.hasErrors() ? 1 : 0;
  }

  private int explain() {
    var check = Checks.named(subject.code);
    check.ifPresentOrElse(found -> print(explanation(found)), this::refuse);
    return check.isPresent() ? 0 : 2;
  }

  private static String explanation(Check check) {
    return """
        %s
          rule:    %s
          source:  %s
          limits:  %s
        """
        .formatted(
            check.code(),
            check.explanation().rule(),
            check.explanation().source(),
            check.explanation().limits());
  }

  private void refuse() {
    PrintWriter err = spec.commandLine().getErr();
    err.println("no check has the code '%s'".formatted(subject.code));
    err.println("  hint: the checks are " + String.join(", ", Checks.codes()));
    err.println("  hint: a code that is not among them is a fault of the description itself");
    err.flush();
  }

  private void print(String text) {
    PrintWriter out = spec.commandLine().getOut();
    out.print(text);
    out.flush();
  }
}
