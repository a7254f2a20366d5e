package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import storyrod.planset.Outline.Entry;

/**
 * The sections that come with the tool, by the name of their template, each with what the outline
 * says of it. One with an empty outline has nothing to show. A template of a project's own is named
 * by the words {@code NAME.title}.
 */
final class Sections {
  /** The anchor of what the checks found. */
  static final String FINDINGS = "findings";

  private static final Map<String, Function<Pages, List<Entry>>> ALL = new LinkedHashMap<>();

  static {
    ALL.put("cover", pages -> List.of(Entry.bookmark("cover", pages.say("cover.title"))));
    ALL.put("preview", pages -> one(pages, "preview", "preview.title"));
    ALL.put("before", Sections::before);
    ALL.put("lists/cut-list", pages -> one(pages, "cut-list", "cutlist.title"));
    ALL.put(
        "lists/glue-ups",
        pages -> where(!pages.glueUps().rows().isEmpty(), pages, "glue-ups", "glue-ups.title"));
    ALL.put("lists/shopping", pages -> one(pages, "shopping", "shopping.title"));
    ALL.put(
        "lists/hardware",
        pages -> where(!pages.hardware().rows().isEmpty(), pages, "hardware", "hardware.title"));
    ALL.put("tools", pages -> where(pages.tools().hasAny(), pages, "tools", "tools.title"));
    ALL.put(
        "layouts",
        pages -> where(!pages.layouts().stocks().isEmpty(), pages, "layouts", "layouts.title"));
    ALL.put(
        "labels",
        pages -> where(!pages.labels().pages().isEmpty(), pages, "labels", "label.title"));
    ALL.put("general", Sections::general);
    ALL.put("exploded", pages -> one(pages, "exploded", "exploded.title"));
    ALL.put("parts", Sections::parts);
    ALL.put(JoineryPages.KEY, Sections::joinery);
    ALL.put(
        "timeline",
        pages ->
            where(!pages.timeline().drawings().isEmpty(), pages, "timeline", "timeline.title"));
    ALL.put("steps", Sections::steps);
    ALL.put("finish", Sections::finish);
    ALL.put("wood", pages -> where(pages.wood().hasAny(), pages, "wood", pages.wood().title()));
    ALL.put(
        "glossary",
        pages -> where(!pages.glossary().pages().isEmpty(), pages, "glossary", "glossary.title"));
    ALL.put(
        Licence.KEY,
        pages -> where(!pages.licence().lines().isEmpty(), pages, Licence.KEY, "licence.title"));
    ALL.put("fullsize", Sections::fullSize);
    recorded("revisions");
    recorded("hours");
    recorded("costs");
    recorded("boards");
    recorded("test-pieces");
    recorded("made");
    recorded("photos");
  }

  private Sections() {}

  private static void recorded(String section) {
    ALL.put(RecordPages.FOLDER + section, pages -> record(pages, section));
  }

  private static List<Entry> record(Pages pages, String section) {
    boolean shown = pages.record().has(section, pages.edition().is(Edition.LINES));
    return where(shown, pages, section, "record." + section);
  }

  /** The template of a section. */
  static String file(String section) {
    return section.contains("/") ? section + ".ftl" : section + "/page.ftl";
  }

  /** What the outline says of a section; nothing where it has nothing to show. */
  static List<Entry> outline(String section, Pages pages) {
    return ALL.getOrDefault(section, each -> own(section, each)).apply(pages);
  }

  private static List<Entry> own(String section, Pages pages) {
    String key = section + ".title";
    if (!pages.texts().words().has(key)) {
      String file = "words/" + pages.texts().words().language() + ".properties";
      throw new TemplateFault(file + ": the section " + section + " needs a title: " + key + "=…");
    }
    return one(pages, section, key);
  }

  private static List<Entry> one(Pages pages, String anchor, String key) {
    return where(true, pages, anchor, key);
  }

  private static List<Entry> where(boolean shown, Pages pages, String anchor, String key) {
    return shown ? List.of(Entry.of(anchor, pages.say(key))) : List.of();
  }

  private static List<Entry> before(Pages pages) {
    List<Entry> entries = new ArrayList<>();
    entries.add(Entry.bookmark("before", pages.say("before.title")));
    if (pages.end().findingsFirst()) {
      entries.add(Entry.bookmark(FINDINGS, pages.say("findings.title")));
    }
    return entries;
  }

  private static List<Entry> general(Pages pages) {
    return where(!pages.general().entries().isEmpty(), pages, "general", "general.title").stream()
        .map(
            each ->
                each.with(
                    pages.general().entries().stream()
                        .map(drawing -> Entry.bookmark(drawing.anchor(), drawing.title()))
                        .toList()))
        .toList();
  }

  private static List<Entry> parts(Pages pages) {
    List<Entry> parts =
        pages.parts().entries().stream()
            .map(part -> Entry.bookmark(part.anchor(), part.mark() + "  " + part.title()))
            .toList();
    return parts.isEmpty()
        ? List.of()
        : List.of(Entry.of("parts", pages.say("parts.title")).with(parts));
  }

  private static List<Entry> joinery(Pages pages) {
    List<Entry> joints =
        pages.joinery().entries().stream()
            .map(joint -> Entry.bookmark(joint.anchor(), joint.title()))
            .toList();
    return joints.isEmpty()
        ? List.of()
        : List.of(Entry.of(JoineryPages.KEY, pages.say("joinery.title")).with(joints));
  }

  private static List<Entry> steps(Pages pages) {
    return pages.steps().stages().stream()
        .map(
            stage ->
                Entry.of(
                        "stage-" + stage.number(),
                        pages.say("steps.stage", stage.number(), stage.title()))
                    .with(stage.steps().stream().map(Sections::step).toList()))
        .toList();
  }

  private static Entry step(StepEntry step) {
    return new Entry(
        "step-" + step.number(),
        Integer.toString(step.number()),
        step.text().title(),
        true,
        List.of());
  }

  private static List<Entry> finish(Pages pages) {
    List<Entry> entries = new ArrayList<>();
    entries.addAll(where(pages.finish().isPresent(), pages, "finish", "finish.title"));
    boolean last = !pages.notes().findings().isEmpty() && !pages.end().findingsFirst();
    entries.addAll(where(last, pages, FINDINGS, "findings.title"));
    return entries;
  }

  private static List<Entry> fullSize(Pages pages) {
    List<Entry> sheets =
        pages.templates().firsts().stream()
            .map(sheet -> Entry.bookmark(sheet.drawing().name(), sheet.title()))
            .toList();
    return sheets.isEmpty()
        ? List.of()
        : List.of(Entry.of("fullsize", pages.say("fullsize.title")).with(sheets));
  }
}
