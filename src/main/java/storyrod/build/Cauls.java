package storyrod.build;

import java.util.List;
import java.util.stream.Stream;
import storyrod.build.Clamping.Line;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.piece.Joint;
import storyrod.piece.Part;

/**
 * What comes in a step with one even face, as a face frame does: a stiff caul over it, clamped
 * where clamps reach, presses what lies between them (common practice).
 *
 * @param comes the parts that come
 * @param lines where clamps press
 */
record Cauls(List<Part> comes, List<Line> lines) {
  /** Whether a caul presses a joint that no clamp reaches. */
  boolean press(Joint joint) {
    Axis axis = joint.entry().axis();
    return comes.stream()
        .filter(part -> part.name().equals(joint.first()) || part.name().equals(joint.second()))
        .flatMap(part -> Stream.of(-1, 1).map(sign -> level(part, Face.of(axis, sign))))
        .anyMatch(level -> isBetween(joint, level));
  }

  /** The lines that press on the same level as a part's face. */
  private List<Line> level(Part part, Face face) {
    return lines.stream()
        .filter(line -> line.axis() == face.axis())
        .filter(line -> isLevel(face.sign() < 0 ? line.low() : line.high(), part, face))
        .toList();
  }

  private boolean isLevel(String pressed, Part part, Face face) {
    return comes.stream()
        .filter(each -> each.name().equals(pressed))
        .anyMatch(each -> each.bounds().at(face).equals(part.bounds().at(face)));
  }

  private static boolean isBetween(Joint joint, List<Line> level) {
    return Stream.of(Axis.values())
        .filter(across -> across != joint.entry().axis())
        .anyMatch(across -> isBetween(joint.contact().on(across), level, across));
  }

  private static boolean isBetween(Range own, List<Line> level, Axis across) {
    List<Range> pressed = level.stream().map(line -> line.joint().contact().on(across)).toList();
    return pressed.stream().anyMatch(each -> !each.to().isLongerThan(own.from()))
        && pressed.stream().anyMatch(each -> !own.to().isLongerThan(each.from()));
  }
}
