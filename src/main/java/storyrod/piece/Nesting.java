package storyrod.piece;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import storyrod.geometry.Lazy;

/**
 * Sub-assemblies inside sub-assemblies: a tree whose leaves are the parts and whose root is the
 * piece. What is put together into one sub-assembly, or into the piece, is called its units.
 */
public final class Nesting {
  /** The level of what is put together into the piece itself. */
  public static final String PIECE = "";

  private final Map<String, List<String>> units = new LinkedHashMap<>();
  private final Map<String, String> levels = new LinkedHashMap<>();
  private final Map<String, List<Part>> inside = new LinkedHashMap<>();
  private final Map<String, List<String>> around = new LinkedHashMap<>();
  private final Lazy<Set<String>> loose;

  private Nesting(Piece piece) {
    units.put(PIECE, new ArrayList<>());
    Set<String> known = known(piece);
    piece.parts().forEach(part -> enter(part, known));
    levels.keySet().forEach(unit -> around.put(unit, outwards(unit)));
    loose = new Lazy<>(() -> unjoined(Held.joining(piece.joints())));
  }

  private Set<String> unjoined(List<Joint> joints) {
    Set<String> all = new TreeSet<>();
    units.keySet().forEach(level -> all.addAll(new Held(this, joints, level).loose()));
    return Collections.unmodifiableSet(all);
  }

  public static Nesting of(Piece piece) {
    return new Nesting(piece);
  }

  private static Set<String> known(Piece piece) {
    Set<String> known = new LinkedHashSet<>(piece.description().assemblies().keySet());
    piece.parts().forEach(part -> part.assembly().ifPresent(known::add));
    return known;
  }

  private void enter(Part part, Set<String> known) {
    inside.put(part.name(), List.of(part));
    String unit = part.name();
    String level = part.assembly().orElse(PIECE);
    while (levels.putIfAbsent(unit, level) == null) {
      units.computeIfAbsent(level, key -> new ArrayList<>()).add(unit);
      if (!level.equals(PIECE)) {
        unit = level;
        level = parent(unit, known);
      }
    }
    for (String each = part.assembly().orElse(PIECE); !each.equals(PIECE); each = level(each)) {
      inside.computeIfAbsent(each, key -> new ArrayList<>()).add(part);
    }
  }

  private static String parent(String assembly, Set<String> known) {
    String outer = assembly.substring(0, Math.max(assembly.lastIndexOf('.'), 0));
    return known.contains(outer) ? outer : PIECE;
  }

  /** All sub-assemblies with their units' names, the piece first; units in the piece's order. */
  public Map<String, List<String>> units() {
    return Collections.unmodifiableMap(units);
  }

  /** The sub-assembly that a part or a sub-assembly is put into, or {@link #PIECE}. */
  public String level(String unit) {
    return Optional.ofNullable(levels.get(unit))
        .orElseThrow(() -> new IllegalStateException("bug: no unit " + unit));
  }

  public boolean isAssembly(String unit) {
    return units.containsKey(unit);
  }

  /** The parts of a part or a sub-assembly, those of inner sub-assemblies included. */
  public List<Part> parts(String unit) {
    return Collections.unmodifiableList(inside.get(unit));
  }

  /** All units around a part, the part itself first, the outermost sub-assembly last. */
  public List<String> around(String part) {
    return Optional.ofNullable(around.get(part))
        .orElseThrow(() -> new IllegalStateException("bug: no unit " + part));
  }

  private List<String> outwards(String part) {
    return Stream.iterate(part, unit -> !unit.equals(PIECE), this::level).toList();
  }

  /** Whether a part or a sub-assembly is another one or lies somewhere in it. */
  public boolean isIn(String unit, String outer) {
    return outer.equals(PIECE) || around(unit).contains(outer);
  }

  /**
   * The units that no joint connects with anything else, wherever they stand: drawers, doors,
   * shelves. The largest thing that hangs together on a level is its body and never loose.
   */
  public Set<String> loose() {
    return loose.get();
  }

  /** The innermost loose unit that a part belongs to. */
  public Optional<String> looseUnit(String part) {
    return around(part).stream().filter(loose()::contains).findFirst();
  }

  /**
   * Whether hardware that serves some parts hangs this one of them in or on the others, as slides
   * hang a drawer's side in a case: it belongs to a loose unit that does not hold them all.
   */
  public boolean isHung(String part, List<String> served) {
    return looseUnit(part)
        .filter(unit -> served.stream().anyMatch(other -> !isIn(other, unit)))
        .isPresent();
  }

  /** The loose units that hardware which serves some parts hangs, in the order of the parts. */
  public List<String> hungBy(List<String> served) {
    return served.stream()
        .filter(part -> isHung(part, served))
        .flatMap(part -> looseUnit(part).stream())
        .distinct()
        .toList();
  }
}
