package storyrod.build;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.description.Description.HardwareEntry;
import storyrod.geometry.Solid;
import storyrod.piece.Joint;

/**
 * One item of hardware in its place: a screw in its hole, a slide on its drawer's side. It goes in
 * along a line and comes out again the same way.
 *
 * @param item its name in the description
 * @param host the full name of the part into which, or on which, it is put
 * @param at the point of the host where it goes in, in mm
 * @param out the unit vector along which it comes out
 * @param solid its body with that point at the origin; equal items share it
 */
public record PlacedItem(
    String item, Origin origin, String host, Vector3D at, Vector3D out, Solid solid) {

  /**
   * What asks for an item: a joint or a line of the hardware list.
   *
   * @param parts the full names of the parts that it joins or serves
   * @param each how many bodies of it make one of the item: two of a pair of slides
   */
  public record Origin(
      List<String> parts, Optional<Joint> joint, Optional<HardwareEntry> entry, int each) {
    public Origin {
      parts = List.copyOf(parts);
    }

    static Origin of(Joint joint) {
      return new Origin(
          List.of(joint.first(), joint.second()), Optional.of(joint), Optional.empty(), 1);
    }
  }

  /** How deep it lies in its host, in mm; below zero where it ends before it. */
  public double deepMm() {
    return -reach(Math::min);
  }

  /** How far it stands out of its host, in mm; below zero where it is sunk. */
  public double highMm() {
    return reach(Math::max);
  }

  private double reach(DoubleBinaryOperator farther) {
    return solid.faces().stream()
        .flatMap(face -> face.outer().stream())
        .mapToDouble(out::dot)
        .reduce(farther)
        .orElse(0);
  }

  /** Whether a step fits it: closes its joint, or mounts its line of the list. */
  public boolean isFittedIn(BuildPlan.Step step) {
    return step.hardware().stream().anyMatch(each -> each.item().equals(item))
        && step.operations().stream().anyMatch(this::isFittedBy);
  }

  private boolean isFittedBy(Operation operation) {
    return origin.joint().filter(operation.joints()::contains).isPresent()
        || operation.verb() == Verb.MOUNT
            && origin.entry().filter(e -> e.item().value().equals(operation.target())).isPresent();
  }
}
