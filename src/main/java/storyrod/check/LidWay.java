package storyrod.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.description.Diagnostic;
import storyrod.geometry.Face;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** A part that slides in grooves, whose way out another part closes. */
final class LidWay implements Check {
  /** What rounding leaves where parts lie on each other, in mm³. */
  private static final double NOTHING_MM3 = 0.5;

  /** Whatever is in the way is passed by at least one of so many places along its length. */
  private static final int PLACES = 8;

  @Override
  public String code() {
    return "lid-way";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A lid that slides in grooves comes out by its whole length without meeting "
            + "another part, or it is shut in for good.",
        "Follows from the description.",
        "It looks at the parts on the way, not at hardware.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    List<Diagnostic> found = new ArrayList<>();
    Set<String> seen = new LinkedHashSet<>();
    for (Joint joint : piece.joints()) {
      if (joint.slides() && seen.add(joint.first() + joint.entry())) {
        Part lid = piece.part(joint.first());
        Face out = joint.entry().opposite();
        inTheWay(piece, lid, out).ifPresent(part -> found.add(shut(joint, lid, out, part)));
      }
    }
    return found;
  }

  private static Optional<Part> inTheWay(Piece piece, Part lid, Face out) {
    return piece.parts().stream()
        .filter(part -> !part.name().equals(lid.name()))
        .filter(part -> meets(lid, part, out))
        .findFirst();
  }

  private static boolean meets(Part lid, Part other, Face out) {
    double length = lid.bounds().size(out.axis()).toMm();
    return IntStream.rangeClosed(1, PLACES)
        .mapToObj(place -> out.normal().multiply(length * place / PLACES))
        .anyMatch(by -> shares(lid, other, by));
  }

  private static boolean shares(Part lid, Part other, Vector3D by) {
    return other.placed().sharedVolumeMm3(lid.placed(), by) > NOTHING_MM3;
  }

  private Diagnostic shut(Joint joint, Part lid, Face out, Part other) {
    return Diagnostic.warning(
            code(),
            joint.at(),
            "%s cannot slide out at the %s: %s is in the way"
                .formatted(lid.name(), out.word(), other.name()))
        .also(other.at(), other.name() + " is defined here")
        .hint(
            "let %s end where the lid passes, or let the lid open on another side with `opens`"
                .formatted(other.name()));
  }
}
