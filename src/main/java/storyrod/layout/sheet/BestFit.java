package storyrod.layout.sheet;

import storyrod.layout.sheet.Enlarged.Type;

/**
 * Finds the place for one part that spoils the least free space, by what free rectangles are worth
 * before and after. That strips may grow is from Fleszar (2013), skipping places now and then from
 * Christiaens and Vanden Berghe (2020).
 */
final class BestFit {
  private static final int STRIP = 0;
  private static final int INNER = 1;
  private static final int GROWN = 2;

  private final Type[] types;
  private final double[] scale;
  private final Chance chance;
  private final StepCount steps;

  /** Every so many places one is passed over, on average; 0 passes none over. */
  private int skipOneIn;

  private int untilSkip;
  private boolean mayStrip = true;
  private boolean mayInner = true;

  private int sheet;
  private int place;
  private boolean turned;
  private int how;
  private double least;

  BestFit(Enlarged sizes, Chance chance, StepCount steps) {
    this.types = sizes.types.toArray(Type[]::new);
    long largest = sizes.kinds.stream().mapToLong(Enlarged.Kind::area).max().orElse(1);
    this.scale = new double[] {1.0 / largest};
    this.chance = chance;
    this.steps = steps;
    skip(0);
  }

  void skip(int oneIn) {
    skipOneIn = oneIn;
    untilSkip = oneIn == 0 ? Integer.MAX_VALUE : 1 + chance.below(2 * oneIn);
  }

  /** Which of the two ways to cut a free rectangle round a part may be used. */
  void split(boolean strip, boolean inner) {
    mayStrip = strip;
    mayInner = inner;
  }

  double freeWorth(OpenSheet of) {
    of.find(scale);
    return of.freeWorth;
  }

  /** Places a part on the best of some sheets; false if it fits on none. */
  boolean insert(int part, OpenSheet[] sheets, int from, int to) {
    least = Double.POSITIVE_INFINITY;
    Type type = types[part];
    for (int i = from; i < to; i++) {
      OpenSheet on = sheets[i];
      if (on.kind != OpenSheet.CLOSED) {
        on.find(scale);
        steps.look(2);
        sheet = type.upright() && consider(type, false, on) ? i : sheet;
        sheet = type.turned() && consider(type, true, on) ? i : sheet;
      }
    }
    if (least == Double.POSITIVE_INFINITY) {
      return false;
    }
    place(part, sheets[sheet]);
    return true;
  }

  private void place(int part, OpenSheet on) {
    on.touch();
    int length = types[part].length(turned);
    int width = types[part].width(turned);
    if (how != GROWN) {
      on.tree.place(on.node[place], part, length, width, turned, how == STRIP);
      return;
    }
    int strip = on.strip[place];
    int at = on.place[place];
    int axis = on.tree.axis(on.tree.up(strip));
    int now = strip == at ? on.tree.size(strip, axis) : on.tree.rest(at);
    on.tree.grow(strip, (axis == 0 ? length : width) - now);
    on.tree.place(at, part, length, width, turned, true);
  }

  private boolean skips() {
    if (--untilSkip > 0) {
      return false;
    }
    untilSkip = skipOneIn == 0 ? Integer.MAX_VALUE : 1 + chance.below(2 * skipOneIn);
    return true;
  }

  private boolean consider(Type type, boolean turn, OpenSheet on) {
    int length = type.length(turn);
    int width = type.width(turn);
    if (length > on.mostX || width > on.mostY) {
      return false;
    }
    double before = least;
    steps.look(on.places + on.growths);
    for (int i = 0; i < on.places; i++) {
      if (length <= on.freeX[i] && width <= on.freeY[i] && !skips()) {
        consider(on, i, length, width, turn);
      }
    }
    for (int i = 0; i < on.growths; i++) {
      considerGrowth(on, i, length, width, turn);
    }
    return least < before;
  }

  private void consider(OpenSheet on, int i, int length, int width, boolean turn) {
    double unit = scale[0];
    int x = on.freeX[i];
    int y = on.freeY[i];
    double besides = Worth.of(unit * (x - length) * y) + Worth.of(unit * length * (y - width));
    double above = Worth.of(unit * (x - length) * width) + Worth.of(unit * x * (y - width));
    boolean alongX = on.tree.axis(on.node[i]) == 0;
    if (mayStrip) {
      offer(on.worth[i] - (alongX ? besides : above), turn, STRIP, i);
    }
    if (mayInner) {
      offer(on.worth[i] - (alongX ? above : besides), turn, INNER, i);
    }
  }

  private void considerGrowth(OpenSheet on, int i, int length, int width, boolean turn) {
    CutTree tree = on.tree;
    int strip = on.strip[i];
    int at = on.place[i];
    int above = tree.up(strip);
    int axis = tree.axis(above);
    int rest = tree.rest(above);
    boolean itself = strip == at;
    int now = itself ? tree.size(strip, axis) : tree.rest(at);
    int room = itself ? tree.rest(strip) : tree.size(at, 1 - axis);
    int along = axis == 0 ? length : width;
    int across = axis == 0 ? width : length;
    int by = along - now;
    if (by > 0 && by <= rest && across <= room && !skips()) {
      double unit = scale[0];
      int whole = tree.size(above, 1 - axis);
      double loss = Worth.of(unit * rest * whole) - Worth.of(unit * (rest - by) * whole);
      loss += Worth.of(unit * now * room) - Worth.of(unit * along * (room - across));
      offer(loss - othersGain(tree, strip, at, axis, by), turn, GROWN, i);
    }
  }

  /** What the strip's other free places gain when it grows. */
  private double othersGain(CutTree tree, int strip, int at, int axis, int by) {
    double unit = scale[0];
    double gain = 0;
    for (int piece = tree.first(strip); piece >= 0; piece = tree.next(piece)) {
      if (piece != at) {
        int free = tree.isPart(piece) ? 0 : tree.rest(piece);
        int across = tree.size(piece, 1 - axis);
        gain += Worth.of(unit * (free + by) * across) - Worth.of(unit * free * across);
      }
    }
    if (at != strip && tree.rest(strip) > 0) {
      int across = tree.rest(strip);
      int along = tree.size(strip, axis);
      gain += Worth.of(unit * (along + by) * across) - Worth.of(unit * along * across);
    }
    return gain;
  }

  private void offer(double loss, boolean turn, int by, int i) {
    if (loss < least) {
      least = loss;
      place = i;
      turned = turn;
      how = by;
    }
  }
}
