package storyrod.description;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import storyrod.description.Choices.Choice;
import storyrod.description.Node.Mapping;
import storyrod.geometry.Face;
import storyrod.measure.LengthFormat;
import storyrod.measure.Unit;

/**
 * The names of a description, of a sub-assembly, or of one of several that are repeated. What is
 * not found in a sub-assembly written in place is looked up outside; one that is a description of
 * its own knows only what it is given.
 */
final class Scope {
  private final String prefix;
  private final Optional<Scope> outer;
  private final Unit unit;
  private final Pool pool;
  private final Map<String, Cell> values = new LinkedHashMap<>();
  private final Map<String, Choice> choices = new LinkedHashMap<>();
  private final Map<String, StockCells> stocks = new LinkedHashMap<>();
  private final Map<String, ItemCells> items = new LinkedHashMap<>();
  private final Map<String, PartCells> parts = new LinkedHashMap<>();
  private final Map<String, Assembly> assemblies = new LinkedHashMap<>();
  private final Map<String, Alias> aliases = new LinkedHashMap<>();
  private final Map<String, Instances> instances = new LinkedHashMap<>();
  private final Map<String, Nth> nth = new LinkedHashMap<>();
  private final Set<String> given = new LinkedHashSet<>();
  private Optional<Mapping> text = Optional.empty();
  private boolean open;
  private boolean unread;
  private boolean stockless;

  private Scope(String prefix, Optional<Scope> outer, Unit unit, Pool pool) {
    this.prefix = prefix;
    this.outer = outer;
    this.unit = unit;
    this.pool = pool;
  }

  /** A part's full name and where its faces lie. */
  record PartCells(String name, Map<Face, Cell> faces) {}

  /** A stock's name in the whole project and its thickness. */
  record StockCells(String name, Cell thickness) {}

  /** An item's name in the whole project and its sizes by key. */
  record ItemCells(String name, Map<String, Cell> sizes) {}

  /** One of the parts or sub-assemblies that an entry stands for, with the names that it knows. */
  record Instance(String name, Scope scope) {}

  /**
   * All parts or sub-assemblies that an entry stands for: one, several if it is repeated, or none
   * if it is left out.
   *
   * @param name the entry's full name
   */
  record Instances(String name, List<Instance> all) {
    Instances {
      all = List.copyOf(all);
    }

    /** Whether the entry stands for one thing under its own name. */
    boolean isOne(String entry) {
      return all.size() == 1 && all.getFirst().name().equals(entry);
    }
  }

  /** Which of how many is spoken of. */
  record Nth(int number, int count) {}

  /** The names of a project, whose bare numbers are what its plan set prints. */
  static Scope ofProject(LengthFormat printed) {
    return new Scope("", Optional.empty(), printed.unit(), new Pool(printed));
  }

  /** For a sub-assembly written in place. */
  Scope ofAssembly(String name) {
    return new Scope(fullName(name) + ".", Optional.of(this), unit, pool);
  }

  /** For a description that is used as a sub-assembly. */
  Scope ofUse(String name, Unit ownUnit) {
    return new Scope(fullName(name) + ".", Optional.empty(), ownUnit, pool);
  }

  /** The same names and a few more, for one of several. */
  Scope within() {
    return new Scope(prefix, Optional.of(this), unit, pool);
  }

  /** Other values for some of the names, which nothing outside it sees. */
  Scope aside() {
    return new Scope(prefix, Optional.of(this), unit, new Pool(pool.printed()));
  }

  String fullName(String name) {
    return prefix + name;
  }

  Unit unit() {
    return unit;
  }

  Pool pool() {
    return pool;
  }

  /** Sizes and numbers. */
  Map<String, Cell> values() {
    return values;
  }

  Map<String, Choice> choices() {
    return choices;
  }

  Map<String, StockCells> stocks() {
    return stocks;
  }

  Map<String, ItemCells> items() {
    return items;
  }

  Map<String, PartCells> parts() {
    return parts;
  }

  Map<String, Assembly> assemblies() {
    return assemblies;
  }

  /** Other names for parts. */
  Map<String, Alias> aliases() {
    return aliases;
  }

  /** For each part and sub-assembly as written, those that there are. */
  Map<String, Instances> instances() {
    return instances;
  }

  /** For repeated parts and sub-assemblies by full name, which of them is spoken of here. */
  Map<String, Nth> nth() {
    return nth;
  }

  /** Which of several is spoken of: of these, or of others of which there are as many. */
  Optional<Nth> which(Instances several) {
    return find(Scope::nth, several.name())
        .or(
            () ->
                all(Scope::nth)
                    .flatMap(each -> find(Scope::nth, each).stream())
                    .filter(each -> each.count() == several.all().size())
                    .findFirst())
        .filter(each -> each.number() <= several.all().size());
  }

  /** Whether another scope is this one or one around it, without a frame of its own between. */
  boolean sharesFrame(Scope other) {
    return chain().anyMatch(each -> each == other);
  }

  /** Whether parts have no places yet, since it is not yet known which parts there are. */
  boolean isOpen() {
    return open || outer.filter(Scope::isOpen).isPresent();
  }

  void setOpen(boolean isOpen) {
    open = isOpen;
  }

  /** Whether it stands for a description that could not be read, of which no more need be said. */
  boolean isUnread() {
    return unread;
  }

  void setUnread() {
    unread = true;
  }

  /** Whether its parts need stock and there is none, which is told once for all of them. */
  boolean lacksStock() {
    return stockless || outer.filter(Scope::lacksStock).isPresent();
  }

  void setLacksStock(boolean lacks) {
    stockless = lacks;
  }

  /** Whether it is that of a description, and not of something written in one. */
  boolean isWhole() {
    return outer.isEmpty();
  }

  /** The names whose meaning comes from outside. */
  Set<String> given() {
    return given;
  }

  /** The text that these are the names of, where it is that of a sub-assembly. */
  Optional<Mapping> text() {
    return text;
  }

  void setText(Mapping description) {
    text = Optional.of(description);
  }

  /** What a name stands for here, or else outside. */
  <T> Optional<T> find(Function<Scope, Map<String, T>> names, String name) {
    T own = names.apply(this).get(name);
    return own != null ? Optional.of(own) : outer.flatMap(each -> each.find(names, name));
  }

  /** All names of one sort that can be used here. */
  <T> Stream<String> all(Function<Scope, Map<String, T>> names) {
    return chain().flatMap(scope -> names.apply(scope).keySet().stream()).distinct();
  }

  private Stream<Scope> chain() {
    return Stream.concat(Stream.of(this), outer.stream().flatMap(Scope::chain));
  }
}
