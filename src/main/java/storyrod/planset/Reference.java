package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.description.EntryType;
import storyrod.description.Examples;
import storyrod.description.Key;
import storyrod.description.Kinds;
import storyrod.description.Meaning;
import storyrod.description.SourceText;
import storyrod.description.TradeItem;
import storyrod.description.ValueType;
import storyrod.description.Vocabulary;
import storyrod.wood.SheetMaterial;
import storyrod.wood.SheetMaterials;
import storyrod.wood.Species;
import storyrod.wood.SpeciesTable;
import storyrod.words.Words;

/**
 * The page from which the language can be learnt, made from the lists that the reader reads by:
 * every kind of entry with its keys, what they take, what holds if they are left out, and an
 * example.
 */
public final class Reference {
  private static final String ENDING = ".yaml";
  private static final String JOINT = "joint-";
  private static final String CUT = "cut-";
  private static final String SHAPE = "shape-";

  private final Vocabulary vocabulary;
  private final Map<EntryType, String> names;
  private final Map<String, SourceText> examples;

  private Reference(Vocabulary vocabulary, List<SourceText> examples) {
    this.vocabulary = vocabulary;
    this.names = Kinds.of(vocabulary);
    this.examples = byName(examples);
  }

  /**
   * What the page shows beside the lists.
   *
   * @param chapters the examples of its introduction, and the files that these use
   * @param examples one whole description for each kind of entry, named by it
   * @param subAssemblies the descriptions that come with the tool to be used in others
   */
  public record Sources(
      List<SourceText> chapters, List<SourceText> examples, List<SourceText> subAssemblies) {}

  /** The page as HTML, with everything that it needs in itself. */
  public static String html(Vocabulary vocabulary, Sources sources) {
    Reference reference = new Reference(vocabulary, sources.examples());
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("chapters", chapters(sources.chapters()));
    data.put("kinds", reference.kinds(""));
    data.put("joints", reference.kinds(JOINT));
    data.put("cuts", reference.kinds(CUT));
    data.put("shapes", reference.kinds(SHAPE));
    data.put("verbs", vocabulary.operations());
    data.put("tradeItems", tradeItems());
    data.put("woods", SpeciesTable.all().stream().map(Species::name).toList());
    data.put("sheets", SheetMaterials.all().stream().map(SheetMaterial::name).toList());
    data.put("subAssemblies", sources.subAssemblies().stream().map(ShippedPage::of).toList());
    return Templates.SHARED.render("reference/page.ftl", Words.ENGLISH, data);
  }

  /** The items that come with the tool, by their kinds. */
  private static Map<String, List<TradeItem>> tradeItems() {
    return TradeItem.all().stream()
        .collect(Collectors.groupingBy(TradeItem::kind, LinkedHashMap::new, Collectors.toList()));
  }

  /** A kind of entry; the places are where it is written. */
  public record Kind(
      String id,
      String name,
      String summary,
      List<Place> places,
      List<KeyRow> keys,
      List<ShownText.Line> example) {}

  /**
   * A key that takes entries of a kind.
   *
   * @param form {@code named}, {@code listed} or {@code single}
   */
  public record Place(String owner, String ownerId, String key, String form) {}

  /** A key as the reference shows it; what is not there is an empty text. */
  public record KeyRow(
      String name,
      boolean required,
      String help,
      String meaning,
      String link,
      String inch,
      String mm,
      String example) {}

  private List<Kind> kinds(String prefix) {
    return names.entrySet().stream()
        .filter(each -> group(each.getValue()).equals(prefix))
        .map(each -> kind(each.getKey(), each.getValue()))
        .toList();
  }

  private static String group(String id) {
    return Stream.of(JOINT, CUT, SHAPE).filter(id::startsWith).findFirst().orElse("");
  }

  private Kind kind(EntryType type, String id) {
    SourceText example = examples.get(id);
    if (example == null) {
      throw new IllegalStateException("bug: no example for " + id);
    }
    Map<String, String> written = Examples.of(type, example, vocabulary);
    return new Kind(
        id,
        type.name(),
        type.summary(),
        places(type),
        type.keys().stream().map(key -> row(key, written.getOrDefault(key.name(), ""))).toList(),
        ShownText.shown(example));
  }

  private KeyRow row(Key key, String example) {
    return new KeyRow(
        key.name(),
        key.required(),
        key.help(),
        Meaning.of(key.type()),
        link(key.type()),
        key.standard().map(Key.Standard::inch).orElse(""),
        key.standard().map(Key.Standard::mm).orElse(""),
        example);
  }

  /** Where on the page a value's kinds are told: a chapter, if it is one of a group. */
  private String link(ValueType type) {
    return switch (type) {
      case ValueType.Joints joints -> "joints";
      case ValueType.Cuts cuts -> "cuts";
      case ValueType.Kinds kinds -> kinds.what() + "s";
      case ValueType.Condition condition -> "conditions";
      default -> Kinds.inside(type).stream().findFirst().map(names::get).orElse("");
    };
  }

  private List<Place> places(EntryType type) {
    List<Place> places = new ArrayList<>();
    names.forEach(
        (owner, id) ->
            owner.keys().stream()
                .filter(key -> Kinds.inside(key.type()).contains(type))
                .forEach(key -> places.add(new Place(owner.name(), id, key.name(), form(key)))));
    return places;
  }

  private static String form(Key key) {
    if (key.type() instanceof ValueType.Named || key.type() instanceof ValueType.Assemblies) {
      return "named";
    }
    return key.type() instanceof ValueType.Listed ? "listed" : "single";
  }

  private static Map<String, SourceText> byName(List<SourceText> sources) {
    Map<String, SourceText> byName = new LinkedHashMap<>();
    sources.forEach(source -> byName.put(source.file().replace(ENDING, ""), source));
    return byName;
  }

  /** The introduction's examples by their names without the number that orders them. */
  private static Map<String, List<ShownText.Line>> chapters(List<SourceText> sources) {
    Map<String, List<ShownText.Line>> chapters = new LinkedHashMap<>();
    byName(sources)
        .forEach(
            (name, source) ->
                chapters.put(name.replaceFirst("^[0-9]+-", ""), ShownText.shown(source)));
    return chapters;
  }
}
