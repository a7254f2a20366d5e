package storyrod.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes a small project to begin from. */
@Command(
    name = "start",
    description = "Write a small, working project to begin from; never over another.",
    mixinStandardHelpOptions = true)
final class StartCommand implements Callable<Integer> {
  private static final String NAME = "[a-z][a-z0-9]*(-[a-z0-9]+)*";

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "NAME",
      description = "The project's name: lower-case words joined by hyphens.")
  private String name;

  @Option(
      names = "--from",
      paramLabel = "STARTER",
      defaultValue = "cabinet",
      completionCandidates = Names.class,
      description = "What to begin from: ${COMPLETION-CANDIDATES}; cabinet if not given.")
  private String from;

  @Option(
      names = "--units",
      paramLabel = "UNIT",
      defaultValue = "inch",
      description = "inch or mm; inch if not given.")
  private String units;

  @Option(
      names = "--in",
      paramLabel = "DIR",
      defaultValue = "projects",
      description = "The folder in which the project gets its own; projects if not given.")
  private Path in;

  /** The starters, looked up only when help is asked for. */
  static final class Names implements Iterable<String> {
    @Override
    public java.util.Iterator<String> iterator() {
      return Starter.names().iterator();
    }
  }

  @Override
  public Integer call() throws IOException {
    if (!name.matches(NAME)) {
      return refuse("'%s' cannot be a project's name".formatted(name), nameHint());
    }
    if (!Starter.names().contains(from)) {
      return refuse(
          "there is no starter '%s'".formatted(from), "there are " + list(Starter.names()));
    }
    if (!Starter.UNITS.contains(units)) {
      return refuse("there is no unit '%s'".formatted(units), "there are " + list(Starter.UNITS));
    }
    return begin(in.resolve(name));
  }

  private int begin(Path folder) throws IOException {
    if (Files.exists(folder)) {
      return refuse(
          "%s is there already".formatted(folder),
          "choose another name, or another folder with --in");
    }
    Path file = folder.resolve("project.yaml");
    TextOutput.put(file, Starter.named(from).description(name, units));
    spec.commandLine().getOut().printf(Locale.ROOT, "written: %s%n", file);
    spec.commandLine().getOut().printf(Locale.ROOT, "next: storyrod build %s%n", folder);
    spec.commandLine().getOut().flush();
    return 0;
  }

  private String nameHint() {
    String better =
        name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^[-0-9]+|-+$", "");
    String such = better.isEmpty() ? "" : ", such as `" + better + "`";
    return "write lower-case words joined by hyphens" + such;
  }

  private static String list(List<String> words) {
    return String.join(", ", words);
  }

  private int refuse(String message, String hint) {
    spec.commandLine().getErr().printf(Locale.ROOT, "error: %s%n  hint: %s%n", message, hint);
    spec.commandLine().getErr().flush();
    return 1;
  }
}
