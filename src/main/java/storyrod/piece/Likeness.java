package storyrod.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import storyrod.geometry.Face;
import storyrod.measure.Length;

/** How far two parts are from being the same to the maker, or mirror images of each other. */
public final class Likeness {
  private static final Pattern NUMBER = Pattern.compile("(?<=[ :dtc])\\d+(?![-+\\d])");

  private Likeness() {}

  /**
   * The most by which a size or a place of a cut differs, if that is no more than a limit and the
   * parts have the same cuts of the same stock; zero where they are equal.
   */
  public static Optional<Length> of(Part one, Part two, boolean mirrored, Length limit) {
    return sizesAreLike(one, two, limit) ? ofCuts(one, two, mirrored, limit) : Optional.empty();
  }

  /**
   * Whether two parts of one mark still are the same, or mirror images, with a mark on one face of
   * each. Square legs of one mark are turned by a quarter in their places: then they are not.
   */
  public static boolean areMarkedAlike(Part one, Face onOne, Part two, Face onTwo) {
    PartShape here = new PartShape(one, Optional.of(onOne));
    PartShape there = new PartShape(two, Optional.of(onTwo));
    boolean isMirrored = one.mirrored() != two.mirrored();
    return here.key().equals(isMirrored ? there.mirrorKey() : there.key());
  }

  private static boolean sizesAreLike(Part one, Part two, Length limit) {
    return one.stock().name().equals(two.stock().name())
        && one.cuts().size() == two.cuts().size()
        && isWithin(one.finishedLength(), two.finishedLength(), limit)
        && isWithin(one.finishedWidth(), two.finishedWidth(), limit);
  }

  private static boolean isWithin(Length one, Length two, Length limit) {
    return !one.minus(two).abs().isLongerThan(limit);
  }

  private static Optional<Length> ofCuts(Part one, Part two, boolean mirrored, Length limit) {
    List<List<String>> here = new PartShape(one).ways(false);
    Optional<Length> best = Optional.empty();
    for (List<String> there : new PartShape(two).ways(mirrored)) {
      Optional<Length> off = apart(here.getFirst(), there, limit);
      if (off.isPresent() && best.filter(b -> !off.get().isShorterThan(b)).isEmpty()) {
        best = off;
      }
    }
    return best;
  }

  /** The largest difference when each line is set against the nearest one that is left. */
  private static Optional<Length> apart(List<String> here, List<String> there, Length limit) {
    List<Written> left = new ArrayList<>(there.stream().map(Written::of).toList());
    Length most = Length.ZERO;
    for (String line : here) {
      Written written = Written.of(line);
      Optional<Written> nearest =
          left.stream()
              .filter(other -> other.words().equals(written.words()))
              .min((a, b) -> Long.compare(written.off(a), written.off(b)));
      if (nearest.isEmpty() || new Length(written.off(nearest.get())).isLongerThan(limit)) {
        return Optional.empty();
      }
      left.remove(nearest.get());
      most = most.max(new Length(written.off(nearest.get())));
    }
    return left.isEmpty() ? Optional.of(most) : Optional.empty();
  }

  /** A line of a shape, its numbers taken out of its words. */
  private record Written(String words, List<Long> numbers) {
    static Written of(String line) {
      List<Long> numbers =
          NUMBER.matcher(line).results().map(MatchResult::group).map(Long::valueOf).toList();
      return new Written(NUMBER.matcher(line).replaceAll("#"), numbers);
    }

    long off(Written other) {
      long most = 0;
      for (int i = 0; i < numbers.size(); i++) {
        most = Math.max(most, Math.abs(numbers.get(i) - other.numbers.get(i)));
      }
      return most;
    }
  }
}
