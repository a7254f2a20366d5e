package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Wanted.Side;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;

/**
 * Places the dimensions of one side of a view in tiers: the first 10 mm from the outline, each next
 * 8 mm further, the smaller of two nearer to the part, no text on a text or a line. Tries few tiers
 * before many, and gives up after a set number of trials.
 */
final class Tiers {
  private static final double FIRST = 10;
  private static final double NEXT = 8;
  private static final double ARROW = 4.5;
  private static final int TRIALS = 250;

  private final Paper paper;
  private final PlacedView view;
  private final Side side;
  private final List<Wanted> wanted;
  private final List<Placed> placed = new ArrayList<>();
  private int trials;

  private Tiers(Paper paper, PlacedView view, Side side, List<Wanted> wanted) {
    this.paper = paper;
    this.view = view;
    this.side = side;
    this.wanted = wanted;
  }

  /** Puts a view's dimensions on the paper; false if there is no way. */
  static boolean place(Paper paper, PlacedView view, List<Wanted> all) {
    List<Wanted> own = all.stream().filter(each -> each.view() == view.face()).toList();
    return placeAxis(paper, view, along(own, view.across()))
        && placeAxis(paper, view, along(own, view.upright()));
  }

  private static List<Wanted> along(List<Wanted> all, Axis axis) {
    return all.stream()
        .filter(each -> each.axis() == axis)
        .sorted(Comparator.comparing(Wanted::measure))
        .toList();
  }

  /** Where both sides of the view are free, up to two dimensions change sides if they must. */
  private static boolean placeAxis(Paper paper, PlacedView view, List<Wanted> wanted) {
    if (placeSides(paper, view, wanted)) {
      return true;
    }
    if (view.face() == Face.FRONT) {
      for (int i = wanted.size() - 2; i >= 0; i--) {
        if (placeSides(paper, view, moved(wanted, i))) {
          return true;
        }
      }
      for (int i = wanted.size() - 2; i >= 0; i--) {
        for (int j = i - 1; j >= 0; j--) {
          if (placeSides(paper, view, moved(moved(wanted, i), j))) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private static List<Wanted> moved(List<Wanted> wanted, int index) {
    List<Wanted> moved = new ArrayList<>(wanted);
    moved.set(index, wanted.get(index).onOtherSide());
    return moved;
  }

  private static boolean placeSides(Paper paper, PlacedView view, List<Wanted> wanted) {
    Paper.State before = paper.state();
    for (Side side : Side.values()) {
      List<Wanted> here = wanted.stream().filter(each -> each.side() == side).toList();
      if (!new Tiers(paper, view, side, here).place()) {
        paper.backTo(before);
        return false;
      }
    }
    return true;
  }

  /** Puts a view's dimensions on the paper come what may, each in a tier of its own. */
  static void force(Paper paper, PlacedView view, List<Wanted> all) {
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

  private static int forced(Paper paper, PlacedView view, Wanted each, Forced at) {
    if (each.view() != view.face() || each.side() != at.side) {
      return at.tier;
    }
    paper.add(new Tiers(paper, view, at.side, List.of()).dimension(each, at.tier, false));
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

  private boolean place() {
    for (int tiers = fewest(); tiers <= wanted.size() + 1; tiers++) {
      trials = 0;
      if (place(0, tiers)) {
        return true;
      }
    }
    return wanted.isEmpty();
  }

  /** The longest row of stretches that overlap, each with a longer one. */
  private int fewest() {
    int[] depth = new int[wanted.size()];
    int fewest = 0;
    for (int i = 0; i < depth.length; i++) {
      depth[i] = 1;
      for (int j = 0; j < i; j++) {
        if (wanted.get(i).range().overlaps(wanted.get(j).range())) {
          depth[i] = Math.max(depth[i], depth[j] + 1);
        }
      }
      fewest = Math.max(fewest, depth[i]);
    }
    return fewest;
  }

  private boolean place(int index, int tiers) {
    if (index == wanted.size()) {
      return true;
    }
    Wanted each = wanted.get(index);
    for (int tier = 0; tier < tiers; tier++) {
      for (boolean turned : new boolean[] {false, true}) {
        if (trials < TRIALS && tryAt(each, tier, turned)) {
          if (place(index + 1, tiers)) {
            return true;
          }
          takeBack();
        }
      }
    }
    return false;
  }

  private final List<Paper.State> states = new ArrayList<>();

  private void takeBack() {
    placed.removeLast();
    paper.backTo(states.removeLast());
  }

  private boolean tryAt(Wanted each, int tier, boolean turned) {
    Dimension dimension = dimension(each, tier, turned);
    DimensionLayout layout = DimensionLayout.of(dimension);
    if (turned && layout.textInside()) {
      return false;
    }
    Placed place = placed(layout, tier);
    if (!fits(place)) {
      return false;
    }
    trials++;
    if (!paper.hasRoomFor(dimension)) {
      return false;
    }
    states.add(paper.state());
    placed.add(place);
    paper.add(dimension);
    return true;
  }

  private boolean fits(Placed place) {
    for (Placed other : placed) {
      boolean tooNear = other.spans(place) && other.tier >= place.tier;
      if (tooNear || other.tier == place.tier && other.hinders(place)) {
        return false;
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

  private Dimension dimension(Wanted each, int tier, boolean turned) {
    At from = view.at(each.from());
    At to = view.at(each.to());
    boolean alongX = each.axis() == view.across();
    return new Dimension(
        turned ? to : from, turned ? from : to, alongX, line(tier), each.text(), each.measure());
  }

  private double line(int tier) {
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
