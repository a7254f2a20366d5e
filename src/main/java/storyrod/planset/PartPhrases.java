package storyrod.planset;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import storyrod.build.Levels;
import storyrod.description.AssemblyEntry;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * What a template needs to speak of parts: equal ones together with their count, and where one of
 * several sits. Each phrase has {@code title}, {@code mark}, {@code count}, {@code places} and
 * {@code numbers}, which tell apart sub-assemblies of one title.
 */
record PartPhrases(Piece piece) {
  private static final Pattern NUMBERED = Pattern.compile("(.+) (\\d{1,4})");

  /** The parts of one level, equal ones together: a left and a right side as two sides. */
  List<Map<String, Object>> parts(Collection<String> names) {
    Map<String, List<Part>> alike = new LinkedHashMap<>();
    names.stream()
        .distinct()
        .map(piece::part)
        .forEach(
            part ->
                alike
                    .computeIfAbsent(common(part) + "/" + part.mark(), key -> new ArrayList<>())
                    .add(part));
    return alike.values().stream().map(this::phrase).toList();
  }

  /** The marks of parts with their counts, each mark once, in the order of the marks. */
  List<Map<String, Object>> marks(Collection<String> names) {
    return piece.marks().stream()
        .map(mark -> phrase(mark.title(), mark.mark(), common(mark.parts(), names), List.of()))
        .filter(phrase -> !phrase.get("count").equals(0))
        .toList();
  }

  /** What the titles of all parts of a part's mark end in, if they have that in common. */
  private String common(Part part) {
    String title = piece.mark(part.mark()).title();
    return part.title().toLowerCase(Locale.ROOT).endsWith(title.toLowerCase(Locale.ROOT))
        ? title
        : part.title();
  }

  private static int common(List<String> parts, Collection<String> names) {
    return (int) parts.stream().filter(names::contains).count();
  }

  /**
   * Parts as {@link #parts} gives them, those of a finished sub-assembly spoken of as that; equal
   * sub-assemblies together.
   *
   * @param level the sub-assembly that is being built, whose own parts go by their names
   */
  List<Map<String, Object>> units(Collection<String> names, String level) {
    Map<String, String> unitOf = new LinkedHashMap<>();
    Levels.withFronts(piece).getOrDefault(level, List.of()).stream()
        .filter(unit -> piece.description().assemblies().containsKey(unit.name()))
        .forEach(unit -> unit.partNames().forEach(part -> unitOf.put(part, unit.name())));
    List<String> single = names.stream().filter(name -> !unitOf.containsKey(name)).toList();
    List<String> titles =
        names.stream()
            .flatMap(name -> Optional.ofNullable(unitOf.get(name)).stream())
            .distinct()
            .map(name -> assembly(name).title())
            .toList();
    List<Map<String, Object>> phrases = new ArrayList<>(parts(single));
    phrases.addAll(titled(titles));
    return phrases;
  }

  /** Sub-assemblies by their titles. */
  List<Map<String, Object>> assemblies(Collection<String> names) {
    return titled(names.stream().map(name -> assembly(name).title()).toList());
  }

  /**
   * Some sub-assemblies, if the title of one ends in a number that tells them apart; one alone also
   * if the piece has another with parts of the same titles.
   */
  List<Map<String, Object>> toldApart(Collection<String> names) {
    List<String> assemblies =
        names.stream().filter(piece.description().assemblies()::containsKey).toList();
    boolean isOneOfMany = assemblies.size() == 1 && hasTwin(assemblies.getFirst());
    List<String> titles = assemblies.stream().map(name -> assembly(name).title()).toList();
    boolean isNumbered = titles.stream().anyMatch(title -> NUMBERED.matcher(title).matches());
    return isOneOfMany || isNumbered ? titled(titles) : List.of();
  }

  private boolean hasTwin(String assembly) {
    Map<String, List<String>> units = Nesting.of(piece).units();
    Set<String> titles = titles(units.getOrDefault(assembly, List.of()));
    return !titles.isEmpty()
        && units.entrySet().stream()
            .filter(other -> !other.getKey().equals(assembly))
            .anyMatch(other -> titles(other.getValue()).equals(titles));
  }

  private Set<String> titles(List<String> units) {
    return piece.parts().stream()
        .filter(part -> units.contains(part.name()))
        .map(Part::title)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** Sub-assemblies by their titles; those told apart only by a number at the end together. */
  private static List<Map<String, Object>> titled(List<String> titles) {
    Map<String, List<Integer>> numbers = new LinkedHashMap<>();
    for (String title : titles) {
      Matcher numbered = NUMBERED.matcher(title);
      List<Integer> of =
          numbers.computeIfAbsent(
              numbered.matches() ? numbered.group(1) : title, key -> new ArrayList<>());
      of.add(numbered.matches() ? Integer.parseInt(numbered.group(2)) : 0);
    }
    List<Map<String, Object>> phrases = new ArrayList<>();
    numbers.forEach(
        (title, all) -> {
          Map<String, Object> phrase = phrase(title, "", all.size(), List.of());
          phrase.put("numbers", all.stream().filter(number -> number > 0).sorted().toList());
          phrases.add(phrase);
        });
    return phrases;
  }

  private AssemblyEntry assembly(String name) {
    return Optional.ofNullable(piece.description().assemblies().get(name))
        .orElseThrow(() -> new IllegalStateException("bug: no sub-assembly " + name));
  }

  private Map<String, Object> phrase(List<Part> alike) {
    Part first = alike.getFirst();
    boolean isOneTitle = alike.stream().map(Part::title).distinct().count() == 1;
    String title = isOneTitle ? first.title() : common(first);
    List<String> places = new ArrayList<>(places(first));
    alike.forEach(part -> places.retainAll(places(part)));
    return phrase(title, first.mark(), alike.size(), places);
  }

  private static Map<String, Object> phrase(
      String title, String mark, int count, List<String> places) {
    Map<String, Object> phrase = new LinkedHashMap<>();
    phrase.put("title", title);
    phrase.put("mark", mark);
    phrase.put("count", count);
    phrase.put("places", places);
    phrase.put("numbers", List.of());
    return phrase;
  }

  /** One part, by its place among those of its title. */
  Map<String, Object> part(Part part) {
    return phrase(List.of(part));
  }

  /** Which of the parts of its title and level a part is, by the ends of the axes it sits at. */
  List<String> places(Part part) {
    List<Part> others =
        piece.parts().stream()
            .filter(other -> other.title().equals(part.title()))
            .filter(other -> other.assembly().equals(part.assembly()))
            .toList();
    List<String> places = new ArrayList<>();
    for (Axis axis : Axis.values()) {
      List<Length> at =
          others.stream().map(other -> middle(other, axis)).distinct().sorted().toList();
      if (at.size() > 1 && middle(part, axis).equals(at.getFirst())) {
        places.add(Face.of(axis, -1).word());
      } else if (at.size() > 1 && middle(part, axis).equals(at.getLast())) {
        places.add(Face.of(axis, 1).word());
      }
    }
    return places;
  }

  private static Length middle(Part part, Axis axis) {
    return part.bounds().on(axis).from().plus(part.bounds().on(axis).to());
  }
}
