package storyrod.drawing;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.build.PlacedItem;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;

/**
 * Moves hardware out of its seats, each along the line by which it goes in, with the part it goes
 * into. What belongs together comes out alike: clear of its host, past what came out of the same
 * place before it, and on until no part hides it; if one always does, to where it is seen best.
 * What lies in two parts stays between them.
 */
final class HardwareOut {
  /** Between an item and its host, and from one look to the next, as shares of the diagonal. */
  private static final double GAP = 0.02;

  private static final double STEP = 0.03;
  private static final double ENOUGH_SEEN = 0.95;
  private static final double WORTH_A_STEP = 0.1;

  private final HiddenLines parts;
  private final Map<String, Vector3D> offsets;
  private final Reach reach;
  private final List<Fitting> out = new ArrayList<>();
  private final Map<PlacedItem, Box> boxes = new IdentityHashMap<>();

  /**
   * How far it may come out.
   *
   * @param diagonalMm of all that is drawn, in its place
   * @param steps how many times it is looked at farther out
   * @param way what is in its way
   */
  record Reach(double diagonalMm, int steps, FreeWay way) {
    private static final int NEAR = 8;
    private static final int FAR = 16;

    /** A short way, where parts can give way, and no further than there is room. */
    static Reach near(double diagonalMm, FreeWay way) {
      return new Reach(diagonalMm, NEAR, way);
    }

    /** On past where parts hide it, where none of them can. */
    static Reach far(double diagonalMm, FreeWay way) {
      return new Reach(diagonalMm, FAR, way);
    }
  }

  private HardwareOut(HiddenLines parts, Map<String, Vector3D> offsets, Reach reach) {
    this.parts = parts;
    this.offsets = offsets;
    this.reach = reach;
  }

  /**
   * Where hardware is drawn.
   *
   * @param parts what is drawn besides, without it
   * @param offsets how far each host is drawn from its place
   * @param reach how far it may come out
   */
  static List<Fitting> of(
      List<Hardware> items, HiddenLines parts, Map<String, Vector3D> offsets, Reach reach) {
    HardwareOut out = new HardwareOut(parts, offsets, reach);
    alike(items).forEach(out::moveOut);
    return out.out;
  }

  /** Items of one kind that one joint or one line of the list puts into one part on one side. */
  private static List<List<Hardware>> alike(List<Hardware> items) {
    Map<List<Object>, List<Hardware>> alike = new LinkedHashMap<>();
    for (Hardware each : items) {
      PlacedItem placed = each.placed();
      List<Object> key = List.of(placed.item(), placed.origin(), placed.host(), placed.out());
      alike.computeIfAbsent(key, any -> new ArrayList<>()).add(each);
    }
    return List.copyOf(alike.values());
  }

  private void moveOut(List<Hardware> alike) {
    double room = alike.stream().mapToDouble(this::room).min().orElse(Double.POSITIVE_INFINITY);
    double clear = alike.stream().mapToDouble(this::clear).max().orElse(0);
    double first = Math.min(GAP * reach.diagonalMm + clear, room);
    List<Hardware> looked = alike.size() < 3 ? alike : List.of(alike.getFirst(), alike.getLast());
    double best = first;
    double most = -1;
    for (int i = 0; i <= reach.steps && most < ENOUGH_SEEN; i++) {
      double mm = Math.min(first + i * STEP * reach.diagonalMm, room);
      double seen = looked.stream().mapToDouble(each -> seen(moved(each, mm))).min().orElse(1);
      if (seen > most + WORTH_A_STEP) {
        most = seen;
        best = mm;
      }
    }
    double mm = best;
    alike.forEach(each -> out.add(moved(each, mm)));
  }

  /** How far it may come out before it meets the other part of its joint, or what is in its way. */
  private double room(Hardware item) {
    PlacedItem placed = item.placed();
    double gap =
        placed.origin().parts().stream()
            .filter(offsets::containsKey)
            .mapToDouble(
                other -> offsets.get(other).subtract(offsets.get(placed.host())).dot(placed.out()))
            .max()
            .orElse(0);
    double room = gap - placed.highMm();
    return Math.min(
        room >= placed.deepMm() ? room : Double.POSITIVE_INFINITY, reach.way.ofMm(placed));
  }

  private Fitting moved(Hardware item, double mm) {
    PlacedItem placed = item.placed();
    return new Fitting(item, placed.at().add(offsets.get(placed.host())), mm);
  }

  /** From its seat to where it is out of its host, and of what came out of there before it. */
  private double clear(Hardware item) {
    double before =
        out.stream()
            .filter(other -> isInTheWay(other.hardware().placed(), item.placed()))
            .mapToDouble(other -> other.outMm() + other.hardware().placed().highMm())
            .max()
            .orElse(0);
    return before + item.placed().deepMm();
  }

  private boolean isInTheWay(PlacedItem there, PlacedItem coming) {
    Axis along = Face.nearest(coming.out()).axis();
    return there.host().equals(coming.host())
        && there.out().equals(coming.out())
        && Extent.inLine(box(there), box(coming), along);
  }

  /** Each is asked for with every other, so it is worked out once. */
  private Box box(PlacedItem placed) {
    return boxes.computeIfAbsent(placed, each -> each.solid().bounds(each.at()).orElseThrow());
  }

  /** The share that is seen of the two diagonals through a body that look least alike. */
  private double seen(Fitting fitting) {
    return fitting.diagonals().stream()
        .mapToDouble(line -> seen(line.getFirst(), line.getLast()))
        .min()
        .orElse(1);
  }

  private double seen(Vector3D from, Vector3D to) {
    double whole = parts.whole(from, to).length();
    double shown = parts.visible(from, to).stream().mapToDouble(Seen.Stroke::length).sum();
    return whole < 1 ? 1 : Math.min(1, shown / whole);
  }
}
