package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Balloon;

/**
 * Puts the ring of a mark on the part itself where it finds room there, else near by, with a leader
 * that crosses no text, no dimension line and no other leader, and few lines.
 */
final class BalloonPlacer {
  private static final double ROOM = Lowering.BALLOON_RADIUS + 0.6;
  private static final double STEP = 2.5;
  private static final double FARTHEST = 60;
  private static final double PER_CROSSING = 5;
  private static final double PER_EXTENSION = 20;
  private static final int DEGREES = 15;

  private final FreePlace free;
  private final Paper paper;
  private final List<Paper.Stretch> leaders = new ArrayList<>();

  BalloonPlacer(Paper paper, Size area) {
    this.paper = paper;
    this.free = new FreePlace(paper, area);
  }

  /** The leaders of all balloons so far. */
  List<Paper.Stretch> leaders() {
    return List.copyOf(leaders);
  }

  /** Puts a mark on the paper; false if there is no room. */
  boolean place(String mark, At tip) {
    Optional<At> centre = isFree(tip) ? Optional.of(tip) : around(tip);
    centre.ifPresent(
        at -> {
          paper.add(new Balloon(at, tip, mark));
          leaders.add(new Paper.Stretch(at, tip));
        });
    return centre.isPresent();
  }

  private static Bounds room(At centre) {
    return new Bounds(centre.x() - ROOM, centre.y() - ROOM, centre.x() + ROOM, centre.y() + ROOM);
  }

  private boolean isFree(At centre) {
    return free.isFree(room(centre));
  }

  private Optional<At> around(At tip) {
    Optional<At> best = Optional.empty();
    double least = Double.POSITIVE_INFINITY;
    Bounds now = paper.bounds();
    DrawnDimensions dimensions = paper.dimensions();
    for (double away = 2 * ROOM; away < Math.min(FARTHEST, least); away += STEP) {
      for (int degrees = 5; degrees < 360; degrees += DEGREES) {
        double turned = StrictMath.toRadians(degrees);
        At centre = tip.plus(away * StrictMath.cos(turned), away * StrictMath.sin(turned));
        Paper.Stretch leader = new Paper.Stretch(tip, centre);
        if (free.fits(room(centre), now) && isFree(centre) && isClear(leader, dimensions)) {
          int extensions = DrawnDimensions.count(leader, dimensions.extensions());
          double cost = away + PER_CROSSING * crossings(leader) + PER_EXTENSION * extensions;
          if (cost < least) {
            least = cost;
            best = Optional.of(centre);
          }
        }
      }
    }
    return best;
  }

  private boolean isClear(Paper.Stretch leader, DrawnDimensions dimensions) {
    return paper.missesTexts(leader)
        && Stream.concat(leaders.stream(), dimensions.lines().stream()).noneMatch(leader::crosses);
  }

  private int crossings(Paper.Stretch leader) {
    return paper.crossed(leader);
  }
}
