package storyrod.drawing;

import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Balloon;

/** Puts the ringed marks of a joint's parts beside its two pictures. */
final class JointMarks {
  private static final double GRID_MM = 1.5;
  private static final double CLEAR_MM = 0.8;
  private static final double PER_CROSSING = 6;

  /** A ring on a part looks like a mark of that part, so it stands beside unless that is far. */
  private static final double ON_A_PART = 25;

  /** Two leaders that cross are taken for each other: rather a ring on a part. */
  private static final double PER_LEADER = 60;

  private final Paper paper;
  private final Bounds whole;
  private final List<Paper.Stretch> leaders = new ArrayList<>();
  private final List<JointMark> all = new ArrayList<>();
  private final List<Bounds> rooms = new ArrayList<>();

  JointMarks(Paper paper, Bounds whole) {
    this.paper = paper;
    this.whole = whole;
  }

  /** Marks that shall stand in a room. */
  void add(List<JointMark> marks, Bounds room) {
    for (JointMark mark : marks) {
      all.add(mark);
      rooms.add(room);
    }
  }

  /** Puts each where it is free, as near as can be, else elsewhere beside the joint. */
  void place() {
    Path2D parts = parts();
    for (int i = 0; i < all.size(); i++) {
      JointMark mark = all.get(i);
      place(mark, rooms.get(i), parts)
          .or(() -> place(mark, whole, parts))
          .ifPresent(centre -> put(mark, centre));
    }
  }

  private void put(JointMark mark, At centre) {
    paper.add(new Balloon(centre, mark.tip(), mark.mark()));
    leaders.add(mark.leader(centre));
  }

  private Path2D parts() {
    Path2D parts = new Path2D.Double(Path2D.WIND_NON_ZERO);
    paper.elements().stream()
        .flatMap(each -> Lowering.simple(each).stream())
        .filter(Area.class::isInstance)
        .flatMap(each -> ((Area) each).rings().stream())
        .forEach(ring -> parts.append(TemplateBody.ring(ring), false));
    return parts;
  }

  private Optional<At> place(JointMark mark, Bounds room, Path2D parts) {
    double radius = Lowering.BALLOON_RADIUS;
    Optional<At> best = Optional.empty();
    double least = Double.POSITIVE_INFINITY;
    for (double y = room.top() + radius; y <= room.bottom() - radius; y += GRID_MM) {
      for (double x = room.left() + radius; x <= room.right() - radius; x += GRID_MM) {
        At centre = new At(x, y);
        double cost = centre.distance(mark.tip()) + (parts.contains(x, y) ? ON_A_PART : 0);
        if (cost < least && isFree(mark, centre)) {
          cost += PER_CROSSING * paper.crossed(mark.leader(centre)) + crossing(mark, centre);
          best = cost < least ? Optional.of(centre) : best;
          least = Math.min(cost, least);
        }
      }
    }
    return best;
  }

  private double crossing(JointMark mark, At centre) {
    return PER_LEADER * leaders.stream().filter(mark.leader(centre)::crosses).count();
  }

  private boolean isFree(JointMark mark, At centre) {
    double clear = Lowering.BALLOON_RADIUS + CLEAR_MM;
    Bounds ring = Bounds.of(centre, centre).widened(clear);
    PlacedText room = new PlacedText("", 1, ring.left(), ring.top(), ring.right(), ring.bottom());
    return paper.isFree(room)
        && paper.missesTexts(mark.leader(centre))
        && all.stream().noneMatch(other -> ring.contains(other.tip()));
  }
}
