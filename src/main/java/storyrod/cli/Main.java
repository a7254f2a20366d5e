package storyrod.cli;

import java.io.PrintWriter;
import java.util.Locale;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/** The command {@code storyrod}. */
@Command(
    name = "storyrod",
    description = "One project description in, one checked, printable plan set out.",
    subcommands = {
      BuildCommand.class,
      CheckCommand.class,
      CompareCommand.class,
      LayoutCommand.class,
      ReferenceCommand.class,
      SchemaCommand.class,
      StartCommand.class
    },
    mixinStandardHelpOptions = true,
    version = "storyrod 0.1")
public final class Main {
  @Option(
      names = "--debug",
      scope = ScopeType.INHERIT,
      description = "Show where the tool itself failed, if it does.")
  private boolean debug;

  private Main() {}

  /**
   * Runs a command; the exit code is 0 if all is well, 1 for faults, 2 for a wrong command line.
   */
  public static void main(String[] args) {
    System.exit(run(new PrintWriter(System.out, true), new PrintWriter(System.err, true), args));
  }

  /**
   * Runs in no country's manner: libraries write a PDF's offsets in the default locale's digits.
   */
  static int run(PrintWriter out, PrintWriter err, String... args) {
    Locale.setDefault(Locale.ROOT);
    Main main = new Main();
    CommandLine line = new CommandLine(main).setOut(out).setErr(err);
    line.setExecutionExceptionHandler((failure, command, parsed) -> main.failed(failure, err));
    try {
      return line.execute(args);
    } catch (Error failure) {
      return main.failed(failure, err);
    } finally {
      out.flush();
      err.flush();
    }
  }

  private int failed(Throwable failure, PrintWriter err) {
    if (debug) {
      failure.printStackTrace(err);
    } else {
      err.println("storyrod: " + Failures.inOneLine(failure));
    }
    return 1;
  }
}
