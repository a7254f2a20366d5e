package storyrod.piece;

import java.util.List;
import java.util.Optional;
import storyrod.description.Span;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;

/**
 * An end of a part cut to fingers, with sockets between them for those of another part.
 *
 * @param from the face of the end
 * @param end the whole end as long as the fingers
 * @param along the axis along which fingers and sockets lie in turn
 * @param sockets what is cut away along it, in order; the last may be narrower
 * @param finger the width of a finger and of a socket
 */
public record Comb(
    String term,
    Face from,
    Box end,
    Axis along,
    List<Range> sockets,
    Length finger,
    Optional<String> forWhat,
    Span at)
    implements Cut {
  public Comb {
    sockets = List.copyOf(sockets);
  }

  /** How long the fingers are. */
  public Length length() {
    return end.size(from.axis());
  }

  @Override
  public List<Box> boxes() {
    return sockets.stream().map(socket -> end.with(along, socket)).toList();
  }
}
