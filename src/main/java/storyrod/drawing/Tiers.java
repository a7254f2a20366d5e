package storyrod.drawing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Wanted.Side;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;

/**
 * Places the dimensions of a view in tiers: the first 10 mm from the outline, each next 8 mm
 * further, the smaller of two nearer to the part, no text on a text or a line. Each in its turn,
 * the smallest first, takes the lowest tier where it keeps clear of the extension lines to come.
 */
final class Tiers {
  private static final double FIRST = 10;
  private static final double NEXT = 8;
  private static final double ARROW = 4.5;
  private static final double BESIDE_TEXT = 0.4;
  private static final int SPARE = 3;
  private static final int RESTARTS = 6;

  private final Paper paper;
  private final ViewOnPaper view;
  private final List<Wanted> wanted;
  private final Set<Wanted> stuck = new LinkedHashSet<>();
  private final Map<Side, List<Placed>> placed = new EnumMap<>(Side.class);

  private Tiers(Paper paper, ViewOnPaper view, List<Wanted> wanted) {
    this.paper = paper;
    this.view = view;
    this.wanted = wanted;
  }

  /** Puts a view's dimensions on the paper; false if there is no way. */
  static boolean place(Paper paper, ViewOnPaper view, List<Wanted> all) {
    List<Wanted> own = all.stream().filter(each -> each.view() == view.face()).toList();
    return new Tiers(paper, view, along(own, view.across())).place()
        && new Tiers(paper, view, along(own, view.upright())).place();
  }

  /** Puts as many of a view's dimensions on the paper as find a place; those that do not. */
  static List<Wanted> placeMost(Paper paper, ViewOnPaper view, List<Wanted> all) {
    List<Wanted> left = new ArrayList<>();
    List<Wanted> own = all.stream().filter(each -> each.view() == view.face()).toList();
    for (Axis axis : List.of(view.across(), view.upright())) {
      List<Wanted> some = along(own, axis);
      Optional<Wanted> stuck = new Tiers(paper, view, some).stuckFor(RESTARTS);
      while (stuck.isPresent()) {
        left.add(stuck.get());
        some = some.stream().filter(each -> !left.contains(each)).toList();
        stuck = new Tiers(paper, view, some).stuckFor(RESTARTS);
      }
    }
    return left;
  }

  private static List<Wanted> along(List<Wanted> all, Axis axis) {
    return all.stream()
        .filter(each -> each.axis() == axis)
        .sorted(Comparator.comparing(Wanted::measure))
        .toList();
  }

  /** Puts a view's dimensions on the paper come what may, each in a tier of its own. */
  static void force(Paper paper, ViewOnPaper view, List<Wanted> all) {
    for (Side side : Side.values()) {
      int tier = 0;
      for (Wanted each : along(all, view.across())) {
        tier = forced(paper, view, each, new Forced(side, tier));
      }
      for (Wanted each : along(all, view.upright())) {
        tier = forced(paper, view, each, new Forced(side, tier));
      }
    }
  }

  private record Forced(Side side, int tier) {}

  private static int forced(Paper paper, ViewOnPaper view, Wanted each, Forced at) {
    if (each.view() != view.face() || each.side() != at.side) {
      return at.tier;
    }
    paper.add(new Tiers(paper, view, List.of()).dimension(each, new Spot(at.tier, false)));
    return at.tier + 1;
  }

  /** A placed dimension: its stretch along the line, and how far the line runs out on each side. */
  private record Placed(int tier, double low, double high, double before, double after) {
    boolean spans(Placed other) {
      return low < other.high - 0.01 && other.low < high - 0.01;
    }

    /** Arrows that point inward may lie on a neighbour's line only where both end. */
    boolean hinders(Placed other) {
      return spans(other) || reaches(other) || other.reaches(this);
    }

    private boolean reaches(Placed other) {
      return reachesUp(other) || reachesDown(other);
    }

    private boolean reachesUp(Placed other) {
      boolean meets = other.low >= high - 0.01 && high + after > other.low - other.before + 0.01;
      boolean shares = Math.abs(other.low - high) < 0.01;
      return after > 0 && meets && !(shares && after <= ARROW && other.before == 0);
    }

    private boolean reachesDown(Placed other) {
      boolean meets = other.high <= low + 0.01 && low - before < other.high + other.after - 0.01;
      boolean shares = Math.abs(other.high - low) < 0.01;
      return before > 0 && meets && !(shares && before <= ARROW && other.after == 0);
    }
  }

  /** What got stuck is kept clear of by all others in the next attempt. */
  private boolean place() {
    return stuckFor(RESTARTS).isEmpty();
  }

  /** The dimension that stays without a place after some attempts, the paper as it was before. */
  private Optional<Wanted> stuckFor(int attempts) {
    Paper.State before = paper.state();
    for (int i = 0; i < attempts; i++) {
      Optional<Wanted> failed = firstThatFails();
      if (failed.isEmpty()) {
        return failed;
      }
      paper.backTo(before);
      if (!stuck.add(failed.get()) || i == attempts - 1) {
        return failed;
      }
    }
    return Optional.empty();
  }

  private Optional<Wanted> firstThatFails() {
    placed.clear();
    for (int i = 0; i < wanted.size(); i++) {
      Wanted each = wanted.get(i);
      List<Wanted> later = wanted.subList(i + 1, wanted.size());
      if (!placeOn(each, later) && !(mayChangeSides(each) && placeOn(each.onOtherSide(), later))) {
        return Optional.of(each);
      }
    }
    return Optional.empty();
  }

  private boolean mayChangeSides(Wanted each) {
    return view.face() == Face.FRONT || each.axis() == Axis.Y;
  }

  /** First where it keeps clear of all that comes later on its side, else where it may. */
  private boolean placeOn(Wanted each, List<Wanted> later) {
    List<Wanted> here = later.stream().filter(other -> other.side() == each.side()).toList();
    return placeClearOf(here, each) || !here.isEmpty() && placeClearOf(List.of(), each);
  }

  private boolean placeClearOf(List<Wanted> later, Wanted each) {
    int lowest = lowest(each);
    boolean better = inTheWay(each, true, later) < inTheWay(each, false, later);
    for (int tier = lowest; tier <= lowest + SPARE; tier++) {
      for (boolean turned : new boolean[] {better, !better}) {
        if (tryAt(each, new Spot(tier, turned), later)) {
          return true;
        }
      }
    }
    return false;
  }

  /**
   * How many later neighbours would have to go a tier further because of the figures, or have them
   * on their line, where two sizes are read as one.
   */
  private long inTheWay(Wanted each, boolean turned, List<Wanted> later) {
    DimensionLayout layout = layout(each, turned);
    Placed place = placed(layout, 0);
    return later.stream()
        .map(other -> plain(other, false))
        .filter(other -> !place.spans(other))
        .filter(other -> place.reaches(other) || bearsFiguresOf(layout, other))
        .count();
  }

  private static boolean bearsFiguresOf(DimensionLayout layout, Placed other) {
    Dimension d = layout.dimension();
    double end = d.alongX() ? d.to().x() : d.to().y();
    return !layout.textInside()
        && (Math.abs(end - other.low) < 0.01 || Math.abs(end - other.high) < 0.01);
  }

  private Placed plain(Wanted each, boolean turned) {
    return placed(layout(each, turned), 0);
  }

  private DimensionLayout layout(Wanted each, boolean turned) {
    return DimensionLayout.of(dimension(each, new Spot(0, turned)));
  }

  private List<Placed> on(Side side) {
    return placed.computeIfAbsent(side, key -> new ArrayList<>());
  }

  /** The first tier beyond all that lie between a dimension and the part. */
  private int lowest(Wanted each) {
    Placed plain = plain(each, false);
    return on(each.side()).stream()
        .filter(plain::spans)
        .mapToInt(other -> other.tier + 1)
        .max()
        .orElse(0);
  }

  /** A tier, and whether the figures that find no room inside stand at the other end. */
  private record Spot(int tier, boolean turned) {}

  private boolean tryAt(Wanted each, Spot spot, List<Wanted> later) {
    Dimension dimension = dimension(each, spot);
    DimensionLayout layout = DimensionLayout.of(dimension);
    Placed place = placed(layout, spot.tier);
    boolean free =
        !(spot.turned && layout.textInside())
            && on(each.side()).stream()
                .noneMatch(other -> other.tier == place.tier && other.hinders(place))
            && isClearOf(layout, later)
            && isClearOf(layout, stuck)
            && paper.hasRoomFor(dimension);
    if (free) {
      on(each.side()).add(place);
      paper.add(dimension);
    }
    return free;
  }

  /** Whether the figures stand off every extension line that others need. */
  private boolean isClearOf(DimensionLayout layout, Collection<Wanted> others) {
    PlacedText text = PlacedText.of(layout.figures());
    boolean alongX = layout.dimension().alongX();
    double low = (alongX ? text.left() : text.top()) - BESIDE_TEXT;
    double high = (alongX ? text.right() : text.bottom()) + BESIDE_TEXT;
    for (Wanted other : others) {
      for (Point end : List.of(other.from(), other.to())) {
        double at = alongX ? view.at(end).x() : view.at(end).y();
        if (low < at && at < high) {
          return false;
        }
      }
    }
    return true;
  }

  private static Placed placed(DimensionLayout layout, int tier) {
    Dimension d = layout.dimension();
    double from = d.alongX() ? d.from().x() : d.from().y();
    double to = d.alongX() ? d.to().x() : d.to().y();
    return from < to
        ? new Placed(tier, from, to, layout.before(), layout.beyond())
        : new Placed(tier, to, from, layout.beyond(), layout.before());
  }

  private Dimension dimension(Wanted each, Spot spot) {
    At from = view.at(each.from());
    At to = view.at(each.to());
    boolean alongX = each.axis() == view.across();
    return new Dimension(
        spot.turned ? to : from,
        spot.turned ? from : to,
        alongX,
        line(each.side(), spot.tier),
        each.text(),
        each.measure());
  }

  private double line(Side side, int tier) {
    Bounds bounds = view.bounds();
    double away = FIRST + NEXT * tier;
    return switch (side) {
      case ABOVE -> bounds.top() - away;
      case BELOW -> bounds.bottom() + away;
      case LEFT -> bounds.left() - away;
      case RIGHT -> bounds.right() + away;
    };
  }
}
