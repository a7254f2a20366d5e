package storyrod.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import storyrod.description.DiagnosticPrinter;
import storyrod.description.Diagnostics;
import storyrod.description.SourceText;
import storyrod.planset.Comparison;
import storyrod.planset.Comparison.Plan;
import storyrod.planset.Comparison.Variant;
import storyrod.words.Words;

/** Shows the variants of a project side by side. */
@Command(
    name = "compare",
    description = "Show the variants of a project side by side.",
    mixinStandardHelpOptions = true)
final class CompareCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "PROJECT", description = "The project's folder or its description.")
  private Path project;

  @Option(
      names = "--out",
      paramLabel = "FILE.csv",
      description = "Write the table there too, for a spreadsheet.")
  private Path out;

  @Mixin private LanguageOption language;

  @Override
  public Integer call() throws IOException {
    if (out != null && out.toString().isBlank()) {
      throw new ParameterException(spec.commandLine(), "--out needs the name of a file");
    }
    Diagnostics unreadable = new Diagnostics();
    Optional<SourceText> source = ProjectFile.at(project).read(unreadable);
    if (source.isEmpty()) {
      spec.commandLine().getErr().print(DiagnosticPrinter.print(unreadable.sorted()));
      return 1;
    }
    Words words = language.words(spec);
    return show(variants(source.get(), words), words);
  }

  /** The project as written and with each of its options. */
  private static List<Variant> variants(SourceText source, Words words) {
    List<Variant> variants = new ArrayList<>();
    variants.add(variant(words.say("compare.as-written"), source, Optional.empty()));
    for (String option : Pipeline.options(source)) {
      variants.add(variant(option, source, Optional.of(option)));
    }
    return variants;
  }

  private static Variant variant(String name, SourceText source, Optional<String> option) {
    Diagnostics diagnostics = new Diagnostics();
    Optional<Plan> plan =
        Pipeline.plan(source, option, diagnostics)
            .map(planned -> new Plan(planned.piece(), planned.stock(), planned.build()));
    return new Variant(name, plan, diagnostics.sorted());
  }

  /** The exit code is 1 if no variant can be built. */
  private int show(List<Variant> variants, Words words) throws IOException {
    Comparison comparison = Comparison.of(variants, words);
    spec.commandLine().getOut().print(comparison.text());
    if (out != null) {
      TextOutput.put(out, comparison.csv());
      spec.commandLine().getOut().println(words.say("compare.written", out));
    }
    spec.commandLine().getOut().flush();
    return variants.stream().anyMatch(each -> each.plan().isPresent()) ? 0 : 1;
  }
}
