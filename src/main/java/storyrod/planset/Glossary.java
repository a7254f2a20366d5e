package storyrod.planset;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Text;
import storyrod.planset.TableFlow.Table;
import storyrod.planset.TableHeights.Cell;
import storyrod.words.Words;

/**
 * The trade terms that the texts of a plan use, each with what it means. A language has as many as
 * its words have: {@code term.NAME} is the meaning, {@code term.NAME.words} the forms in which it
 * stands in texts, with {@code |} between them, the one that is listed first.
 */
public record Glossary(List<TableFlow.Part<Entry>> pages) {
  static final Glossary NONE = new Glossary(List.of());

  private static final String TERM = "term.";
  private static final String WORDS = ".words";
  private static final double TERM_SHARE = 0.18;
  private static final double MEANING_SHARE = 0.78;

  public Glossary {
    pages = List.copyOf(pages);
  }

  /** A term. */
  public record Entry(String term, String meaning) {}

  /** The pages whose words it explains. */
  record Source(StepPages steps, JoineryPages joinery) {
    private String text(PlanSet set) {
      return String.join("\n", Glossary.text(steps), drawn(set, steps), joints(joinery));
    }
  }

  static Table<Entry> table(PlanSet set, Source source, Print print) {
    double width = print.paper().textWidthMm();
    return new Table<>(
        TableHeights.ABOVE_H1_MM,
        TableHeights.FOLLOWING_H1_MM,
        1,
        used(source.text(set), print.texts().words()),
        row ->
            TableHeights.row(
                List.of(
                    new Cell(row.term(), TERM_SHARE * width),
                    new Cell(row.meaning(), MEANING_SHARE * width))));
  }

  /** All that the steps say. */
  static String text(StepPages steps) {
    return steps.all().stream()
        .map(StepEntry::text)
        .flatMap(
            text ->
                Stream.of(
                        Stream.of(text.title()),
                        text.sentences().stream(),
                        text.cautions().stream(),
                        text.tools().stream(),
                        text.settings().stream().map(StepText.SettingText::name))
                    .flatMap(each -> each))
        .collect(Collectors.joining("\n"));
  }

  /** All that is written in the pictures of the steps. */
  private static String drawn(PlanSet set, StepPages steps) {
    return steps.all().stream()
        .flatMap(step -> Stream.ofNullable(set.drawings().steps().get(step.number())))
        .flatMap(drawing -> drawing.elements().stream())
        .flatMap(Glossary::texts)
        .collect(Collectors.joining("\n"));
  }

  /** All that is said beside the pictures of joints. */
  private static String joints(JoineryPages joinery) {
    return joinery.entries().stream()
        .flatMap(
            joint ->
                Stream.concat(
                    Stream.of(joint.title()), joint.lines().stream().map(each -> each.words())))
        .collect(Collectors.joining("\n"));
  }

  private static Stream<String> texts(Element element) {
    return switch (element) {
      case Group group -> group.elements().stream().flatMap(Glossary::texts);
      case Text text -> Stream.of(text.text());
      default -> Stream.empty();
    };
  }

  private static Stream<String> forms(String key, Words words) {
    return Stream.of(words.say(key).split("\\|"));
  }

  /** Terms of which another is a word: a wall plug is no plug. */
  private static List<String> longer(String form, List<String> all) {
    return all.stream()
        .filter(each -> each.length() > form.length() && TermText.of(each).has(form))
        .toList();
  }

  /** The terms of a language that a text uses, in the order of its letters. */
  static List<Entry> used(String text, Words words) {
    TermText searched = TermText.of(text);
    List<String> keys =
        words.byKey().keySet().stream()
            .filter(key -> key.startsWith(TERM) && key.endsWith(WORDS))
            .toList();
    List<String> all = keys.stream().flatMap(key -> forms(key, words)).toList();
    return keys.stream()
        .filter(
            key ->
                forms(key, words)
                    .filter(searched::has)
                    .anyMatch(form -> searched.without(longer(form, all)).has(form)))
        .map(
            key ->
                new Entry(
                    Texts.capital(words.say(key).split("\\|")[0]),
                    words.say(key.substring(0, key.length() - WORDS.length()))))
        .sorted(Comparator.comparing(Entry::term, words.order()))
        .toList();
  }
}
