package storyrod.planset;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The files from which a plan set can be made again, and what it came to. */
record Attachments(Kept kept, Texts texts) {
  private static final String PLAN = "plan.json";

  /** The description with what it uses, its photos, and the plan. */
  List<Attachment> with(byte[] plan) {
    List<Attachment> all = new ArrayList<>();
    kept.texts()
        .forEach(
            (name, text) ->
                all.add(source(name, "application/yaml", text.getBytes(StandardCharsets.UTF_8))));
    kept.photos()
        .forEach(
            (name, photo) ->
                all.add(
                    source(
                        name,
                        JpegFile.is(photo.bytes()) ? "image/jpeg" : "image/png",
                        photo.bytes())));
    all.add(new Attachment(PLAN, "application/json", "Data", texts.say("record.file.plan"), plan));
    return all;
  }

  private Attachment source(String name, String type, byte[] bytes) {
    return new Attachment(name, type, "Source", texts.say("record.file.source"), bytes);
  }
}
