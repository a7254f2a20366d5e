package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.jgrapht.GraphPath;
import org.jgrapht.alg.shortestpath.AllDirectedPaths;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;
import org.junit.jupiter.api.Test;
import storyrod.build.Network.Lag;

/**
 * The critical path method, held to a textbook, to all paths of a graph and to what it promises.
 */
class NetworkTest {
  private static final int WORKS = 8;

  private static Work work(int minutes, int wait) {
    return new Work(minutes, wait, false, 0);
  }

  private static List<Times> roundTheClock(List<Work> works, List<Lag> lags) {
    return new Network(WorkDay.ROUND_THE_CLOCK, works, lags).times();
  }

  /**
   * The building of a plant by the Reliable Construction Company, in weeks, from the chapter on
   * project management with PERT and CPM in Hillier and Lieberman, Introduction to Operations
   * Research (from memory): 44 weeks, and the critical path A, B, C, E, F, J, L, N.
   */
  @Test
  void textbookExampleComesOut() {
    int[] weeks = {2, 4, 10, 6, 4, 5, 7, 9, 7, 8, 4, 5, 2, 6};
    String[] needs = {"", "A", "B", "C", "C", "E", "D", "EG", "C", "FI", "J", "J", "H", "KL"};
    int[] earliest = {0, 2, 6, 16, 16, 20, 22, 29, 16, 25, 33, 33, 38, 38};
    int[] latest = {0, 2, 6, 20, 16, 20, 26, 33, 18, 25, 34, 33, 42, 38};
    List<Lag> lags = new ArrayList<>();
    for (int i = 0; i < needs.length; i++) {
      for (char each : needs[i].toCharArray()) {
        lags.add(new Lag(each - 'A', i, 0));
      }
    }
    List<Times> times =
        roundTheClock(IntStream.of(weeks).mapToObj(each -> work(each, 0)).toList(), lags);
    StringBuilder critical = new StringBuilder();
    for (int i = 0; i < weeks.length; i++) {
      Times each = times.get(i);
      assertEquals(earliest[i], each.earliestStart());
      assertEquals(latest[i], each.latestStart());
      assertEquals(earliest[i] + weeks[i], each.earliestFinish());
      assertEquals(latest[i] + weeks[i], each.latestFinish());
      assertEquals(latest[i] - earliest[i], each.floatMinutes());
      critical.append(each.critical() ? (char) ('A' + i) : ' ');
    }
    assertEquals("ABCEFJLN", critical.toString().replace(" ", ""));
    assertEquals(44, times.stream().mapToInt(Times::earliestFinish).max().orElseThrow());
  }

  private static List<Work> works(Random random) {
    return IntStream.range(0, WORKS)
        .mapToObj(
            i ->
                new Work(
                    1 + random.nextInt(200),
                    random.nextInt(3) == 0 ? random.nextInt(900) : 0,
                    random.nextBoolean(),
                    0))
        .toList();
  }

  private static List<Lag> lags(List<Work> works, Random random) {
    List<Lag> lags = new ArrayList<>();
    for (int i = 0; i < works.size(); i++) {
      for (int j = i + 1; j < works.size(); j++) {
        if (random.nextInt(3) == 0) {
          lags.add(new Lag(i, j, random.nextInt(4) == 0 ? 0 : works.get(i).waitMinutes()));
        }
      }
    }
    return lags;
  }

  /** Lengths of all paths: an edge weighs what passes from the start of one to that of the next. */
  private static double longest(List<Work> works, List<Lag> lags, int from, int to) {
    SimpleDirectedWeightedGraph<Integer, DefaultWeightedEdge> graph =
        new SimpleDirectedWeightedGraph<>(DefaultWeightedEdge.class);
    int start = -1;
    int end = works.size();
    IntStream.rangeClosed(start, end).forEach(graph::addVertex);
    for (int i = 0; i < works.size(); i++) {
      int all = works.get(i).minutes() + works.get(i).waitMinutes();
      graph.setEdgeWeight(graph.addEdge(start, i), 0);
      graph.setEdgeWeight(graph.addEdge(i, end), all);
    }
    lags.forEach(
        lag ->
            graph.setEdgeWeight(
                graph.addEdge(lag.before(), lag.after()),
                works.get(lag.before()).minutes() + lag.minutes()));
    return new AllDirectedPaths<>(graph)
        .getAllPaths(from, to, true, null).stream()
            .mapToDouble(GraphPath::getWeight)
            .max()
            .orElseThrow();
  }

  @Test
  void timesAreTheLongestOfAllPaths() {
    Random random = new Random(20261128);
    int loose = 0;
    for (int round = 0; round < 150; round++) {
      List<Work> works = works(random);
      List<Lag> lags = lags(works, random);
      double end = longest(works, lags, -1, WORKS);
      List<Times> times = roundTheClock(works, lags);
      for (int i = 0; i < WORKS; i++) {
        double before = longest(works, lags, -1, i);
        double after = longest(works, lags, i, WORKS);
        assertEquals(before, times.get(i).earliestStart());
        assertEquals(end - after, times.get(i).latestStart());
        assertEquals(end - before - after, times.get(i).floatMinutes());
        assertEquals(times.get(i).floatMinutes() == 0, times.get(i).critical());
        loose += times.get(i).floatMinutes() > 0 ? 1 : 0;
      }
    }
    assertTrue(loose > 300 && loose < 1000, "both kinds must come up: " + loose);
  }

  private static int end(WorkDay day, List<Work> works, List<Lag> lags) {
    List<Times> times = new Network(day, works, lags).times();
    return IntStream.range(0, works.size())
        .map(i -> times.get(i).earliestFinish() + works.get(i).waitMinutes())
        .max()
        .orElseThrow();
  }

  /** The end where one work is held up until a time, by a first one that only waits. */
  private static int endIfHeld(WorkDay day, List<Work> works, List<Lag> lags, int held, int to) {
    List<Work> all = new ArrayList<>(List.of(work(0, 0)));
    all.addAll(works);
    List<Lag> later = new ArrayList<>(List.of(new Lag(0, held + 1, to)));
    lags.forEach(lag -> later.add(new Lag(lag.before() + 1, lag.after() + 1, lag.minutes())));
    return end(day, all, later);
  }

  @Test
  void latestStartIsTheLastThatKeepsTheEndAlsoWhereNightsHoldNoWork() {
    Random random = new Random(20261129);
    for (int round = 0; round < 400; round++) {
      WorkDay day = WorkDay.ofHours(1 + random.nextInt(24));
      List<Work> works = works(random);
      List<Lag> lags = lags(works, random);
      int end = end(day, works, lags);
      List<Times> times = new Network(day, works, lags).times();
      for (int i = 0; i < WORKS; i++) {
        int latest = times.get(i).latestStart();
        assertTrue(latest >= times.get(i).earliestStart());
        assertEquals(end, endIfHeld(day, works, lags, i, latest));
        assertTrue(end < endIfHeld(day, works, lags, i, latest + 1));
      }
      assertTrue(times.stream().anyMatch(Times::critical));
    }
  }

  @Test
  void whatDriesOvernightCostsNoWork() {
    WorkDay day = WorkDay.ofHours(8);
    List<Work> works = List.of(work(470, 900), work(60, 0));
    List<Times> times = new Network(day, works, List.of(new Lag(0, 1, 900))).times();
    assertEquals(24 * 60, times.get(1).earliestStart());
    assertEquals(25 * 60, times.get(1).earliestFinish());
  }

  @Test
  void glueIsNotLeftOpenOvernight() {
    WorkDay day = WorkDay.ofHours(8);
    Work before = work(470, 0);
    Work gluing = new Work(30, 60, true, 2);
    List<Lag> lags = List.of(new Lag(0, 1, 0));
    List<Times> times = new Network(day, List.of(before, gluing), lags).times();
    assertEquals(24 * 60, times.get(1).earliestStart());
    assertEquals(10, times.get(0).floatMinutes());
    List<Times> split = new Network(day, List.of(before, work(30, 60)), lags).times();
    assertEquals(470, split.get(1).earliestStart());
    assertEquals(24 * 60 + 20, split.get(1).earliestFinish());
  }
}
