package storyrod.description;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import storyrod.description.Node.Mapping;
import storyrod.description.Node.Member;
import storyrod.description.ValueType.Choice;
import storyrod.planset.Json;

/**
 * The schema against the reader, through a general validator: what one takes the other takes, and
 * each wrong key, missing key and wrong word is refused by both.
 */
class SchemaTest {
  private static final com.networknt.schema.Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(Json.text(Schema.of(ExampleFiles.VOCABULARY)));
  private static final String NONSENSE = "no-such-thing";

  static Stream<Path> projects() throws IOException {
    List<Path> found = new ArrayList<>();
    for (String root : List.of("projects", "src/test/resources/projects")) {
      try (Stream<Path> files = Files.walk(Path.of(root))) {
        files.filter(file -> file.endsWith("project.yaml")).sorted().forEach(found::add);
      }
    }
    return found.stream();
  }

  @ParameterizedTest
  @MethodSource("projects")
  void takesEveryProjectOfTheRepository(Path project) {
    assertEquals(List.of(), refused(Bench.read(project)));
  }

  @ParameterizedTest
  @MethodSource("storyrod.description.ExampleFiles#kinds")
  void takesEveryExample(EntryType kind) {
    assertEquals(List.of(), refused(ExampleFiles.source(kind).text()));
  }

  @ParameterizedTest
  @MethodSource("storyrod.description.ExampleFiles#kinds")
  void unknownKeyIsRefusedByBoth(EntryType kind) {
    SourceText source = ExampleFiles.source(kind);
    Mapping mapping = entry(kind, source);
    int at = mapping.members().getFirst().key().at().start();
    String end =
        isFlow(kind, source) ? ", " : "\n" + " ".repeat(new Span(source, at, at).column() - 1);
    assertRefused(source, at, at, NONSENSE + ": 1" + end, "unknown-key");
  }

  @ParameterizedTest
  @MethodSource("storyrod.description.ExampleFiles#kinds")
  void missingRequiredKeyIsRefusedByBoth(EntryType kind) {
    SourceText source = ExampleFiles.source(kind);
    List<Member> members = entry(kind, source).members();
    for (int i = 0; i < members.size(); i++) {
      if (isRequired(kind, members.get(i))) {
        boolean last = i + 1 == members.size();
        int from =
            last && i > 0
                ? members.get(i - 1).value().at().end()
                : members.get(i).key().at().start();
        int to = last ? members.get(i).value().at().end() : members.get(i + 1).key().at().start();
        boolean alone = members.size() == 1 && !isFlow(kind, source);
        assertRefused(source, from, to, alone ? "{}" : "", alone ? "" : "missing-key");
      }
    }
  }

  /** Whether it is written in braces. */
  private static boolean isFlow(EntryType kind, SourceText source) {
    return source.text().charAt(entry(kind, source).at().start()) == '{';
  }

  private static boolean isRequired(EntryType kind, Member member) {
    return kind.keys().stream()
        .anyMatch(key -> key.required() && key.name().equals(member.key().text()));
  }

  @ParameterizedTest
  @MethodSource("storyrod.description.ExampleFiles#kinds")
  void wrongWordIsRefusedByBoth(EntryType kind) {
    SourceText source = ExampleFiles.source(kind);
    Mapping mapping = entry(kind, source);
    for (Key key : kind.keys()) {
      mapping
          .get(key.name())
          .filter(value -> key.type() instanceof Choice)
          .ifPresent(
              value ->
                  assertRefused(
                      source, value.at().start(), value.at().end(), NONSENSE, "unknown-word"));
    }
  }

  @Test
  void everyKeyStandsInTheSchemaWithItsHelp() {
    String schema = Json.text(Schema.of(ExampleFiles.VOCABULARY));
    ExampleFiles.kinds()
        .flatMap(kind -> kind.keys().stream())
        .forEach(
            key ->
                assertTrue(
                    schema.contains(key.help().replace("\"", "\\\"")), () -> key.toString()));
  }

  @Test
  void formulaWithASignThatNoFormulaHasIsRefusedByBoth() {
    String text = ExampleFiles.source(PartSections.PART).text();
    String wrong = text.replace("width: 30", "width: 30 % 7");
    assertTrue(!refused(wrong).isEmpty());
    assertTrue(!ExampleFiles.faults(new SourceText("a", wrong)).isEmpty());
  }

  private static Mapping entry(EntryType kind, SourceText source) {
    List<Mapping> found = new ArrayList<>();
    Node root = YamlReader.read(source, new Diagnostics()).orElseThrow();
    Walk.over(
        root,
        ExampleFiles.VOCABULARY,
        (type, mapping) -> {
          if (type.equals(kind)) {
            found.add(mapping);
          }
        });
    return found.getFirst();
  }

  private static void assertRefused(
      SourceText source, int from, int to, String instead, String code) {
    String wrong = source.text().substring(0, from) + instead + source.text().substring(to);
    assertTrue(!refused(wrong).isEmpty(), () -> "the schema takes\n" + wrong);
    List<Diagnostic> faults = ExampleFiles.faults(new SourceText("wrong.yaml", wrong));
    assertTrue(
        faults.stream().anyMatch(each -> each.isError() && each.code().contains(code)),
        () -> "the reader says of\n" + wrong + faults);
  }

  private static List<String> refused(String yaml) {
    return SCHEMA.validate(yaml, InputFormat.YAML).stream()
        .map(error -> error.getInstanceLocation() + ": " + error.getMessage())
        .toList();
  }
}
