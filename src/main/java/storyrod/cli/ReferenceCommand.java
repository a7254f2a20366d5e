package storyrod.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import storyrod.description.SourceText;
import storyrod.planset.Reference;

/** Prints the page from which the language can be learnt. */
@Command(
    name = "reference",
    description = "Print the language's reference as one HTML page.",
    mixinStandardHelpOptions = true)
final class ReferenceCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private TextOutput output;

  @Override
  public Integer call() throws IOException {
    output.write(page(), spec.commandLine());
    return 0;
  }

  static String page() {
    return page(Shipped.all("subassembly"));
  }

  static String page(List<SourceText> subAssemblies) {
    List<SourceText> chapters = new ArrayList<>(Shipped.all("reference/chapters"));
    chapters.addAll(Shipped.all("reference/files"));
    Reference.Sources sources =
        new Reference.Sources(chapters, Shipped.all("reference/examples"), subAssemblies);
    return Reference.html(Pipeline.VOCABULARY, sources);
  }
}
