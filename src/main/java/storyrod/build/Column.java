package storyrod.build;

import java.util.ArrayList;
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
  private final List<Stretch> stretches = new ArrayList<>();

  /** The column through a space; wood holds the boxes of each part. */
  Column(Box space, Face way, List<Part> parts, Map<Part, List<Box>> wood) {
    this.space = space;
    this.way = way;
    for (Part part : parts) {
      if (isIn(part.bounds())) {
        wood.get(part).stream()
            .filter(this::isIn)
            .map(box -> stretch(part, box))
            .forEach(stretches::add);
      }
    }
  }

  /** A part's wood in the column: from where it carries on, and its end, both along the way. */
  private record Stretch(Part part, Length from, Length end) {}

  private Stretch stretch(Part part, Box box) {
    return new Stretch(part, along(box.at(way.opposite())).minus(CLOSED), along(box.at(way)));
  }

  private Length along(Length at) {
    return at.times(way.sign());
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

  private Optional<End> next(Length at) {
    Length from = along(at);
    for (Stretch each : stretches) {
      if (each.end().isLongerThan(from) && !each.from().isLongerThan(from)) {
        return Optional.of(new End(each.part(), along(each.end())));
      }
    }
    return Optional.empty();
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
