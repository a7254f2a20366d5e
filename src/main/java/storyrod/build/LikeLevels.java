package storyrod.build;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Joint;
import storyrod.piece.Part;

/**
 * Which sub-assemblies go together in like steps: those of equal parts or mirror images, and those
 * from one text that differ in their height only, such as the drawers of one case.
 */
final class LikeLevels {
  private final Map<String, String> firsts = new LinkedHashMap<>();

  /** Looks at sub-assemblies by the groups in which their units are put together. */
  LikeLevels(Map<String, List<List<Placing>>> byLevel) {
    Map<String, String> known = new LinkedHashMap<>();
    byLevel.forEach(
        (level, groups) -> {
          List<String> keys = keys(level, groups);
          String first =
              keys.stream().filter(known::containsKey).map(known::get).findFirst().orElse(level);
          keys.forEach(key -> known.putIfAbsent(key, first));
          firsts.put(level, first);
        });
  }

  /** What like ones and mirror images have in common: by their text, and by their parts. */
  private static List<String> keys(String level, List<List<Placing>> groups) {
    String floor = floor(groups);
    return Stream.concat(
            mirrored(way -> said(groups, placing -> text(level, placing, way)))
                .map(text -> text + floor),
            mirrored(way -> said(groups, placing -> parts(placing, way))))
        .toList();
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

  /** Words for each axis, the same for both of a pair that is mirrored across it. */
  private static Stream<String> mirrored(Function<UnaryOperator<Face>, String> words) {
    String plain = words.apply(way -> way);
    return Stream.of(Axis.values())
        .map(
            axis -> {
              String mirror = words.apply(way -> way.axis() == axis ? way.opposite() : way);
              return axis + " " + (mirror.compareTo(plain) < 0 ? mirror : plain);
            });
  }

  private static String parts(Placing placing, UnaryOperator<Face> mirror) {
    return placing.unit().marks() + way(placing, mirror);
  }

  private static String way(Placing placing, UnaryOperator<Face> mirror) {
    return placing.enters().map(mirror).map(Enum::name).orElse("") + placing.firstMove();
  }

  private static String text(String level, Placing placing, UnaryOperator<Face> mirror) {
    String inside =
        placing.unit().parts().stream()
            .map(part -> inside(level, part) + " " + part.stock().name())
            .collect(Collectors.joining(" "));
    String joints =
        placing.closes().stream().map(LikeLevels::text).sorted().collect(Collectors.joining(" "));
    return inside + way(placing, mirror) + placing.tilted() + joints;
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
