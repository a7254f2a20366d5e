package storyrod.planset;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A plan set for one kind of reader: which sections it has, and what is switched on in them. It is
 * read from {@code templates/editions/NAME.properties}.
 *
 * @param sections the names of their templates, in order
 * @param switches what else its file sets, by key
 */
public record Edition(String name, List<String> sections, Map<String, String> switches) {
  /** The edition that is written where none is asked for. */
  public static final String USUAL = "publish";

  /** Whether each page is marked as a preview, and no size of the piece is told. */
  static final String PREVIEW = "preview";

  /** Whether lines to fill in stand where nothing is recorded. */
  static final String LINES = "lines";

  /** Whether all from which the plan was made goes into the PDF. */
  static final String ATTACHMENTS = "attachments";

  /** Whether its reader has none of the stock that the maker has on hand. */
  static final String BOUGHT = "bought";

  /** What an edition's file may switch on; off where it says nothing. */
  static final List<String> SWITCHES =
      List.of("prices", "boxes", PREVIEW, LINES, ATTACHMENTS, BOUGHT);

  private static final String FOLDER = "editions/";
  private static final String ENDING = ".properties";
  private static final String SECTIONS = "sections";

  public Edition {
    sections = List.copyOf(sections);
    switches = Map.copyOf(switches);
  }

  /**
   * The edition of a name, if there is one among the templates.
   *
   * @throws TemplateFault if it names a section that has no template, or none at all
   */
  public static Optional<Edition> named(String name, Templates templates) {
    return templates
        .properties(FOLDER + name + ENDING)
        .map(values -> of(name, values))
        .map(edition -> edition.checked(templates));
  }

  /** The edition to sell, as it comes with the tool. */
  static Edition usual(Templates templates) {
    return named(USUAL, templates)
        .orElseThrow(() -> new IllegalStateException("bug: no edition " + USUAL));
  }

  private static Edition of(String name, Map<String, String> values) {
    String sections = values.getOrDefault(SECTIONS, "").strip();
    return new Edition(
        name, sections.isEmpty() ? List.of() : List.of(sections.split("\\s+")), values);
  }

  private Edition checked(Templates templates) {
    String missing =
        sections.stream()
            .filter(section -> !templates.has(Sections.file(section)))
            .collect(Collectors.joining(", "));
    if (sections.isEmpty() || !missing.isEmpty()) {
      throw new TemplateFault(
          FOLDER
              + name
              + ENDING
              + ": "
              + (sections.isEmpty()
                  ? "it names no sections; write sections=cover steps, for example"
                  : "there is no template for the sections " + missing));
    }
    return this;
  }

  boolean has(String section) {
    return sections.contains(section);
  }

  /** Whether it shows the piece before it is sold, and so tells no size of any part. */
  public boolean isPreview() {
    return is(PREVIEW);
  }

  /** Whether its reader buys all of the stock, whatever the maker has on hand. */
  public boolean isBought() {
    return is(BOUGHT);
  }

  /** Whether a switch is on. */
  boolean is(String key) {
    return switches.getOrDefault(key, "no").equals("yes");
  }

  /** Whether one section follows another at once. */
  boolean follows(String first, String second) {
    int at = sections.indexOf(first);
    return at >= 0 && at + 1 < sections.size() && sections.get(at + 1).equals(second);
  }
}
