package storyrod.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/** The command {@code storyrod}. */
@Command(
    name = "storyrod",
    description = "One project description in, one checked, printable plan set out.",
    subcommands = {BuildCommand.class, CheckCommand.class},
    mixinStandardHelpOptions = true,
    version = "storyrod 0.1")
public final class Main {
  @Option(
      names = "--debug",
      scope = ScopeType.INHERIT,
      description = "Show where the tool itself failed, if it does.")
  private boolean debug;

  private Main() {}

  /** Runs a command; the exit code is 0 if all is well, 1 for faults, 2 for a wrong command line. */
  public static void main(String[] args) {
    System.exit(run(args));
  }

  static int run(String... args) {
    Main main = new Main();
    CommandLine line = new CommandLine(main);
    line.setExecutionExceptionHandler((failure, command, parsed) -> main.failed(failure, command));
    return line.execute(args);
  }

  private int failed(Exception failure, CommandLine command) {
    if (debug) {
      failure.printStackTrace(command.getErr());
    } else {
      command.getErr().println("storyrod: " + Failures.inOneLine(failure));
    }
    return 1;
  }
}
