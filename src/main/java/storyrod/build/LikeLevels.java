package storyrod.build;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import storyrod.geometry.Axis;
import storyrod.measure.Length;
import storyrod.piece.Joint;
import storyrod.piece.Part;

/**
 * Which sub-assemblies go together in like steps: those of equal parts, and those from one text
 * that differ in their height only, such as the drawers of one case.
 */
final class LikeLevels {
  private final Map<String, String> firsts = new LinkedHashMap<>();

  /** Looks at sub-assemblies by the groups in which their units are put together. */
  LikeLevels(Map<String, List<List<Placing>>> byLevel) {
    Map<String, String> byParts = new LinkedHashMap<>();
    Map<String, String> byText = new LinkedHashMap<>();
    byLevel.forEach(
        (level, groups) -> {
          String parts = said(groups, LikeLevels::parts);
          String text = said(groups, placing -> text(level, placing)) + floor(groups);
          String first = byText.getOrDefault(text, byParts.getOrDefault(parts, level));
          byParts.putIfAbsent(parts, first);
          byText.putIfAbsent(text, first);
          firsts.put(level, first);
        });
  }

  /** The first of the sub-assemblies that are like one; that itself if it is the first. */
  String first(String level) {
    return firsts.get(level);
  }

  private static String said(List<List<Placing>> groups, Function<Placing, String> words) {
    return groups.stream()
        .map(group -> group.stream().map(words).collect(Collectors.joining("|")))
        .collect(Collectors.joining("/"));
  }

  private static String parts(Placing placing) {
    return placing.unit().marks() + way(placing);
  }

  private static String way(Placing placing) {
    return placing.enters().map(Enum::name).orElse("") + placing.firstMove();
  }

  private static String text(String level, Placing placing) {
    String inside =
        placing.unit().parts().stream()
            .map(part -> inside(level, part) + " " + part.stock().name())
            .collect(Collectors.joining(" "));
    String joints =
        placing.closes().stream().map(LikeLevels::text).sorted().collect(Collectors.joining(" "));
    return inside + way(placing) + placing.tilted() + joints;
  }

  /** A part's name in its sub-assembly; one made of parts that only go together has none. */
  private static String inside(String level, Part part) {
    return part.name().startsWith(level + ".")
        ? part.name().substring(level.length() + 1)
        : part.name();
  }

  private static String text(Joint joint) {
    return joint.at().source().file() + joint.at().start() + joint.fasteners();
  }

  /** What they measure on the floor. */
  private static String floor(List<List<Placing>> groups) {
    List<Part> parts =
        groups.stream().flatMap(List::stream).flatMap(p -> p.unit().parts().stream()).toList();
    return size(parts, Axis.X) + " " + size(parts, Axis.Y);
  }

  private static Length size(List<Part> parts, Axis axis) {
    Length from =
        parts.stream().map(p -> p.bounds().on(axis).from()).reduce(Length::min).orElseThrow();
    Length to = parts.stream().map(p -> p.bounds().on(axis).to()).reduce(Length::max).orElseThrow();
    return to.minus(from);
  }
}
