package storyrod.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import storyrod.description.Schema;
import storyrod.planset.Json;

/** Prints the language as a JSON Schema, for completion in editors. */
@Command(
    name = "schema",
    description = "Print the language as a JSON Schema, for completion in editors.",
    mixinStandardHelpOptions = true)
final class SchemaCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private TextOutput output;

  @Override
  public Integer call() throws IOException {
    output.write(Json.text(Schema.of(Pipeline.VOCABULARY)), spec.commandLine());
    return 0;
  }
}
