package storyrod.drawing;

import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.build.PlacedItem;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.piece.Part;

/**
 * How far hardware can come out of its seat before it meets another part: drawn beyond that, it
 * would seem to belong there. What has no way out at all is let through.
 *
 * @param parts what may be in the way
 * @param offsets how far each is drawn from its place
 */
record FreeWay(List<Part> parts, Map<String, Vector3D> offsets) {
  /** What looks along an axis to this share has its way along that. */
  private static final double STRAIGHT = 0.999;

  FreeWay {
    parts = List.copyOf(parts);
  }

  /** In mm from its seat; infinite where nothing stands in its line. */
  double ofMm(PlacedItem item) {
    Face out = Face.nearest(item.out());
    if (item.out().dot(out.normal()) < STRAIGHT) {
      return slantedMm(item);
    }
    Box body = item.solid().bounds(item.at()).orElseThrow();
    double free =
        parts.stream()
            .filter(part -> !part.name().equals(item.host()))
            .map(part -> drawn(part, item.host()))
            .filter(box -> Extent.inLine(body, box, out.axis()))
            .mapToDouble(box -> near(box, out) - item.at().dot(item.out()))
            .filter(gap -> gap >= item.highMm() + item.deepMm())
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    return free - item.highMm();
  }

  /** What goes in at a slant has its way along its middle line. */
  private double slantedMm(PlacedItem item) {
    double free =
        parts.stream()
            .filter(part -> !part.name().equals(item.host()))
            .map(part -> drawn(part, item.host()))
            .mapToDouble(box -> entryMm(box, item))
            .filter(gap -> gap >= item.highMm() + item.deepMm())
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    return free - item.highMm();
  }

  /** Where its line comes into a box, in mm from its seat; infinite where it misses it. */
  private static double entryMm(Box box, PlacedItem item) {
    double enters = Double.NEGATIVE_INFINITY;
    double leaves = Double.POSITIVE_INFINITY;
    for (Axis axis : Axis.values()) {
      Vector3D unit = Face.of(axis, 1).normal();
      double slope = item.out().dot(unit);
      double one = (box.on(axis).from().toMm() - item.at().dot(unit)) / slope;
      double other = (box.on(axis).to().toMm() - item.at().dot(unit)) / slope;
      enters = Math.max(enters, Math.min(one, other));
      leaves = Math.min(leaves, Math.max(one, other));
    }
    return enters < leaves ? enters : Double.POSITIVE_INFINITY;
  }

  /** Where a part is drawn, as seen from the host in its place. */
  private Box drawn(Part part, String host) {
    return part.bounds().moved(offsets.get(part.name()).subtract(offsets.get(host)));
  }

  private static double near(Box box, Face out) {
    return box.at(out.opposite()).toMm() * out.sign();
  }
}
