package storyrod.description;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import storyrod.geometry.Face;

/**
 * The names of a description or of one of its assemblies; what is not found is looked up outside.
 */
final class Scope {
  private final String prefix;
  private final Optional<Scope> outer;
  private final Map<String, Cell> values = new LinkedHashMap<>();
  private final Map<String, Cell> stocks = new LinkedHashMap<>();
  private final Map<String, PartCells> parts = new LinkedHashMap<>();
  private final Map<String, Scope> assemblies = new LinkedHashMap<>();
  private final Map<String, Span> items = new LinkedHashMap<>();

  private Scope(String prefix, Optional<Scope> outer) {
    this.prefix = prefix;
    this.outer = outer;
  }

  /** A part's full name and where its faces lie. */
  record PartCells(String name, Map<Face, Cell> faces) {}

  static Scope ofProject() {
    return new Scope("", Optional.empty());
  }

  Scope ofAssembly(String name) {
    return new Scope(fullName(name) + ".", Optional.of(this));
  }

  String fullName(String name) {
    return prefix + name;
  }

  /** Sizes and numbers. */
  Map<String, Cell> values() {
    return values;
  }

  /** The thickness of each stock. */
  Map<String, Cell> stocks() {
    return stocks;
  }

  Map<String, PartCells> parts() {
    return parts;
  }

  Map<String, Scope> assemblies() {
    return assemblies;
  }

  Map<String, Span> items() {
    return items;
  }

  /** What a name stands for here, or else outside. */
  <T> Optional<T> find(Function<Scope, Map<String, T>> names, String name) {
    return chain()
        .flatMap(scope -> Optional.ofNullable(names.apply(scope).get(name)).stream())
        .findFirst();
  }

  /** All names of one sort that can be used here. */
  <T> Stream<String> all(Function<Scope, Map<String, T>> names) {
    return chain().flatMap(scope -> names.apply(scope).keySet().stream()).distinct();
  }

  private Stream<Scope> chain() {
    return Stream.concat(Stream.of(this), outer.stream().flatMap(Scope::chain));
  }
}
