package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import storyrod.planset.PlanSchema;

class PlanSchemaCommandTest {
  @Test
  void schemaOfThePlanGoesToAFileOrTheScreen(@TempDir Path folder) throws Exception {
    assertEquals(PlanSchema.text(), Shell.run("schema", "--plan").out());
    Path file = folder.resolve("plan.schema.json");
    assertEquals(0, Shell.run("schema", "--plan", "--out", file.toString()).code());
    assertEquals(PlanSchema.text(), Files.readString(file));
  }

  @Test
  void schemaOfTheLanguageIsAnother() {
    String language = Shell.run("schema").out();
    assertTrue(language.contains("Storyrod description"), language.substring(0, 200));
  }
}
