package storyrod.build;

import java.util.List;
import java.util.stream.Stream;
import storyrod.build.Clamping.Line;
import storyrod.geometry.Axis;
import storyrod.measure.Length;
import storyrod.piece.Joint;
import storyrod.piece.Part;

/**
 * A jaw that presses a joint through a part which no joint of the step holds, as through a back.
 *
 * @param under the full name of the part under the jaw
 * @param carrier that of the joint's part which stands behind it
 */
public record Through(Axis axis, String under, String carrier) {
  /** All of the lines of pressure that close joints, each once. */
  static List<Through> of(List<Line> lines, List<Part> parts, List<Joint> joints) {
    return lines.stream()
        .flatMap(line -> ofEnds(line, parts))
        .filter(each -> joints.stream().noneMatch(joint -> holds(joint, each.under)))
        .distinct()
        .toList();
  }

  private static Stream<Through> ofEnds(Line line, List<Part> parts) {
    String first = line.joint().first();
    String second = line.joint().second();
    boolean isFirstLow =
        from(first, line.axis(), parts).isShorterThan(from(second, line.axis(), parts));
    return Stream.of(
        new Through(line.axis(), line.low(), isFirstLow ? first : second),
        new Through(line.axis(), line.high(), isFirstLow ? second : first));
  }

  private static boolean holds(Joint joint, String part) {
    return joint.first().equals(part) || joint.second().equals(part);
  }

  private static Length from(String name, Axis axis, List<Part> parts) {
    return parts.stream()
        .filter(part -> part.name().equals(name))
        .map(part -> part.bounds().on(axis).from())
        .findFirst()
        .orElseThrow();
  }
}
