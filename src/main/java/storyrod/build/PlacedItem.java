package storyrod.build;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.description.HardwareEntry;
import storyrod.description.Located;
import storyrod.geometry.Face;
import storyrod.geometry.FlatFace;
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
   * @param with the full name of the unit with which it goes in, where it waits for that
   * @param makeup how its bodies make up items
   * @param waits whether it is left out where the item that it holds is fitted on trial
   */
  public record Origin(
      List<String> parts,
      Optional<Joint> joint,
      Optional<HardwareEntry> entry,
      Optional<String> with,
      Makeup makeup,
      boolean waits) {
    public Origin {
      parts = List.copyOf(parts);
    }

    /** How many bodies of its sort make one of the item: two case members a pair of slides. */
    public int each() {
      return makeup.each();
    }

    static Origin of(Joint joint) {
      return new Origin(
          List.of(joint.first(), joint.second()),
          Optional.of(joint),
          Optional.empty(),
          Optional.empty(),
          Makeup.WHOLE,
          false);
    }

    /** Of a line of the list. */
    static Origin of(HardwareEntry entry) {
      return of(entry, entry.parts().stream().map(Located::value).toList(), Makeup.WHOLE);
    }

    static Origin of(HardwareEntry entry, List<String> parts, Makeup makeup) {
      return new Origin(
          parts, Optional.empty(), Optional.of(entry), Optional.empty(), makeup, false);
    }

    /** The same, waiting for a unit. */
    Origin with(String unit) {
      return new Origin(parts, joint, entry, Optional.of(unit), makeup, waits);
    }

    /** The same, left out on trial. */
    Origin waiting() {
      return new Origin(parts, joint, entry, with, makeup, true);
    }
  }

  /**
   * What bodies one item is made of.
   *
   * @param each how many bodies of one sort it has
   * @param sort which sort of its bodies this one is, from 0
   * @param sorts how many there are: of a slide the case member and the drawer member
   */
  public record Makeup(int each, int sort, int sorts) {
    static final Makeup WHOLE = new Makeup(1, 0, 1);

    /** How many bodies it has in all. */
    public int bodies() {
      return each * sorts;
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
    List<FlatFace> faces = solid.faces();
    double reach = faces.isEmpty() ? 0 : out.dot(faces.getFirst().outer().getFirst());
    for (FlatFace face : faces) {
      for (Vector3D corner : face.outer()) {
        reach = farther.applyAsDouble(reach, out.dot(corner));
      }
    }
    return reach;
  }

  /**
   * The side from which a joint's fastener is driven once its parts are together; empty of what is
   * mounted, and of what lies between two parts and goes in as they do, such as dowels.
   */
  public Optional<Face> drivenFrom() {
    return origin.joint().flatMap(this::drivenFrom);
  }

  private Optional<Face> drivenFrom(Joint joint) {
    Face way = Face.nearest(out);
    return joint
        .driven()
        .map(Joint.Driven::face)
        .or(() -> Optional.of(way).filter(face -> face.axis() != joint.entry().axis()));
  }

  /** Whether a step fits it, on trial too: closes its joint, or mounts its line of the list. */
  public boolean isFittedIn(BuildPlan.Step step) {
    return step.operations().stream().anyMatch(this::isFittedBy);
  }

  private boolean isFittedBy(Operation operation) {
    boolean isUsed = operation.hardware().stream().anyMatch(each -> each.item().equals(item));
    return switch (operation.verb()) {
      case FIT -> isUsed && isWith(operation);
      case MOUNT -> isUsed && isFor(operation) && origin.with().isEmpty();
      case TRIAL_FIT -> isFor(operation) && !origin.waits();
      case CHOOSE, MILL, BLANK, KEEP, REJOIN, SIZE, MARK, CUT, DRILL, SAND -> false;
      case DRY_FIT, PRE_FINISH, TRIM, TEST, FINISH -> false;
    };
  }

  private boolean isWith(Operation operation) {
    return origin.joint().filter(operation.joints()::contains).isPresent()
        || origin.with().filter(operation.target()::equals).isPresent();
  }

  private boolean isFor(Operation operation) {
    return origin.entry().filter(e -> e.item().value().equals(operation.target())).isPresent();
  }
}
