package storyrod.piece;

import java.util.List;

/**
 * An item of hardware that is cut from a stock in the shop, such as the splines of mitres: it has a
 * row in the cut list, a mark and a drawing like a part, and goes in with the joints that use it.
 *
 * @param item the item's name
 * @param pieces all of one size and one mark, each lying in a frame of its own
 */
public record MadeItem(String item, List<Part> pieces) {
  public MadeItem {
    pieces = List.copyOf(pieces);
  }

  public String mark() {
    return pieces.getFirst().mark();
  }

  /** The names of all its pieces. */
  public List<String> names() {
    return pieces.stream().map(Part::name).toList();
  }
}
