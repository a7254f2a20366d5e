package storyrod.build;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * One step before another, by their numbers. A step that has to come before another because it
 * comes before a third in between is not told of twice.
 *
 * @param dry whether what the first leaves to dry must have waited; the maker's own order asks for
 *     the work alone
 */
public record Precedence(int before, int after, boolean dry) {
  /** What the links between tasks ask of the steps that do them. */
  static List<Precedence> between(List<List<Task>> batches, List<Link> links) {
    int[] step = new int[batches.stream().mapToInt(List::size).sum()];
    for (int i = 0; i < batches.size(); i++) {
      for (Task task : batches.get(i)) {
        step[task.index()] = i;
      }
    }
    Direct direct = new Direct(batches.size());
    for (Link link : links) {
      if (step[link.earlier()] < step[link.later()]) {
        direct.put(step[link.earlier()], step[link.later()], !link.cause().equals(Link.OWN));
      }
    }
    return direct.list();
  }

  /** Sorts out what follows from the rest; places count from 0. */
  private static final class Direct {
    private final List<BitSet> all = new ArrayList<>();
    private final List<BitSet> dry = new ArrayList<>();

    /** What is done, and what is dry too, when each step starts. */
    private final List<BitSet> done = new ArrayList<>();

    private final List<BitSet> dried = new ArrayList<>();

    Direct(int size) {
      for (int i = 0; i < size; i++) {
        all.add(new BitSet());
        dry.add(new BitSet());
      }
    }

    void put(int before, int after, boolean isDry) {
      all.get(after).set(before);
      dry.get(after).set(before, isDry || dry.get(after).get(before));
    }

    List<Precedence> list() {
      List<Precedence> list = new ArrayList<>();
      for (int after = 0; after < all.size(); after++) {
        done.add(new BitSet());
        dried.add(new BitSet());
        list.addAll(into(after).reversed());
      }
      return list;
    }

    private List<Precedence> into(int after) {
      List<Precedence> latestFirst = new ArrayList<>();
      for (int i = all.get(after).length() - 1; i >= 0; i--) {
        boolean isDry = dry.get(after).get(i);
        if (all.get(after).get(i) && !(isDry ? dried : done).get(after).get(i)) {
          latestFirst.add(new Precedence(i + 1, after + 1, isDry));
          done.get(after).or(done.get(i));
          done.get(after).set(i);
          dried.get(after).or(dried.get(i));
          dried.get(after).set(i, isDry || dried.get(after).get(i));
        }
      }
      return latestFirst;
    }
  }
}
