package storyrod.build;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Part;

/** A thin column towards a face, and the wood that follows in it without a gap. */
final class Column {
  /** A tongue or a tenon ends short of the bottom of its slot: its shoulders carry the pressure. */
  private static final Length CLOSED = Length.mm(5);

  private final Box space;
  private final Face way;
  private final List<Part> parts;
  private final Map<Part, List<Box>> wood;

  /** The column through a space; wood holds the boxes of each part. */
  Column(Box space, Face way, List<Part> parts, Map<Part, List<Box>> wood) {
    this.space = space;
    this.way = way;
    this.parts = parts.stream().filter(part -> isIn(part.bounds())).toList();
    this.wood = wood;
  }

  /** Where the wood ends, and in which part. */
  record End(Part part, Length at) {}

  /** The end of the wood from a place on; none if there is none. */
  Optional<End> last(Length from) {
    Optional<End> last = Optional.empty();
    for (Optional<End> next = next(from); next.isPresent(); next = next(next.get().at())) {
      last = next;
    }
    return last;
  }

  private Optional<End> next(Length from) {
    return parts.stream()
        .map(part -> new End(part, farthest(part, from)))
        .filter(end -> isPast(end.at(), from))
        .findFirst();
  }

  private Length farthest(Part part, Length from) {
    return wood.get(part).stream()
        .filter(this::isIn)
        .filter(box -> !box.at(way.opposite()).minus(from).times(way.sign()).isLongerThan(CLOSED))
        .map(box -> box.at(way))
        .filter(end -> isPast(end, from))
        .findFirst()
        .orElse(from);
  }

  private boolean isPast(Length end, Length from) {
    return end.minus(from).times(way.sign()).isPositive();
  }

  private boolean isIn(Box box) {
    for (Axis each : Axis.values()) {
      if (each != way.axis() && !box.on(each).overlaps(space.on(each))) {
        return false;
      }
    }
    return true;
  }
}
