package storyrod.geometry;

import java.util.ArrayList;
import java.util.List;

/** Stretches of a line in ascending order that neither overlap nor touch. Immutable. */
public record Intervals(List<Stretch> stretches) {
  public static final Intervals NONE = new Intervals(List.of());

  public Intervals {
    stretches = List.copyOf(stretches);
  }

  /** From one parameter up to another. */
  public record Stretch(double from, double to) {
    public double length() {
      return to - from;
    }

    public double middle() {
      return (from + to) / 2;
    }
  }

  public static Intervals of(double from, double to) {
    return to > from ? new Intervals(List.of(new Stretch(from, to))) : NONE;
  }

  /**
   * The union of stretches in any order.
   *
   * @param gap stretches no further apart than this are joined
   */
  public static Intervals union(List<Stretch> parts, double gap) {
    if (parts.size() < 2) {
      return parts.isEmpty() ? NONE : new Intervals(parts);
    }
    List<Stretch> sorted = new ArrayList<>(parts);
    sorted.sort(java.util.Comparator.comparingDouble(Stretch::from));
    List<Stretch> joined = new ArrayList<>();
    for (Stretch next : sorted) {
      if (!joined.isEmpty() && next.from() <= joined.getLast().to() + gap) {
        Stretch last = joined.removeLast();
        joined.add(new Stretch(last.from(), Math.max(last.to(), next.to())));
      } else {
        joined.add(next);
      }
    }
    return new Intervals(joined);
  }

  public boolean isEmpty() {
    return stretches.isEmpty();
  }

  /** What lies in both. */
  public Intervals and(Intervals other) {
    if (isEmpty() || other.isEmpty()) {
      return NONE;
    }
    List<Stretch> shared = new ArrayList<>();
    for (Stretch mine : stretches) {
      for (Stretch theirs : other.stretches) {
        double from = Math.max(mine.from(), theirs.from());
        double to = Math.min(mine.to(), theirs.to());
        if (to > from) {
          shared.add(new Stretch(from, to));
        }
      }
    }
    return new Intervals(shared);
  }

  /** What is left of these without the others. */
  public Intervals minus(Intervals others) {
    if (isEmpty() || others.isEmpty()) {
      return this;
    }
    List<Stretch> left = new ArrayList<>();
    for (Stretch mine : stretches) {
      double from = mine.from();
      for (Stretch gone : others.stretches) {
        if (gone.from() > from && gone.from() < mine.to()) {
          left.add(new Stretch(from, gone.from()));
        }
        from = gone.from() < mine.to() ? Math.max(from, gone.to()) : from;
      }
      if (mine.to() > from) {
        left.add(new Stretch(from, mine.to()));
      }
    }
    return new Intervals(left);
  }

  /** The same without stretches shorter than a length. */
  public Intervals longerThan(double length) {
    for (Stretch each : stretches) {
      if (each.length() <= length) {
        return new Intervals(stretches.stream().filter(kept -> kept.length() > length).toList());
      }
    }
    return this;
  }

  /** How long they are together. */
  public double total() {
    return stretches.stream().mapToDouble(Stretch::length).sum();
  }
}
