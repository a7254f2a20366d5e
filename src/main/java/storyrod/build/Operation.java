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
 * @param sessions in which it is done, at least one
 */
public record Operation(
    Verb verb,
    String target,
    List<String> parts,
    List<Cut> cuts,
    List<Joint> joints,
    List<Joint.ItemCount> hardware,
    List<Session> sessions) {
  public Operation {
    parts = List.copyOf(parts);
    cuts = List.copyOf(cuts);
    joints = List.copyOf(joints);
    hardware = List.copyOf(hardware);
    sessions = List.copyOf(sessions);
  }

  /** An operation that is done in one go. */
  public Operation(
      Verb verb,
      String target,
      List<String> parts,
      List<Cut> cuts,
      List<Joint> joints,
      List<Joint.ItemCount> hardware,
      int minutes,
      int waitMinutes) {
    this(verb, target, parts, cuts, joints, hardware, List.of(new Session(minutes, waitMinutes)));
  }

  /** Minutes of work, in all its sessions. */
  public int minutes() {
    return sessions.stream().mapToInt(Session::minutes).sum();
  }

  /** Minutes to wait after its sessions, in all. */
  public int waitMinutes() {
    return sessions.stream().mapToInt(Session::waitMinutes).sum();
  }

  /** Whether it joins its parts to those of another one. */
  boolean meets(Operation other) {
    return joints.stream()
        .anyMatch(
            joint -> other.parts.contains(joint.first()) || other.parts.contains(joint.second()));
  }

  /** The same, taking other times. */
  Operation lasting(int newMinutes, int newWaitMinutes) {
    return in(List.of(new Session(newMinutes, newWaitMinutes)));
  }

  /** The same, done in other sessions. */
  Operation in(List<Session> newSessions) {
    return new Operation(verb, target, parts, cuts, joints, hardware, newSessions);
  }

  /** Its name in a maker's own order: {@code drill left-side}. */
  public String name() {
    return verb.word() + " " + target;
  }
}
