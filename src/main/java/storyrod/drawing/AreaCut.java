package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What one area leaves of another. Each edge of either is cut where it crosses the other. Of the
 * first area's edges those stretches bound what is left that have none of the second area to their
 * left; of the second's, turned round, those that have the first area on both sides. Sides are
 * exact, so the stretches join to rings. Only where the grid has turned a ring inside out over a
 * width of less than its step may a stretch find no other to join; then the library's overlay does
 * the work.
 */
final class AreaCut {
  private final ExactArea first;
  private final ExactArea second;
  private final RingPieces pieces = new RingPieces();

  AreaCut(ExactArea first, ExactArea second) {
    this.first = first;
    this.second = second;
  }

  ExactArea left() {
    List<ExactRing> left = new ArrayList<>();
    for (ExactRing ring : first.rings()) {
      if (second.rings().stream().anyMatch(ring::isNear)) {
        addPieces(true, ring, second);
      } else {
        left.add(ring);
      }
    }
    if (left.size() == first.rings().size()) {
      return first;
    }
    second.rings().forEach(ring -> addPieces(false, ring, first));
    Optional<List<ExactRing>> joined = pieces.rings();
    if (joined.isEmpty()) {
      return AreaOverlay.less(first, second);
    }
    left.addAll(joined.get());
    return new ExactArea(left);
  }

  private void addPieces(boolean isOfFirst, ExactRing ring, ExactArea other) {
    int last = ring.size() - 1;
    for (int i = 0, before = last; i <= last; before = i++) {
      if (isOfFirst || other.isNear(ring.x(before), ring.y(before), ring.x(i), ring.y(i))) {
        new AreaScan(isOfFirst, ring.x(before), ring.y(before), ring.x(i), ring.y(i), other)
            .addTo(pieces);
      }
    }
  }
}
