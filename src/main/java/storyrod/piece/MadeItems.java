package storyrod.piece;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import storyrod.description.Description;
import storyrod.description.Diagnostics;
import storyrod.description.ItemEntry;
import storyrod.description.StockEntry;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Range;
import storyrod.geometry.Solid;
import storyrod.measure.Length;

/**
 * Finds what the joints of a piece use that is cut from a stock in the shop. Only splines of mitres
 * are: their slots tell how large they have to be.
 */
final class MadeItems {
  private final Description description;
  private final List<Part> parts;
  private final List<Joint> joints;
  private final Diagnostics diagnostics;

  MadeItems(
      Description description, List<Part> parts, List<Joint> joints, Diagnostics diagnostics) {
    this.description = description;
    this.parts = parts;
    this.joints = joints;
    this.diagnostics = diagnostics;
  }

  /** The items that are made, in the order of the description; those with a fault are left out. */
  List<MadeItem> read() {
    return description.items().values().stream()
        .filter(item -> item.from().isPresent())
        .flatMap(item -> made(item).stream())
        .toList();
  }

  /** A part and a slot in it. */
  record Slot(Part part, SplineSlot cut) {}

  private Optional<MadeItem> made(ItemEntry item) {
    List<Slot> slots = slots(item);
    MadeFaults faults = new MadeFaults(description, item);
    boolean sound = faults.tell(slots, uses(item), diagnostics);
    return slots.isEmpty() || !sound ? Optional.empty() : Optional.of(made(item, slots));
  }

  /** The slots for an item, one of each joint: the other is its mirror image. */
  private List<Slot> slots(ItemEntry item) {
    return joints.stream().flatMap(joint -> slot(joint, item).stream()).toList();
  }

  private Optional<Slot> slot(Joint joint, ItemEntry item) {
    return parts.stream()
        .filter(part -> part.name().equals(joint.first()))
        .flatMap(part -> part.cuts(SplineSlot.class).stream().map(cut -> new Slot(part, cut)))
        .filter(slot -> slot.cut().at().equals(joint.at()) && slot.cut().isFor(item.name()))
        .findFirst();
  }

  /** How many of an item all joints and the list of hardware use. */
  private int uses(ItemEntry item) {
    Map<String, Integer> counts =
        HardwareUse.of(new Piece(description, parts, List.of(), joints)).counts();
    return counts.getOrDefault(item.name(), 0);
  }

  private MadeItem made(ItemEntry item, List<Slot> slots) {
    return new MadeItem(
        item.name(),
        IntStream.rangeClosed(1, slots.size())
            .mapToObj(number -> piece(item, item.name() + "#" + number, slots.getFirst()))
            .toList());
  }

  /** A strip; its grain, or that of its faces, runs across the joint (common practice). */
  private Part piece(ItemEntry item, String name, Slot slot) {
    StockEntry stock = description.stock().get(item.from().orElseThrow().value());
    SplineSize size = SplineSize.of(item, slot.part(), slot.cut(), description.format().unit());
    Box box = new Box(upTo(size.along()), upTo(size.across()), upTo(stock.thickness().value()));
    return new Part(
        name,
        item.title(),
        "",
        false,
        Optional.empty(),
        stock,
        box,
        box,
        Axis.Y,
        Axis.Z,
        List.of(),
        Solid.of(box),
        Optional.empty(),
        item.at());
  }

  private static Range upTo(Length size) {
    return new Range(Length.ZERO, size);
  }
}
