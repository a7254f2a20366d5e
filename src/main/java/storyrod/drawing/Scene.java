package storyrod.drawing;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.geometry.Solid;

/**
 * Solids in space to be looked at. Where two share a line, it belongs to the one that stands first.
 */
record Scene(List<Item> items) {
  public Scene {
    items = List.copyOf(items);
  }

  /** The same, hardware last. */
  Scene with(List<Fitting> fittings) {
    return new Scene(Stream.concat(items.stream(), fittings.stream().map(Fitting::item)).toList());
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
        items.stream().map(each -> names.contains(each.name) ? opened(each) : each).toList());
  }

  private static Item opened(Item item) {
    return new Item(item.name, item.solid, item.offset, true);
  }
}
