package storyrod.layout.sheet;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import storyrod.layout.sheet.Enlarged.Kind;
import storyrod.layout.sheet.Enlarged.Type;

/** Lays parts out in one go, the awkward first, by different measures of awkward. */
final class FirstLayout {
  /** With more parts than these each sheet is filled before the next is begun. */
  private static final int MOST_AT_ONCE = 300;

  private static final List<ToDoubleFunction<Type>> ORDERS =
      List.of(
          Type::area,
          type -> Math.max(type.length(), type.width()),
          type -> Math.min(type.length(), type.width()),
          Type::length,
          Type::width,
          type -> type.length() + type.width());

  private final Bench bench;
  private final Merit merit;
  private final Enlarged sizes;
  private Found best = Found.NOTHING;

  /** The place of the sheet opened last. */
  private int opened;

  private FirstLayout(Bench bench, Merit merit) {
    this.bench = bench;
    this.merit = merit;
    this.sizes = bench.sizes;
  }

  /** The best of some orders and rules; the search may end once it has one. */
  static Found of(Bench bench, Merit merit, StepCount steps) {
    return new FirstLayout(bench, merit).tryAll(steps);
  }

  private Found tryAll(StepCount steps) {
    List<Comparator<Kind>> choices =
        List.of(
            Comparator.comparingDouble(kind -> kind.worth() / (double) kind.area()),
            Comparator.comparingLong(Kind::area),
            Comparator.comparingLong(kind -> -kind.area()));
    List<Comparator<Kind>> some = sizes.kinds.size() == 1 ? choices.subList(0, 1) : choices;
    for (Comparator<Kind> choice : some) {
      for (ToDoubleFunction<Type> order : ORDERS) {
        for (int split = 0; split < 3; split++) {
          bench.fit.split(split != 1, split != 2);
          lay(order, choice);
          if (steps.over()) {
            bench.fit.split(true, true);
            return best;
          }
        }
      }
    }
    bench.fit.split(true, true);
    return best;
  }

  private void lay(ToDoubleFunction<Type> order, Comparator<Kind> choice) {
    bench.clear();
    bench.fit.skip(0);
    int[] parts =
        IntStream.range(0, sizes.types.size())
            .boxed()
            .sorted(Comparator.comparingDouble(i -> -order.applyAsDouble(sizes.types.get(i))))
            .mapToInt(i -> i)
            .toArray();
    int[] kinds =
        IntStream.range(0, sizes.kinds.size())
            .boxed()
            .sorted(Comparator.comparing(sizes.kinds::get, choice))
            .mapToInt(i -> i)
            .toArray();
    if (sizes.parts() > MOST_AT_ONCE) {
      fillEach(parts, kinds);
    } else {
      fillAll(parts, kinds);
    }
    Found found = bench.found();
    if (merit.isBetter(found, best)) {
      best = found;
    }
  }

  private void fillAll(int[] parts, int[] kinds) {
    for (int part : parts) {
      while (bench.out[part] > 0 && (insert(part, 0, bench.sheets.length) || open(part, kinds))) {
        continue;
      }
    }
  }

  private boolean insert(int part, int from, int to) {
    boolean inserted = bench.fit.insert(part, bench.sheets, from, to);
    bench.out[part] -= inserted ? 1 : 0;
    return inserted;
  }

  /** Opens the first kind that takes a part, and puts it there. */
  private boolean open(int part, int[] kinds) {
    for (int kind : kinds) {
      if (sizes.kinds.get(kind).holds(sizes.types.get(part))
          && bench.mayOpen(kind, Long.MAX_VALUE)) {
        opened = bench.open(kind);
        if (insert(part, opened, opened + 1)) {
          return true;
        }
        bench.close(bench.sheets[opened]);
      }
    }
    return false;
  }

  private void fillEach(int[] parts, int[] kinds) {
    for (int first : parts) {
      while (bench.out[first] > 0 && open(first, kinds)) {
        for (int part : parts) {
          while (bench.out[part] > 0 && insert(part, opened, opened + 1)) {
            continue;
          }
        }
        repeat(bench.sheets[opened]);
      }
    }
  }

  /** Cuts a sheet again as often as its parts are wanted. */
  private void repeat(OpenSheet sheet) {
    CutTree tree = new CutTree();
    tree.copyFrom(sheet.tree);
    Pattern same = Pattern.of(sheet.kind, tree, sizes.types.size());
    while (same.isWithin(bench.out) && bench.mayOpen(same.kind(), Long.MAX_VALUE)) {
      bench.use(same);
    }
  }
}
