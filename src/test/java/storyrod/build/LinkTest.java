package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.jgrapht.alg.cycle.CycleDetector;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleDirectedGraph;
import org.jgrapht.traverse.TopologicalOrderIterator;
import org.junit.jupiter.api.Test;

/** Precedence by itself, held to a search through all circles and to a general graph library. */
class LinkTest {
  private static final int TASKS = 7;

  private static List<Link> random(Random random) {
    List<Link> links = new ArrayList<>();
    int count = random.nextInt(2 * TASKS);
    for (int i = 0; i < count; i++) {
      int earlier = random.nextInt(TASKS);
      int later = random.nextInt(TASKS);
      if (earlier != later) {
        links.add(new Link(earlier, later, "rule-" + i));
      }
    }
    return links;
  }

  /** The length of the shortest circle through a task, by walking every way that there is. */
  private static int shortest(List<Link> links, List<Integer> way) {
    int best = Integer.MAX_VALUE;
    for (Link link : links) {
      if (link.earlier() == way.getLast()) {
        if (link.later() == way.getFirst()) {
          best = Math.min(best, way.size());
        } else if (!way.contains(link.later())) {
          List<Integer> longer = new ArrayList<>(way);
          longer.add(link.later());
          best = Math.min(best, shortest(links, longer));
        }
      }
    }
    return best;
  }

  private static int shortest(List<Link> links) {
    int best = Integer.MAX_VALUE;
    for (int task = 0; task < TASKS; task++) {
      best = Math.min(best, shortest(links, List.of(task)));
    }
    return best == Integer.MAX_VALUE ? 0 : best;
  }

  private static void assertClosed(List<Link> circle, List<Link> links) {
    for (int i = 0; i < circle.size(); i++) {
      assertTrue(links.contains(circle.get(i)));
      assertEquals(circle.get(i).later(), circle.get((i + 1) % circle.size()).earlier());
    }
  }

  @Test
  void circleIsAsShortAsTheShortestOfAllCircles() {
    Random random = new Random(20261126);
    int found = 0;
    for (int i = 0; i < 2000; i++) {
      List<Link> links = random(random);
      List<Link> circle = Link.shortestCircle(links);
      assertEquals(shortest(links), circle.size(), links::toString);
      assertClosed(circle, links);
      found += circle.isEmpty() ? 0 : 1;
    }
    assertTrue(found > 200 && found < 1800, "both kinds must come up: " + found);
  }

  private static Task task(int index) {
    Operation operation =
        new Operation(Verb.SIZE, "part-" + index, List.of(), List.of(), List.of(), List.of(), 0, 0);
    return new Task(
        index, operation, StageKey.SIZING, TASKS - index, "batch " + index % 3, Optional.empty());
  }

  private static SimpleDirectedGraph<Integer, DefaultEdge> graph(List<Link> links) {
    SimpleDirectedGraph<Integer, DefaultEdge> graph = new SimpleDirectedGraph<>(DefaultEdge.class);
    for (int task = 0; task < TASKS; task++) {
      graph.addVertex(task);
    }
    links.forEach(link -> graph.addEdge(link.earlier(), link.later()));
    return graph;
  }

  /** The scheduler lists all tasks exactly where the library finds a topological order too. */
  @Test
  void schedulerAgreesWithAGraphLibrary() {
    Random random = new Random(20261127);
    for (int i = 0; i < 2000; i++) {
      List<Link> links = random(random);
      Scheduler scheduler =
          new Scheduler(
              java.util.stream.IntStream.range(0, TASKS).mapToObj(LinkTest::task).toList());
      links.forEach(scheduler::put);
      List<Integer> order =
          scheduler.batches().stream().flatMap(List::stream).map(Task::index).toList();
      boolean isCircular = new CycleDetector<>(graph(links)).detectCycles();
      assertEquals(isCircular, order.size() < TASKS, links::toString);
      if (!isCircular) {
        assertEquals(
            order.stream().sorted().toList(), topological(links).stream().sorted().toList());
        assertTrue(links.stream().allMatch(link -> isKept(link, order)), links::toString);
        assertTrue(links.stream().allMatch(link -> isKept(link, topological(links))));
      }
    }
  }

  private static List<Integer> topological(List<Link> links) {
    List<Integer> order = new ArrayList<>();
    new TopologicalOrderIterator<>(graph(links)).forEachRemaining(order::add);
    return order;
  }

  private static boolean isKept(Link link, List<Integer> order) {
    return order.indexOf(link.earlier()) < order.indexOf(link.later());
  }
}
