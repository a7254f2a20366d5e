package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import storyrod.cli.PrintedProjects;
import storyrod.drawing.AllProjects;
import storyrod.words.Words;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The published schema of {@code plan.json} against all projects, through a general validator. */
class PlanSchemaTest {
  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(PlanSchema.text());

  private static final JsonMapper MAPPER = new JsonMapper();

  /** Keys that a plan may be without; the schema has no others that are not required. */
  private static final Set<String> MAY_BE_MISSING =
      Set.of(
          "maker",
          "summary",
          "edition",
          "date",
          "turned",
          "staves",
          "board_width_um",
          "staves_laid",
          "strips_um",
          "saw_cuts",
          "moves",
          "on_hand",
          "through_um",
          "for",
          "also_for",
          "haunch",
          "haunch_um");

  private static final Map<String, JsonNode> PLANS =
      Stream.concat(
              AllProjects.all().stream().map(each -> Map.entry(each.name(), each.set())),
              Stream.of(Map.entry("dining-table with what is on hand", ofTheMaker())))
          .collect(
              Collectors.toMap(
                  Map.Entry::getKey,
                  each -> plan(each.getValue()),
                  (one, other) -> one,
                  TreeMap::new));

  /** What is on hand is the maker's, and so in the plans of the maker's editions alone. */
  private static PlanSet ofTheMaker() {
    PrintedProjects table = PrintedProjects.named("dining-table");
    return table.drawn(table.usualPaper(), "record");
  }

  /** The plan without the pages around it. */
  private static JsonNode plan(PlanSet set) {
    Texts texts = new Texts(set.piece().description().format(), Words.ENGLISH);
    StepWriter writer = new StepWriter(set.piece(), Words.ENGLISH, Templates.SHARED, set.build());
    Print print = Print.of(set.piece(), set.build(), Printing.usual(Words.ENGLISH));
    StepPages steps = StepPages.of(set, new StepPages.Sheet(print, writer::write));
    return MAPPER.readTree(PlanJson.write(set, steps, texts));
  }

  private static List<String> refused(JsonNode plan) {
    return SCHEMA.validate(plan).stream().map(Object::toString).toList();
  }

  @TestFactory
  List<DynamicTest> takesThePlanOfEveryProject() {
    return PLANS.entrySet().stream()
        .map(
            plan ->
                DynamicTest.dynamicTest(
                    plan.getKey(), () -> assertEquals(List.of(), refused(plan.getValue()))))
        .toList();
  }

  @Test
  void refusesAPlanWithAnyKeyMissingAddedOrOfAnotherType() {
    Set<String> seen = new TreeSet<>();
    Set<String> taken = new TreeSet<>();
    for (JsonNode plan : PLANS.values()) {
      faults(plan, seen)
          .forEach(
              (name, fault) -> {
                JsonNode wrong = plan.deepCopy();
                fault.accept(wrong);
                if (SCHEMA.validate(wrong).isEmpty()) {
                  taken.add(name);
                }
              });
    }
    assertEquals(Set.of(), taken);
    assertTrue(seen.size() > 200, () -> "shapes and keys tried: " + seen.size());
  }

  /** One fault of each sort at the first place of each shape, such as the depth of a cut. */
  private static Map<String, Consumer<JsonNode>> faults(JsonNode plan, Set<String> seen) {
    Map<String, Consumer<JsonNode>> faults = new LinkedHashMap<>();
    walk(
        plan,
        "",
        (path, object) -> {
          String shape = path.replaceAll("/\\d+", "/*") + " " + object.path("kind").asString("");
          if (seen.add(shape)) {
            faults.put(shape + " added", root -> at(root, path).put("no_such_key", 1));
          }
          for (String key : object.propertyNames()) {
            if (seen.add(shape + "/" + key)) {
              faults.put(
                  shape + " " + key + " typed",
                  root -> at(root, path).set(key, wrong(object.get(key))));
              if (!MAY_BE_MISSING.contains(key)) {
                faults.put(shape + " " + key + " missing", root -> at(root, path).remove(key));
              }
            }
          }
        });
    return faults;
  }

  private static ObjectNode at(JsonNode root, String path) {
    return (ObjectNode) root.at(path);
  }

  /** A value of another type. */
  private static JsonNode wrong(JsonNode value) {
    return value.isString()
        ? MAPPER.getNodeFactory().numberNode(1)
        : MAPPER.getNodeFactory().stringNode("no such value");
  }

  private interface Visit {
    void accept(String path, ObjectNode object);
  }

  private static void walk(JsonNode node, String path, Visit visit) {
    if (node instanceof ObjectNode object) {
      visit.accept(path, object);
      object
          .propertyStream()
          .forEach(each -> walk(each.getValue(), path + "/" + each.getKey(), visit));
    } else if (node instanceof ArrayNode array) {
      for (int i = 0; i < array.size(); i++) {
        walk(array.get(i), path + "/" + i, visit);
      }
    }
  }

  @Test
  void everyKeyOfTheSchemaStandsInAProject() {
    Set<String> unused = new TreeSet<>();
    JsonNode schema = MAPPER.readTree(PlanSchema.text());
    walk(
        schema,
        "",
        (path, object) -> {
          if (object.has("properties")) {
            object.get("properties").propertyNames().forEach(unused::add);
          }
        });
    PLANS
        .values()
        .forEach(plan -> walk(plan, "", (path, each) -> unused.removeAll(each.propertyNames())));
    assertEquals(Set.of("moves"), unused, "no project has a part that comes in with two moves");
  }

  @Test
  void versionOfTheSchemaIsTheFormatOfThePlan() {
    JsonNode schema = MAPPER.readTree(PlanSchema.text());
    ObjectNode plan = (ObjectNode) PLANS.get("bookcase").deepCopy();
    assertEquals(schema.at("/properties/format/const").asInt(), plan.path("format").asInt());
    assertEquals("urn:storyrod:plan:" + plan.path("format").asInt(), schema.path("$id").asString());
    assertFalse(refused(plan.put("format", 2)).isEmpty());
  }
}
