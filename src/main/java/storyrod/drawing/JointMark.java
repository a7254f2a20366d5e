package storyrod.drawing;

import java.util.Optional;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Balloon;

/**
 * A part's mark beside the picture of a joint.
 *
 * @param tip the point of the part at which it points
 */
record JointMark(String mark, At tip) {
  private static final double GRID_MM = 1.5;
  private static final double CLEAR_MM = 0.8;
  private static final double PER_CROSSING = 6;

  /** Puts the ringed mark where it is free, as near as can be, else elsewhere beside the joint. */
  void addTo(Paper paper, Bounds room, Bounds whole) {
    place(paper, room)
        .or(() -> place(paper, whole))
        .ifPresent(centre -> paper.add(new Balloon(centre, tip, mark)));
  }

  private Optional<At> place(Paper paper, Bounds room) {
    double radius = Lowering.BALLOON_RADIUS;
    Optional<At> best = Optional.empty();
    double least = Double.POSITIVE_INFINITY;
    for (double y = room.top() + radius; y <= room.bottom() - radius; y += GRID_MM) {
      for (double x = room.left() + radius; x <= room.right() - radius; x += GRID_MM) {
        At centre = new At(x, y);
        double cost = cost(paper, centre);
        if (cost < least && isFree(paper, centre)) {
          least = cost;
          best = Optional.of(centre);
        }
      }
    }
    return best;
  }

  private double cost(Paper paper, At centre) {
    return centre.distance(tip)
        + PER_CROSSING * paper.crossed(new Paper.Stretch(centre, tip));
  }

  private boolean isFree(Paper paper, At centre) {
    double radius = Lowering.BALLOON_RADIUS;
    Bounds ring = new Bounds(centre.x(), centre.y(), centre.x(), centre.y()).widened(radius);
    PlacedText room = new PlacedText("", 1, ring.left(), ring.top(), ring.right(), ring.bottom());
    return paper.isFree(room.widened(CLEAR_MM))
        && paper.missesTexts(new Paper.Stretch(centre, tip));
  }
}
