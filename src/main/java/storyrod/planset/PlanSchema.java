package storyrod.planset;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * What {@code plan.json} holds, as a JSON Schema (draft 2020-12). It lets no other key through; its
 * version is the plan's {@code format}.
 */
public final class PlanSchema {
  private static final String PATH = "/storyrod/plan/plan.schema.json";

  private PlanSchema() {}

  /** The schema as JSON. */
  public static String text() {
    try (InputStream in = PlanSchema.class.getResourceAsStream(PATH)) {
      if (in == null) {
        throw new IllegalStateException("bug: no schema at " + PATH);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
