package storyrod.cli;

import java.util.Optional;
import picocli.CommandLine.Option;

/** Which of a project's options a command works on; the project as written if none is given. */
final class OptionName {
  @Option(
      names = "--option",
      paramLabel = "NAME",
      description = "One of the project's options instead of the project as written.")
  private String name;

  Optional<String> name() {
    return Optional.ofNullable(name);
  }

  /** A name for what is made of a project with this option. */
  String after(String project) {
    return name == null ? project : project + "-" + name;
  }
}
