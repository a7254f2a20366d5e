package storyrod.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import storyrod.cli.lists.BuyerList;
import storyrod.description.Diagnostics;
import storyrod.planset.Printable;
import storyrod.planset.Stamp;

/** For whom copies of a plan set are stamped; for nobody if no option is given. */
final class Buyers {
  @Option(
      names = "--for",
      paramLabel = "NAME",
      description = "Also write a copy with this name and a number on every page.")
  private String name;

  @Option(
      names = "--number",
      paramLabel = "N",
      defaultValue = "1",
      description = "The number of that copy; 1 if not given.")
  private int number;

  @Option(
      names = "--for-each",
      paramLabel = "BUYERS.csv",
      description = {
        "Also write a copy for each row of a list; its first line names the columns, name and, if "
            + "wanted, number."
      })
  private Path list;

  /** The stamps asked for; where the list has a fault, none, and the diagnostics say why. */
  List<Stamp> stamps(CommandSpec spec, Diagnostics diagnostics) throws IOException {
    if (name != null && list != null) {
      throw new ParameterException(spec.commandLine(), "--for and --for-each exclude each other");
    }
    if (name != null) {
      return List.of(stamp(spec));
    }
    return list == null
        ? List.of()
        : new TextFile(list, "no-list", "a list of buyers is a text of some pages")
            .read(diagnostics)
            .map(source -> BuyerList.read(source, diagnostics))
            .orElse(List.of());
  }

  private Stamp stamp(CommandSpec spec) {
    String plain = name.strip();
    if (plain.isEmpty() || plain.codePointCount(0, plain.length()) > Stamp.LONGEST) {
      throw new ParameterException(
          spec.commandLine(), "--for takes a name of 1 to " + Stamp.LONGEST + " characters");
    }
    if (!plain.codePoints().allMatch(c -> c >= ' ' && Printable.has(c))) {
      throw new ParameterException(
          spec.commandLine(), "--for: a character of the name cannot be printed");
    }
    if (number < 1) {
      throw new ParameterException(spec.commandLine(), "--number counts copies from 1");
    }
    return new Stamp(plain, number);
  }
}
