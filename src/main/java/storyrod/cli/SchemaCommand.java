package storyrod.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import storyrod.description.Schema;
import storyrod.planset.Json;
import storyrod.planset.PlanSchema;

/** Prints the language, or what {@code plan.json} holds, as a JSON Schema. */
@Command(
    name = "schema",
    description =
        "Print the language as a JSON Schema, for completion in editors, or that of plan.json.",
    mixinStandardHelpOptions = true)
final class SchemaCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private TextOutput output;

  @Option(
      names = "--plan",
      description = "The schema of plan.json, for programs that read what was computed.")
  private boolean plan;

  @Override
  public Integer call() throws IOException {
    String schema = plan ? PlanSchema.text() : Json.text(Schema.of(Pipeline.VOCABULARY));
    output.write(schema, spec.commandLine());
    return 0;
  }
}
