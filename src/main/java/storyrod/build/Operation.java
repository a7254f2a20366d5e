package storyrod.build;

import java.util.List;
import storyrod.piece.Cut;
import storyrod.piece.Joint;

/**
 * One thing to do, to one part or sub-assembly.
 *
 * @param verb what is done
 * @param target the full name of the part, the sub-assembly or the hardware item it is done to
 * @param parts the full names of all parts that it touches
 * @param cuts the cuts that it makes; a part's cuts of different kinds are operations of one name
 * @param joints the joints that it closes
 * @param hardware the items that it uses up
 * @param minutes of work
 * @param waitMinutes that must pass before anything that needs it may start
 */
public record Operation(
    Verb verb,
    String target,
    List<String> parts,
    List<Cut> cuts,
    List<Joint> joints,
    List<Joint.ItemCount> hardware,
    int minutes,
    int waitMinutes) {
  public Operation {
    parts = List.copyOf(parts);
    cuts = List.copyOf(cuts);
    joints = List.copyOf(joints);
    hardware = List.copyOf(hardware);
  }

  /** Whether it joins its parts to those of another one. */
  boolean meets(Operation other) {
    return joints.stream()
        .anyMatch(
            joint -> other.parts.contains(joint.first()) || other.parts.contains(joint.second()));
  }

  /** The same, taking other times. */
  Operation lasting(int newMinutes, int newWaitMinutes) {
    return new Operation(verb, target, parts, cuts, joints, hardware, newMinutes, newWaitMinutes);
  }

  /** Its name in a maker's own order: {@code drill left-side}. */
  public String name() {
    return verb.word() + " " + target;
  }
}
