package storyrod.drawing;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.piece.Part;

/**
 * A picture of parts and of hardware on its way into them. Where too much of the hardware is behind
 * parts that stand already, these are drawn as outlines only, as what lies before a section is.
 *
 * @param strong how many of the parts, from the first, are new: none of them gives way
 * @param toned the parts and the hardware, by their names, that have regions
 */
record Fitted(Scene scene, List<Part> parts, int strong, View view, List<String> toned) {
  /** The share of hardware that shows a reader what goes where; alike items stand in rows. */
  static final double ENOUGH_SEEN = 0.75;

  /** The picture with all parts whole. */
  Picture whole(List<Hardware> hardware) {
    return open(hardware, Set.of());
  }

  /** The picture, opened if too little of its hardware would be seen in a whole one. */
  Picture clear(List<Hardware> hardware) {
    return clear(whole(hardware));
  }

  /** The same of a picture of all parts whole. */
  Picture clear(Picture whole) {
    List<Hardware> hardware = whole.fittings().stream().map(Fitting::hardware).toList();
    Set<String> before = isEnough(whole) ? Set.of() : before(whole);
    return before.isEmpty() ? whole : open(hardware, before);
  }

  static boolean isEnough(Picture picture) {
    return share(picture) >= ENOUGH_SEEN;
  }

  /** The share of the hardware of which anything is seen. */
  static double share(Picture picture) {
    List<Fitting> all = picture.fittings();
    long seen = all.stream().filter(isHidden(picture).negate()).count();
    return all.isEmpty() ? 1 : (double) seen / all.size();
  }

  private static Predicate<Fitting> isHidden(Picture picture) {
    return each -> picture.seen(each).lines().visible().isEmpty();
  }

  private Picture open(List<Hardware> hardware, Set<String> before) {
    Scene opened = scene.opened(before);
    Map<String, Vector3D> offsets = new LinkedHashMap<>();
    scene.items().forEach(each -> offsets.put(each.name(), each.offset()));
    List<Fitting> fittings =
        HardwareOut.of(hardware, HiddenLines.of(opened, view), offsets, reach(offsets));
    return Picture.of(opened, fittings, parts, strong, view, toned);
  }

  private HardwareOut.Reach reach(Map<String, Vector3D> offsets) {
    double diagonal = Extent.diagonalMm(Extent.around(parts));
    return strong < parts.size()
        ? HardwareOut.Reach.near(diagonal, new FreeWay(parts, offsets))
        : HardwareOut.Reach.far(diagonal, new FreeWay(parts, offsets));
  }

  /** The parts that stand before what is not seen, without those that are new. */
  private Set<String> before(Picture whole) {
    Set<String> standing =
        parts.subList(strong, parts.size()).stream().map(Part::name).collect(Collectors.toSet());
    return whole.fittings().stream()
        .filter(isHidden(whole))
        .flatMap(each -> each.diagonals().stream())
        .flatMap(line -> hiding(line, whole))
        .filter(standing::contains)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** The names of what hides any of a line in space. */
  private Stream<String> hiding(List<Vector3D> ends, Picture whole) {
    ScreenLine line = ScreenLine.of(ends.getFirst(), ends.getLast(), view);
    return whole.lines().inFrontOf(ends).stream()
        .filter(face -> face.hidesAny(line))
        .map(face -> whole.seen().get(face.owner()).item().name());
  }
}
