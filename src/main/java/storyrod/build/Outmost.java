package storyrod.build;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import storyrod.geometry.Face;
import storyrod.piece.Joint;
import storyrod.piece.Part;

/**
 * Parts of which some lie in the plane of a joint beside the one that is joined: where they reach
 * further out, they hide its end, and a rule is laid against them.
 */
record Outmost(List<Part> parts, Joint joint) {
  /** What reaches furthest out beside a part, if anything reaches further than that. */
  Optional<Part> beyond(Part part, Face face) {
    return parts.stream()
        .filter(each -> !each.pose().isTurned() && isInPlane(each, part))
        .filter(each -> isFurther(each, part, face))
        .max(Comparator.comparing(each -> each.box().at(face).times(face.sign())));
  }

  private boolean isInPlane(Part each, Part part) {
    Face met = joint.first().equals(part.name()) ? joint.firstFace() : joint.firstFace().opposite();
    return each.box().at(met).equals(part.box().at(met));
  }

  static boolean isFurther(Part each, Part part, Face face) {
    return each.box().at(face).minus(part.shoulder().at(face)).times(face.sign()).isPositive();
  }
}
