package storyrod.build;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.build.PlacedItem.Origin;
import storyrod.description.ItemEntry;
import storyrod.geometry.Contour;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.SplineSlot;

/**
 * Splines as they fill both slots of their mitre: as wide as these are deep together, as thick and
 * as long as they are. They come out square to the mitre.
 */
record SplineItems(HardwareShapes shapes) {
  List<PlacedItem> in(Part part, Joint joint, ItemEntry item) {
    return part.pose().isTurned()
        ? List.of()
        : part.cuts(SplineSlot.class).stream()
            .filter(slot -> slot.at().equals(joint.at()) && slot.isFor(item.name()))
            .map(slot -> placed(part, joint, item, slot))
            .toList();
  }

  private PlacedItem placed(Part part, Joint joint, ItemEntry item, SplineSlot slot) {
    Vector3D low = slot.onMitre().getFirst().toMm();
    Vector3D high = slot.onMitre().getLast().toMm();
    Vector3D along = Face.of(slot.along(), 1).normal();
    Vector3D half = high.subtract(low).multiply(0.5);
    Vector3D out = out(slot, half.cross(along).normalize());
    Vector3D deep = out.multiply(slot.depth().toMm());
    Contour plate =
        Contour.of(
            slot.along(),
            List.of(
                point(half.add(deep)),
                point(deep.subtract(half)),
                point(half.add(deep).negate()),
                point(half.subtract(deep))));
    Range run = HardwareShapes.about(slot.run().length());
    return new PlacedItem(
        item.name(),
        Origin.of(joint),
        part.name(),
        level(low.lerp(high, 0.5), along, slot.run().middle()),
        out,
        shapes.prism(plate, run));
  }

  /** Away from what the slot takes out of its part. */
  private static Vector3D out(SplineSlot slot, Vector3D square) {
    Vector3D mouth = slot.onMitre().getFirst().toMm();
    Vector3D bottom = slot.profile().segments().get(1).to().toMm();
    return bottom.subtract(mouth).dot(square) < 0 ? square : square.negate();
  }

  /** A point of the profile in the middle of its run. */
  private static Vector3D level(Vector3D at, Vector3D along, Length middle) {
    return at.add(along.multiply(middle.toMm() - at.dot(along)));
  }

  private static Point point(Vector3D mm) {
    return new Point(
        Length.nearest(mm.getX()), Length.nearest(mm.getY()), Length.nearest(mm.getZ()));
  }
}
