package storyrod.piece;

import java.util.List;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.Entry;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Fineness;
import storyrod.measure.Length;

/** Finds joints of whose contact the curves of a part leave nothing. */
final class ContactLeft {
  private static final Length THIN = Length.micrometres(50);
  private static final double NOTHING = 0.02;

  private ContactLeft() {}

  /**
   * The fault of a joint, if there is one.
   *
   * @param contact where the parts touch, flat on the axis of the face
   * @param out from the part to the contact
   */
  static Optional<Diagnostic> fault(
      Entry joint, Blank part, List<Cut> cuts, Box contact, Face out) {
    List<Cut> curves = cuts.stream().filter(Cut.Shaped.class::isInstance).toList();
    if (curves.isEmpty()) {
      return Optional.empty();
    }
    Box slab = contact.extended(out.opposite(), THIN);
    double left =
        Carving.of(part.box(), curves, Fineness.USUAL)
            .sharedVolumeMm3(storyrod.geometry.Solid.of(slab));
    return left > NOTHING * slab.volumeMm3()
        ? Optional.empty()
        : Optional.of(
            Diagnostic.error(
                    "joint-cut-away",
                    joint.at(),
                    "%s: nothing is left of %s.%s where the parts meet: its shape is cut away there"
                        .formatted(joint.kind(), part.name(), out.word()))
                .also(curves.getFirst().at(), "the shape of " + part.name() + " is given here")
                .hint("leave some of the edge straight there, or join the parts elsewhere"));
  }
}
