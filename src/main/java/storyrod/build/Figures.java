package storyrod.build;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;

/** The tables of times, tools and cautions by trait; lines that start with # are remarks. */
public final class Figures {
  public static final Figures STANDARD =
      new Figures(read("times.csv"), read("tools.csv"), read("cautions.csv"));

  private final Map<String, List<List<String>>> times;
  private final Map<String, List<List<String>>> tools;
  private final Map<String, List<List<String>>> cautions;

  private Figures(
      Map<String, List<List<String>>> times,
      Map<String, List<List<String>>> tools,
      Map<String, List<List<String>>> cautions) {
    this.times = times;
    this.tools = tools;
    this.cautions = cautions;
  }

  /** Minutes to set up once for a step. */
  int setUp(List<String> traits) {
    return traits.stream().mapToInt(trait -> time(trait, 1)).max().orElse(0);
  }

  /** Minutes of work for each operation. */
  int work(List<String> traits) {
    return traits.stream().mapToInt(trait -> time(trait, 2)).sum();
  }

  /** Minutes to wait afterwards. */
  int waiting(List<String> traits) {
    return traits.stream().mapToInt(trait -> time(trait, 3)).max().orElse(0);
  }

  List<String> tools(List<String> traits) {
    return keys(tools, traits);
  }

  /** Caution keys, in the order of the table, which puts the gravest first. */
  List<String> cautions(List<String> traits) {
    return cautions.entrySet().stream()
        .flatMap(entry -> entry.getValue().stream())
        .filter(row -> traits.contains(row.getFirst()))
        .map(row -> row.get(1))
        .distinct()
        .toList();
  }

  /** All traits that the table of times knows, in its order. */
  public List<String> traits() {
    return List.copyOf(times.keySet());
  }

  /** All tools that the table of tools knows, in its order. */
  List<String> allTools() {
    return tools.values().stream().flatMap(List::stream).map(row -> row.get(1)).distinct().toList();
  }

  private int time(String trait, int column) {
    List<List<String>> rows = times.get(trait);
    if (rows == null) {
      throw new IllegalStateException("bug: no times for " + trait);
    }
    return Integer.parseInt(rows.getFirst().get(column));
  }

  private static List<String> keys(Map<String, List<List<String>>> table, List<String> traits) {
    LinkedHashSet<String> keys = new LinkedHashSet<>();
    traits.forEach(
        trait -> table.getOrDefault(trait, List.of()).forEach(row -> keys.add(row.get(1))));
    return List.copyOf(keys);
  }

  static Map<String, List<List<String>>> read(String file) {
    Map<String, List<List<String>>> rows = new LinkedHashMap<>();
    try (InputStream in = Figures.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException("bug: no table " + file);
      }
      new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.isBlank() && !line.startsWith("#"))
          .skip(1)
          .map(line -> List.of(line.split(",", 4)))
          .forEach(row -> rows.computeIfAbsent(row.getFirst(), key -> new ArrayList<>()).add(row));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return Collections.unmodifiableMap(rows);
  }
}
