package storyrod.description;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;

/**
 * The language as a JSON Schema (draft 2020-12), with which an editor completes and checks a
 * description as it is written. It knows keys, words and shapes; what needs the meaning of a value,
 * such as whether a part of that name exists, only the reader can tell.
 */
public final class Schema {
  private static final String DRAFT = "https://json-schema.org/draft/2020-12/schema";
  private static final String FORMULA =
      "^[\\p{L}\\p{N}_.+\\-*/(),<>=\"'\\s]*[\\p{L}\\p{N})\"']\\s*$";
  private static final String FILE = "\\S\\.ya?ml\\s*$";
  private static final String ANYTHING = "\\S";
  private static final String PATH = "^[a-z][a-z0-9-]*(\\.[a-z0-9-]+)*";

  private final Vocabulary vocabulary;
  private final Map<EntryType, String> names;

  private Schema(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
    this.names = Kinds.of(vocabulary);
  }

  /** The schema of a whole description, as maps and lists in a fixed order. */
  public static Map<String, Object> of(Vocabulary vocabulary) {
    return new Schema(vocabulary).project();
  }

  private Map<String, Object> project() {
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("$schema", DRAFT);
    schema.put("title", "Storyrod description");
    schema.putAll(entry(Sections.PROJECT));
    Map<String, Object> definitions = new LinkedHashMap<>();
    names.entrySet().stream()
        .filter(kind -> kind.getKey() != Sections.PROJECT)
        .forEach(kind -> definitions.put(kind.getValue(), entry(kind.getKey())));
    schema.put("$defs", definitions);
    return schema;
  }

  private Map<String, Object> entry(EntryType type) {
    Map<String, Object> properties = new LinkedHashMap<>();
    type.keys().forEach(key -> properties.put(key.name(), key(key)));
    Map<String, Object> schema = map("description", type.summary());
    schema.put("type", "object");
    schema.put("properties", properties);
    List<String> required = type.keys().stream().filter(Key::required).map(Key::name).toList();
    if (!required.isEmpty()) {
      schema.put("required", required);
    }
    schema.put("additionalProperties", false);
    return schema;
  }

  private Map<String, Object> key(Key key) {
    Map<String, Object> schema = map("description", help(key));
    schema.putAll(value(key.type()));
    return schema;
  }

  private static String help(Key key) {
    String standard = key.standard().map(each -> " If left out: " + spoken(each) + ".").orElse("");
    return key.help() + " Write " + Meaning.of(key) + "." + standard;
  }

  private static String spoken(Key.Standard standard) {
    return standard.inch().equals(standard.mm())
        ? standard.inch()
        : standard.inch() + ", or " + standard.mm() + " where the unit is mm";
  }

  private Map<String, Object> value(ValueType type) {
    return switch (type) {
      case ValueType.Lengths lengths -> named(formula());
      case ValueType.Numbers numbers -> named(formula());
      case ValueType.Section section -> reference(section.type());
      case ValueType.SharedSection section ->
          map("anyOf", List.of(reference(section.type()), text(FILE)));
      case ValueType.Named named -> named(reference(named.type()));
      case ValueType.Listed listed -> list(reference(listed.type()));
      case ValueType.Joints joints -> list(oneOf(vocabulary.joints()));
      case ValueType.Cuts cuts -> list(oneOf(vocabulary.cuts()));
      case ValueType.Orders orders -> list(text("^\\s*(" + verbs() + ") +\\S+\\s*$"));
      case ValueType.Notes notes -> map("type", "object", "additionalProperties", words());
      case ValueType.OneOrMore some -> oneOrMore(value(some.each()));
      case ValueType.Point point -> point();
      case ValueType.Choice choice -> map("enum", choices(choice.words()));
      case ValueType.YesNo yesNo -> map("enum", List.of("yes", "no"));
      case ValueType.AxisName axis -> map("enum", axes());
      case ValueType.Text text -> words();
      case ValueType.Assemblies all -> named(reference(PartSections.ASSEMBLY));
      case ValueType.Kinds kinds -> list(oneOf(kinds.types()));
      case ValueType.Words lists -> named(severalWords(2));
      case ValueType.PartLists lists -> named(severalWords(1));
      case ValueType.Gifts gifts -> named(words());
      case ValueType.Others others -> named(Map.of());
      case ValueType.Place place -> point();
      case ValueType.FaceWord face -> map("enum", List.of(faces().split("\\|")));
      default -> single(type);
    };
  }

  /** A word that is a number is one for YAML too. */
  private static List<Object> choices(List<String> words) {
    return words.stream()
        .map(word -> word.matches("\\d+") ? (Object) Integer.valueOf(word) : word)
        .toList();
  }

  private static Map<String, Object> single(ValueType type) {
    return switch (type) {
      case ValueType.LengthValue length ->
          length.mayBeNegative() ? formula() : number("exclusiveMinimum", 0);
      case ValueType.Allowance allowance -> number("minimum", 0);
      case ValueType.Number number -> formula();
      case ValueType.AngleValue angle -> formula();
      case ValueType.Condition condition -> text("[<>=]");
      case ValueType.EdgeName edge -> text("^(" + faces() + ")-(" + faces() + ")$");
      case ValueType.Amount amount -> number("exclusiveMinimum", 0);
      case ValueType.Count count -> count(count.least());
      case ValueType.RangeValue range -> text("[\\s)\"']to[\\s(]");
      case ValueType.FaceName face -> text(PATH + "\\.(" + faces() + ")$");
      case ValueType.PartName part -> text(PATH + "$");
      case ValueType.ItemName item -> text(PATH + "$");
      case ValueType.StockName stock -> text(PATH + "$");
      case ValueType.MassValue mass -> text("\\S\\s*(kg|lb)$");
      case ValueType.PriceValue price -> text("^\\d+(\\.\\d+)? +per +(board-foot|sheet)$");
      case ValueType.VolumeValue volume -> text("^\\s*\\d+(\\.\\d+)? ?(ml|l|fl-oz|pt|qt|gal)\\s*$");
      case ValueType.CoverageValue coverage ->
          text("^\\s*\\d+(\\.\\d+)? ?(m2/l|ft2/gal|ft2/qt)\\s*$");
      case ValueType.SheetSizeValue size -> text("^\\s*\\S.* x .*\\S\\s*$");
      case ValueType.DateValue date -> text("^\\d{4}-\\d{2}-\\d{2}$");
      case ValueType.CurrencyValue currency -> text("^(" + ValueType.CurrencyValue.PATTERN + ")$");
      case ValueType.Fraction fraction -> text("^1 ?/ ?(1|2|4|8|16|32|64|128)$");
      default -> throw new IllegalStateException("bug: no schema for a " + type);
    };
  }

  private Map<String, Object> reference(EntryType type) {
    return map("$ref", "#/$defs/" + names.get(type));
  }

  private Map<String, Object> oneOf(List<EntryType> kinds) {
    Map<String, Object> properties = new LinkedHashMap<>();
    kinds.forEach(kind -> properties.put(kind.name(), reference(kind)));
    Map<String, Object> schema = map("type", "object", "properties", properties);
    schema.put("minProperties", 1);
    schema.put("maxProperties", 1);
    schema.put("additionalProperties", false);
    return schema;
  }

  private static Map<String, Object> named(Map<String, Object> each) {
    Map<String, Object> names =
        map("pattern", NameStyle.WRITTEN, "not", map("enum", NameStyle.TAKEN));
    Map<String, Object> schema = map("type", "object", "propertyNames", names);
    schema.put("additionalProperties", each);
    return schema;
  }

  private static Map<String, Object> severalWords(int least) {
    Map<String, Object> several = list(text(PATH + "$"));
    several.put("minItems", least);
    return several;
  }

  private static Map<String, Object> list(Map<String, Object> each) {
    return map("type", "array", "items", each);
  }

  private static Map<String, Object> oneOrMore(Map<String, Object> each) {
    Map<String, Object> several = list(each);
    several.put("minItems", 1);
    return map("anyOf", List.of(each, several));
  }

  private static Map<String, Object> point() {
    Map<String, Object> axes = new LinkedHashMap<>();
    axes().forEach(axis -> axes.put(axis, formula()));
    return map("type", "object", "properties", axes, "additionalProperties", false);
  }

  private static Map<String, Object> formula() {
    return map("type", List.of("string", "number"), "pattern", FORMULA);
  }

  private static Map<String, Object> number(String limit, int value) {
    return orFormula(map("type", "number", limit, value));
  }

  private static Map<String, Object> count(int least) {
    return orFormula(map("type", "integer", "minimum", least));
  }

  private static Map<String, Object> orFormula(Map<String, Object> written) {
    return map("anyOf", List.of(written, text(FORMULA)));
  }

  private static Map<String, Object> words() {
    return map("type", List.of("string", "number", "boolean"), "pattern", ANYTHING);
  }

  private static Map<String, Object> text(String pattern) {
    return map("type", "string", "pattern", pattern);
  }

  private String verbs() {
    return String.join("|", vocabulary.operations());
  }

  private static String faces() {
    return String.join("|", Arrays.stream(Face.values()).map(Face::word).toList());
  }

  private static List<String> axes() {
    return Arrays.stream(Axis.values()).map(Axis::word).toList();
  }

  /** A map that can be added to, of names and values by turns. */
  private static Map<String, Object> map(Object... pairs) {
    Map<String, Object> map = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      map.put((String) pairs[i], pairs[i + 1]);
    }
    return map;
  }
}
