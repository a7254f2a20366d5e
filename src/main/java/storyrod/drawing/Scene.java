package storyrod.drawing;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.geometry.Solid;
import storyrod.piece.Part;

/**
 * Solids in space to be looked at. Where two share a line, it belongs to the one that stands first.
 *
 * @param on hardware that is on its part already, which is none of the items
 */
record Scene(List<Item> items, List<Fitting> on) {
  public Scene {
    items = List.copyOf(items);
    on = List.copyOf(on);
  }

  Scene(List<Item> items) {
    this(items, List.of());
  }

  /** Parts where they stand, each drawn away from there by its offset. */
  static Scene of(List<Part> parts, Map<String, Vector3D> offsets) {
    return new Scene(
        parts.stream()
            .map(part -> new Item(part.name(), part.placed(), offsets.get(part.name())))
            .toList());
  }

  /** The same, hardware on its way in after the parts, and what is on already last. */
  Scene with(List<Fitting> fittings) {
    return new Scene(
        Stream.of(
                items.stream(),
                fittings.stream().map(Fitting::item),
                on.stream().map(Fitting::item))
            .flatMap(each -> each)
            .toList());
  }

  /** The same with hardware on those of its parts that are drawn. */
  Scene wearing(List<Hardware> hardware) {
    return new Scene(items, hardware.stream().flatMap(each -> worn(each).stream()).toList());
  }

  private Optional<Fitting> worn(Hardware hardware) {
    return items.stream()
        .filter(each -> each.name.equals(hardware.placed().host()))
        .findFirst()
        .map(host -> new Fitting(hardware, hardware.placed().at().add(host.offset), 0));
  }

  /**
   * A solid, drawn away from its place by an offset in mm.
   *
   * @param name the full name of the part
   * @param isOpen whether it hides nothing, as only its outline is drawn
   */
  public record Item(String name, Solid solid, Vector3D offset, boolean isOpen) {
    Item(String name, Solid solid, Vector3D offset) {
      this(name, solid, offset, false);
    }
  }

  /** The same with some items open, by their names. */
  Scene opened(Set<String> names) {
    return new Scene(
        items.stream().map(each -> names.contains(each.name) ? opened(each) : each).toList(), on);
  }

  private static Item opened(Item item) {
    return new Item(item.name, item.solid, item.offset, true);
  }
}
