package storyrod.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIf;

class ParallelTest {
  private static final List<Integer> MEMBERS = IntStream.range(0, 1000).boxed().toList();

  static boolean hasTwoProcessors() {
    return Runtime.getRuntime().availableProcessors() > 1;
  }

  @Test
  void whatIsMadeStandsInTheOrderOfTheList() {
    assertEquals(
        MEMBERS.stream().map(each -> each * each).toList(),
        Parallel.map(MEMBERS, each -> each * each));
    assertEquals(List.of(), Parallel.map(List.<Integer>of(), each -> each));
  }

  @Test
  void eachMemberIsWorkedOnOnce() {
    ConcurrentLinkedQueue<Integer> done = new ConcurrentLinkedQueue<>();
    Parallel.each(MEMBERS, done::add);
    assertEquals(MEMBERS, done.stream().sorted().toList());
  }

  @Test
  void whatTheWorkThrowsIsThrown() {
    assertThrows(ArithmeticException.class, () -> Parallel.map(MEMBERS, each -> 1 / (each - 500)));
  }

  /** The first of the members waits for the last, which a stream would give to the other half. */
  @Test
  @EnabledIf("hasTwoProcessors")
  void noMemberWaitsForAnotherThatTakesLong() throws Exception {
    CountDownLatch others = new CountDownLatch(MEMBERS.size() - 1);
    List<Boolean> met;
    try (ForkJoinPool two = new ForkJoinPool(2)) {
      met = two.submit(() -> Parallel.map(MEMBERS, each -> meets(others, each))).get();
    }
    assertTrue(met.getFirst(), "members were left to the thread that was busy");
  }

  private static boolean meets(CountDownLatch others, int member) {
    if (member == 0) {
      return isOver(others);
    }
    others.countDown();
    return true;
  }

  private static boolean isOver(CountDownLatch others) {
    try {
      return others.await(30, TimeUnit.SECONDS);
    } catch (InterruptedException stop) {
      throw new IllegalStateException(stop);
    }
  }
}
