package storyrod.build;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * What is put together into what: for each sub-assembly its units, inner ones first, and last the
 * piece's.
 *
 * <p>What comes late, a drawer or a door, a top or a screwed-on back, is not put into the
 * sub-assembly it stands in but, when that has its place, into the piece; or into the innermost
 * sub-assembly around it that comes late as a whole.
 */
public final class Levels {
  private final Piece piece;
  private final Nesting nesting;
  private final Map<String, Integer> places = new HashMap<>();
  private final Set<String> late = new TreeSet<>();
  private final Map<String, String> drawers;
  private final Map<String, List<String>> homes = new LinkedHashMap<>();

  private Levels(Piece piece, boolean frontsApart) {
    this.piece = piece;
    this.nesting = Nesting.of(piece);
    piece.parts().forEach(part -> places.put(part.name(), places.size()));
    this.drawers = frontsApart ? Fronts.byDrawer(piece, nesting) : Map.of();
    late.addAll(nesting.loose());
    late.addAll(Late.tops(piece, nesting));
    late.addAll(Backs.removable(piece));
    nesting
        .units()
        .forEach(
            (level, units) ->
                units.forEach(
                    unit -> homes.computeIfAbsent(home(unit), key -> new ArrayList<>()).add(unit)));
  }

  static Map<String, List<Unit>> of(Piece piece) {
    return new Levels(piece, true).units();
  }

  /** The levels of a drawing, in which a drawer's front belongs to its drawer. */
  public static Map<String, List<Unit>> withFronts(Piece piece) {
    return new Levels(piece, false).units();
  }

  /** By the name of each unit, the level on which it is put in place. */
  public static Map<String, String> byUnit(Piece piece) {
    Map<String, String> levels = new TreeMap<>();
    of(piece).forEach((level, units) -> units.forEach(unit -> levels.put(unit.name(), level)));
    return levels;
  }

  private String home(String unit) {
    return Optional.ofNullable(drawers.get(unit))
        .map(this::home)
        .orElseGet(() -> late.contains(unit) ? outside(unit) : nesting.level(unit));
  }

  private String outside(String unit) {
    String level = nesting.level(unit);
    while (!level.equals(Nesting.PIECE) && !late.contains(level)) {
      level = nesting.level(level);
    }
    return level;
  }

  private Map<String, List<Unit>> units() {
    Map<String, List<Unit>> levels = new LinkedHashMap<>();
    List<String> names = new ArrayList<>(nesting.units().keySet());
    Map<String, Integer> first = new LinkedHashMap<>();
    names.stream()
        .filter(name -> !name.equals(Nesting.PIECE))
        .forEach(name -> first.put(name, place(nesting.parts(name).getFirst())));
    names.stream()
        .filter(first::containsKey)
        .sorted(
            Comparator.comparingInt((String name) -> -nesting.around(name).size())
                .thenComparingInt(first::get))
        .forEach(name -> levels.put(name, units(name)));
    levels.put(Nesting.PIECE, units(Nesting.PIECE));
    return levels;
  }

  /** A part's number in the order in which parts are described. */
  private int place(Part part) {
    return places.get(part.name());
  }

  /** The units of a level, single parts before sub-assemblies. */
  private List<Unit> units(String level) {
    return homes.getOrDefault(level, List.of()).stream()
        .map(name -> new Unit(name, level, parts(name)))
        .filter(unit -> !unit.parts().isEmpty())
        .sorted(
            Comparator.comparing((Unit unit) -> nesting.isAssembly(unit.name()))
                .thenComparingInt(unit -> place(unit.parts().getFirst())))
        .toList();
  }

  private List<Part> parts(String unit) {
    if (!nesting.isAssembly(unit)) {
      return nesting.parts(unit);
    }
    List<Part> parts = new ArrayList<>();
    homes.getOrDefault(unit, List.of()).forEach(inner -> parts.addAll(parts(inner)));
    parts.sort(Comparator.comparingInt(this::place));
    return Collections.unmodifiableList(parts);
  }
}
