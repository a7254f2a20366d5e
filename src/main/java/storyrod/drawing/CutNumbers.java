package storyrod.drawing;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.Arrow;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Ellipse;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.Drawing.Tone;

/** Finds places for the ringed numbers of a layout's cuts. */
final class CutNumbers {
  private static final double RING = 1.9;
  private static final double DIGIT = 0.9;
  private static final double OFF_SHEET = 0.6;
  private static final double OFF_END = 0.3;
  private static final double APART = 0.6;

  /** From a ring to the line of an arrow: its head is half as broad as that. */
  private static final double OFF_ARROW = 0.8;

  private static final double STEP = 0.5;
  private static final int FARTHEST = 60;
  private static final int DIRECTIONS = 24;
  private static final int TIPS = 8;

  private final Paper paper;
  private final Bounds room;
  private final List<At> rings = new ArrayList<>();
  private final List<Paper.Stretch> leaders = new ArrayList<>();
  private final List<Paper.Stretch> arrows = new ArrayList<>();

  /** Takes the paper as drawn so far and where on it numbers may stand. */
  CutNumbers(Paper paper, Bounds room) {
    this.paper = paper;
    this.room = room;
  }

  /** Puts a number on its cut, as near to the end as there is room, else off it with a leader. */
  void place(int number, Paper.Stretch cut, boolean leavesSheet) {
    double run = cut.from().distance(cut.to());
    double furthest = leavesSheet ? run + RING + OFF_SHEET : run - RING - OFF_END;
    for (double along = furthest; along > RING; along -= STEP) {
      At centre = on(cut, along / run);
      if (isFree(centre, RING)) {
        add(number, centre);
        return;
      }
    }
    addLed(number, tips(cut));
  }

  /** Where a leader may reach a cut: first its ends and its middle, then all along it. */
  private static List<At> tips(Paper.Stretch cut) {
    Stream<Double> first = Stream.of(1.0, 0.5, 0.0);
    Stream<Double> more = IntStream.range(1, TIPS).mapToObj(i -> i / (double) TIPS);
    return Stream.concat(first, more).map(part -> on(cut, part)).toList();
  }

  /** Has later numbers keep clear of a ring that stands already, and of its leader. */
  void keepClearOf(At ring, At tip) {
    rings.add(ring);
    leaders.add(new Paper.Stretch(tip, ring));
  }

  /** Has later numbers keep clear of the arrow of a label. */
  void keepClearOf(List<Element> label) {
    label.stream()
        .flatMap(each -> each instanceof Arrow arrow ? Stream.of(arrow) : Stream.empty())
        .forEach(arrow -> arrows.add(new Paper.Stretch(arrow.from(), arrow.to())));
  }

  private static At on(Paper.Stretch cut, double part) {
    return cut.from()
        .plus((cut.to().x() - cut.from().x()) * part, (cut.to().y() - cut.from().y()) * part);
  }

  private void add(int number, At centre) {
    rings.add(centre);
    paper.add(new Ellipse(Role.DIMENSION, centre, RING, RING, 0, Optional.of(Tone.WHITE)));
    paper.add(new Text(TextStyle.SMALL, centre.plus(0, DIGIT), Anchor.MIDDLE, true, "" + number));
  }

  /**
   * The number of a cut that has no room for it stands near by, with a leader to the cut; on the
   * cut itself, come what may, where there is no room anywhere.
   */
  private void addLed(int number, List<At> tips) {
    Optional<Led> led =
        Stream.<Predicate<Paper.Stretch>>of(this::isClear, paper::missesTexts, any -> true)
            .flatMap(clear -> around(tips).filter(each -> clear.test(each.leader())))
            .findFirst();
    led.ifPresent(
        found -> {
          leaders.add(found.leader());
          paper.add(new Line(Role.DIMENSION, List.of(found.tip, found.rim())));
          paper.add(Lowering.head(found.tip, found.rim(), Lowering.Head.LEADER));
        });
    add(number, led.map(Led::centre).orElse(tips.getFirst()));
  }

  /** Free places round some points, the nearest first. */
  private Stream<Led> around(List<At> tips) {
    return IntStream.range((int) (2 * RING), FARTHEST)
        .boxed()
        .flatMap(away -> tips.stream().flatMap(tip -> Led.at(tip, away)))
        .filter(led -> isOnPaper(led.centre) && isFree(led.centre, RING));
  }

  /** A ring off the cut, with the point of the cut to which its leader runs. */
  private record Led(At tip, At centre) {
    static Stream<Led> at(At tip, int away) {
      return IntStream.range(0, DIRECTIONS)
          .mapToDouble(step -> StrictMath.toRadians(step * 360.0 / DIRECTIONS))
          .mapToObj(angle -> tip.plus(away * StrictMath.cos(angle), away * StrictMath.sin(angle)))
          .map(centre -> new Led(tip, centre));
    }

    At rim() {
      double part = RING / centre.distance(tip);
      return centre.plus((tip.x() - centre.x()) * part, (tip.y() - centre.y()) * part);
    }

    Paper.Stretch leader() {
      return new Paper.Stretch(tip, rim());
    }
  }

  private boolean isOnPaper(At centre) {
    return centre.x() > room.left() + RING
        && centre.y() > room.top() + RING
        && centre.x() < room.right() - RING
        && centre.y() < room.bottom() - RING;
  }

  /** Whether a leader would touch no text, no ring, no arrow and no leader. */
  boolean isClear(Paper.Stretch leader) {
    return paper.missesTexts(leader)
        && Stream.concat(leaders.stream(), arrows.stream()).noneMatch(each -> crosses(each, leader))
        && rings.stream().noneMatch(ring -> distance(ring, leader) < RING + OFF_END);
  }

  private static boolean crosses(Paper.Stretch one, Paper.Stretch other) {
    return Line2D.linesIntersect(
        one.from().x(),
        one.from().y(),
        one.to().x(),
        one.to().y(),
        other.from().x(),
        other.from().y(),
        other.to().x(),
        other.to().y());
  }

  private static double distance(At at, Paper.Stretch line) {
    At from = line.from();
    At to = line.to();
    return Line2D.ptSegDist(from.x(), from.y(), to.x(), to.y(), at.x(), at.y());
  }

  /** Whether a ring of some radius would touch no text, no arrow, no other ring and no leader. */
  boolean isFree(At centre, double radius) {
    PlacedText ring =
        new PlacedText(
            "",
            0,
            centre.x() - radius,
            centre.y() - radius,
            centre.x() + radius,
            centre.y() + radius);
    return paper.missesTexts(ring)
        && arrows.stream().noneMatch(each -> distance(centre, each) < radius + OFF_ARROW)
        && leaders.stream().noneMatch(each -> distance(centre, each) < radius + OFF_END)
        && leaders.stream().noneMatch(each -> each.from().distance(centre) < radius + APART)
        && rings.stream().noneMatch(other -> other.distance(centre) < radius + RING + APART);
  }
}
