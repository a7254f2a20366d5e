package storyrod.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;

/**
 * Work on the members of a list, side by side. Each thread takes the next member that none has
 * begun; a parallel stream gives each thread a stretch of the list beforehand, and where the
 * members of one stretch take most of the time the other threads wait for it.
 */
public final class Parallel {
  private Parallel() {}

  /**
   * What some work makes of each member, in the order of the list.
   *
   * @throws RuntimeException what the work throws; members behind may then have been worked on too
   */
  public static <T, R> List<R> map(List<T> members, Function<? super T, R> work) {
    List<R> made = new ArrayList<>(Collections.nCopies(members.size(), null));
    share(members.size(), i -> made.set(i, work.apply(members.get(i))));
    return List.copyOf(made);
  }

  /**
   * Does some work with each member.
   *
   * @throws RuntimeException what the work throws; members behind may then have been worked on too
   */
  public static <T> void each(List<T> members, Consumer<? super T> work) {
    share(members.size(), i -> work.accept(members.get(i)));
  }

  private static void share(int count, IntConsumer work) {
    AtomicInteger next = new AtomicInteger();
    IntStream.range(0, Math.min(count, Runtime.getRuntime().availableProcessors()))
        .parallel()
        .forEach(
            thread -> {
              for (int i = next.getAndIncrement(); i < count; i = next.getAndIncrement()) {
                work.accept(i);
              }
            });
  }
}
