package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Linear equations between unknown places, solved as they come in, each with what its printed
 * figure may be off.
 */
final class Equations {
  private static final double NOTHING = 1e-7;

  private final List<Row> rows = new ArrayList<>();
  private final List<Double> off = new ArrayList<>();

  /** What a new equation is to those before it. */
  enum News {
    NEW,
    REPEATS,
    CONTRADICTS
  }

  /** A place that is known: where it is, and by how much the figures may have rounded it. */
  record Known(double mm, double offMm) {}

  /** A sum of places that is a sum of figures: in what share each equation went into it. */
  private record Row(Map<Integer, Double> sum, double value, Map<Integer, Double> shares) {
    double of(int unknown) {
      return sum.getOrDefault(unknown, 0.0);
    }

    Row minus(Row other, double times) {
      return new Row(
          minus(sum, other.sum, times),
          value - times * other.value,
          minus(shares, other.shares, times));
    }

    Row dividedBy(double divisor) {
      Row zero = new Row(Map.of(), 0, Map.of());
      return zero.minus(this, -1 / divisor);
    }

    private static Map<Integer, Double> minus(
        Map<Integer, Double> one, Map<Integer, Double> other, double times) {
      Map<Integer, Double> sum = new TreeMap<>(one);
      other.forEach((key, each) -> sum.merge(key, -times * each, Double::sum));
      sum.values().removeIf(each -> Math.abs(each) < NOTHING);
      return sum;
    }
  }

  /**
   * Takes in an equation.
   *
   * @param sum how often each unknown counts
   * @param offMm by how much the value may be rounded
   */
  News add(Map<Integer, Double> sum, double value, double offMm) {
    off.add(offMm);
    Row row = new Row(new TreeMap<>(sum), value, Map.of(off.size() - 1, 1.0));
    for (Row each : rows) {
      row = row.minus(each, row.of(pivot(each)));
    }
    if (row.sum.isEmpty()) {
      return Math.abs(row.value) <= off(row) + 1e-3 ? News.REPEATS : News.CONTRADICTS;
    }
    Row fresh = row.dividedBy(row.of(pivot(row)));
    rows.replaceAll(each -> each.minus(fresh, each.of(pivot(fresh))));
    rows.add(fresh);
    return News.NEW;
  }

  /** Where an unknown lies, if the equations say so. */
  Optional<Known> known(int unknown) {
    return rows.stream()
        .filter(row -> row.sum.size() == 1 && pivot(row) == unknown)
        .map(row -> new Known(row.value, off(row)))
        .findFirst();
  }

  private double off(Row row) {
    return row.shares.entrySet().stream()
        .mapToDouble(each -> Math.abs(each.getValue()) * off.get(each.getKey()))
        .sum();
  }

  private static int pivot(Row row) {
    return row.sum.keySet().iterator().next();
  }
}
