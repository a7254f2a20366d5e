package storyrod.build;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.description.HardwareEntry;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.description.Located;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Pose;
import storyrod.geometry.Range;
import storyrod.geometry.Ring;
import storyrod.geometry.Solid;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * Hinges as they lie when their door is shut: between door and post, or with the cup in the door.
 */
record HingeItems(Piece piece, Nesting nesting, HardwareShapes shapes) {
  /** Sizes of a butt hinge of 2 in, and the pin (from memory). */
  private static final Length LENGTH = Length.inches(2);

  private static final Length LEAF = Length.inch(9, 16);
  private static final Length LEAF_THICK = Length.inch(1, 16);
  private static final double PIN_MM = 3;

  /** A concealed hinge's cup, and its arm behind the door (from memory). */
  private static final Length CUP = Length.mm(35);

  private static final Length CUP_DEEP = Length.mm(13);
  private static final Length ARM_WIDE = Length.mm(14);
  private static final Length ARM_LONG = Length.mm(60);

  /** How far a hinge is from the end of its door, against its own length (common practice). */
  private static final double FROM_END = 1;

  List<PlacedItem> of(HardwareEntry entry) {
    ItemEntry item = piece.item(entry.item().value()).orElseThrow();
    List<Part> doors = parts(entry, true);
    List<Part> posts = parts(entry, false);
    if (doors.isEmpty()) {
      return List.of();
    }
    return item.kind() == ItemKind.CONCEALED_HINGE
        ? doors.stream().flatMap(door -> concealed(entry, item, door)).toList()
        : posts.stream()
            .limit(1)
            .flatMap(post -> butts(entry, item, doors.getFirst(), post))
            .toList();
  }

  /**
   * A butt hinge between door and post.
   *
   * @param out from the door to the post
   * @param at the stretch that it takes along them
   * @param middle of the door's leaf, across
   */
  record Leaf(
      HardwareEntry entry, Part door, Part post, Face out, Axis along, Range at, Point middle) {}

  /** The butt hinges of an entry. */
  List<Leaf> leaves(HardwareEntry entry) {
    ItemEntry item = piece.item(entry.item().value()).orElseThrow();
    List<Part> doors = parts(entry, true);
    return parts(entry, false).stream()
        .limit(doors.size())
        .limit(1)
        .flatMap(post -> leaves(entry, item, doors.getFirst(), post))
        .toList();
  }

  private Stream<Leaf> leaves(HardwareEntry entry, ItemEntry item, Part door, Part post) {
    Length halfLong = Length.nearest(item.length().orElse(LENGTH).toMm() / 2);
    Length half = Length.nearest(item.sizes().leafWidth().orElse(LEAF).toMm() / 2);
    return apart(door, post).stream()
        .flatMap(
            axis -> {
              Face out = MountSites.towards(door, post.bounds(), axis);
              Axis along = MountedItems.longer(door.bounds(), axis);
              Face outer = outer(Axis.other(axis, along));
              Length across = door.bounds().at(outer).minus(half.times(outer.sign()));
              Point middle = door.bounds().middle().with(outer.axis(), across);
              return heights(door.bounds().on(along), item, entry.count()).stream()
                  .map(at -> new Range(at.minus(halfLong), at.plus(halfLong)))
                  .map(at -> new Leaf(entry, door, post, out, along, at, middle));
            });
  }

  private List<Part> parts(HardwareEntry entry, boolean hung) {
    List<String> served = entry.parts().stream().map(Located::value).toList();
    return served.stream()
        .filter(name -> nesting.isHung(name, served) == hung)
        .map(piece::part)
        .filter(part -> !part.pose().isTurned())
        .toList();
  }

  private Stream<PlacedItem> concealed(HardwareEntry entry, ItemEntry item, Part door) {
    return door.cuts(Cut.Holes.class).stream()
        .filter(cut -> cut.isFor(item.name()))
        .flatMap(cut -> cut.centres().stream().map(at -> concealed(entry, item, door, cut, at)));
  }

  private PlacedItem concealed(
      HardwareEntry entry, ItemEntry item, Part door, Cut.Holes cut, Point at) {
    Vector3D out = cut.from().normal();
    Length deep = item.sizes().cupDepth().orElse(CUP_DEEP);
    Solid cup =
        shapes.rod(
            out, new Range(deep.negated(), Length.ZERO), item.sizes().cupDiameter().orElse(CUP));
    Box arm =
        HardwareShapes.box(
            cut.from(), new Range(Length.ZERO, ARM_LONG), cut.along(), ARM_WIDE, ARM_WIDE);
    return placed(entry, door, at, out, cup.with(Solid.of(arm)));
  }

  private PlacedItem placed(HardwareEntry entry, Part host, Point at, Vector3D out, Solid body) {
    return new PlacedItem(
        entry.item().value(), PlacedItem.Origin.of(entry), host.name(), at.toMm(), out, body);
  }

  /** The axis on which door and post lie side by side. */
  private static Optional<Axis> apart(Part door, Part post) {
    return Stream.of(Axis.values())
        .filter(axis -> !door.bounds().on(axis).overlaps(post.bounds().on(axis)))
        .findFirst();
  }

  private Stream<PlacedItem> butts(HardwareEntry entry, ItemEntry item, Part door, Part post) {
    return apart(door, post).stream()
        .flatMap(
            axis -> {
              Face out = MountSites.towards(door, post.bounds(), axis);
              Axis along = MountedItems.longer(door.bounds(), axis);
              Face outer = outer(Axis.other(axis, along));
              Solid body = butt(item, out, along, outer, gap(door, post, axis));
              Point edge =
                  door.bounds()
                      .middle()
                      .with(axis, door.bounds().at(out))
                      .with(outer.axis(), door.bounds().at(outer));
              return heights(door.bounds().on(along), item, entry.count()).stream()
                  .map(at -> placed(entry, door, edge.with(along, at), out.normal(), body));
            });
  }

  /** The side on which one sees the knuckle. */
  private static Face outer(Axis axis) {
    return axis == Axis.Z ? Face.TOP : Face.of(axis, -1);
  }

  private static Length gap(Part door, Part post, Axis axis) {
    Range one = door.bounds().on(axis);
    Range other = post.bounds().on(axis);
    return other.from().minus(one.to()).max(one.from().minus(other.to()));
  }

  private Solid butt(ItemEntry item, Face out, Axis along, Face outer, Length gap) {
    Length thick = item.sizes().leafThickness().orElse(LEAF_THICK);
    Length length = item.length().orElse(LENGTH);
    Length wide = item.sizes().leafWidth().orElse(LEAF);
    Length middle = Length.nearest(gap.toMm() / 2);
    Range leaves = new Range(middle.minus(thick), middle.plus(thick));
    Range inside =
        outer.sign() > 0 ? new Range(wide.negated(), Length.ZERO) : new Range(Length.ZERO, wide);
    Box box = HardwareShapes.box(out, leaves, along, length, wide).with(outer.axis(), inside);
    Vector3D knuckle = out.normal().multiply(middle.toMm());
    return shapes.boxes(Pose.NONE, box).with(pin(along, length, thick).moved(knuckle));
  }

  private Solid pin(Axis along, Length length, Length thick) {
    double radius = thick.toMm() + PIN_MM / 2;
    double half = length.toMm() / 2;
    return shapes.turned(
        Face.of(along, 1).normal(), List.of(new Ring(-half, radius), new Ring(half, radius)));
  }

  private static List<Length> heights(Range door, ItemEntry item, int count) {
    double length = item.length().orElse(LENGTH).toMm();
    double inset = (FROM_END + 0.5) * length;
    double run = door.length().toMm() - 2 * inset;
    return count < 2
        ? List.of(door.middle())
        : IntStream.range(0, count)
            .mapToObj(i -> door.from().plus(Length.nearest(inset + i * run / (count - 1))))
            .sorted(Comparator.naturalOrder())
            .toList();
  }
}
