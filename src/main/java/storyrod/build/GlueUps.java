package storyrod.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Description;
import storyrod.description.GlueEntry;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.piece.Joint;

/**
 * Which parts that come in one after the other are glued in one go: all joints are pressed along
 * one axis, so that one set of clamps holds them, and are closed while the glue is open.
 */
final class GlueUps {
  /**
   * Joints to spread and close in the ten minutes or so that yellow glue stays open, at a good
   * minute for each (common practice, from memory).
   */
  private static final int MOST_JOINTS = 8;

  private static final int USUAL_OPEN_MINUTES = 10;

  /** A clamp to every foot of a joint (common practice, from memory), in mm. */
  private static final double PER_CLAMP_MM = 305;

  /** A longer joint takes a clamp near each end, in mm (common practice, from memory). */
  private static final double ONE_CLAMP_MM = 153;

  private final int clamps;
  private final int mostJoints;

  /** Glue-ups with the clamps of a description's shop and its glue. */
  GlueUps(Description description) {
    this.clamps = description.shop().clamps();
    this.mostJoints =
        description
            .glue()
            .flatMap(GlueEntry::openMinutes)
            .map(GlueUps::jointsIn)
            .orElse(MOST_JOINTS);
  }

  private static int jointsIn(int openMinutes) {
    return Math.max(1, MOST_JOINTS * openMinutes / USUAL_OPEN_MINUTES);
  }

  /** How many placings from one on make a glue-up; less than two if there is none. */
  int length(List<Placing> order, int from) {
    for (int to = order.size(); to > from + 1; to--) {
      if (isOne(order.subList(from, to))) {
        return to - from;
      }
    }
    return 0;
  }

  private boolean isOne(List<Placing> placings) {
    List<Placing> coming = placings.stream().filter(each -> !each.closes().isEmpty()).toList();
    return !coming.isEmpty()
        && areReady(placings, placings.size() - coming.size())
        && placings.getLast().closes().stream().anyMatch(Joint::glued)
        && coming.stream().map(Placing::enters).distinct().count() == 1
        && coming.stream().allMatch(GlueUps::isPressed)
        && isDoneInTime(coming);
  }

  /** Whether those that meet nothing yet lie ready, at most the first one told before them. */
  private static boolean areReady(List<Placing> placings, int count) {
    int from = placings.getFirst().closes().isEmpty() ? 0 : 1;
    List<Placing> ready = count == 0 ? List.of() : placings.subList(from, from + count);
    return ready.stream().allMatch(each -> each.closes().isEmpty())
        && (ready.isEmpty() || ready.getFirst().enters().isEmpty());
  }

  /** Whether clamps along its way in close all its joints; a panel needs none. */
  private static boolean isPressed(Placing placing) {
    Optional<Axis> axis = placing.enters().map(Face::axis);
    return placing.isStraight()
        && placing.closes().stream()
            .allMatch(
                joint ->
                    joint.glued()
                        ? joint.driven().isEmpty()
                            && axis.filter(joint.entry().axis()::equals).isPresent()
                        : !joint.holding() && !joint.slides());
  }

  /** Whether all that come in are closed while the glue is open, with the clamps of the shop. */
  boolean isDoneInTime(List<Placing> coming) {
    List<Joint> glued =
        coming.stream().flatMap(each -> each.closes().stream()).filter(Joint::glued).toList();
    List<Joint> pressed = glued.stream().filter(joint -> joint.driven().isEmpty()).toList();
    Axis axis = coming.getFirst().enters().orElseThrow().axis();
    return glued.size() <= mostJoints && clampsFor(pressed, axis) <= clamps;
  }

  /** Joints behind each other are pressed by the same clamps. */
  static int clampsFor(List<Joint> joints, Axis axis) {
    List<Box> lines = new ArrayList<>();
    int needed = 0;
    for (Joint joint : joints) {
      if (lines.stream().noneMatch(line -> isBehind(line, joint.contact(), axis))) {
        lines.add(joint.contact());
        needed += clampsFor(joint.contact(), axis);
      }
    }
    return needed;
  }

  static int clampsFor(Box contact, Axis axis) {
    double length = across(axis).mapToDouble(each -> contact.size(each).toMm()).max().orElseThrow();
    return length <= ONE_CLAMP_MM ? 1 : Math.max(2, (int) Math.ceil(length / PER_CLAMP_MM));
  }

  static boolean isBehind(Box one, Box other, Axis axis) {
    return across(axis).allMatch(each -> isOver(one.on(each), other.on(each)));
  }

  private static boolean isOver(Range one, Range other) {
    double middle = (other.from().toMm() + other.to().toMm()) / 2;
    return one.from().toMm() <= middle && middle <= one.to().toMm();
  }

  private static Stream<Axis> across(Axis axis) {
    return Stream.of(Axis.values()).filter(each -> each != axis);
  }
}
