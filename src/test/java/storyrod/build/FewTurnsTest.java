package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Step;
import storyrod.description.Diagnostics;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;

/** No order that may be has fewer turns than the one found: all of them are tried. */
class FewTurnsTest {
  private static final List<Optional<Face>> WAYS =
      List.of(
          Optional.empty(),
          Optional.of(Face.BOTTOM),
          Optional.of(Face.BACK),
          Optional.of(Face.FRONT));

  private static <T> void orders(List<T> left, List<T> done, Predicate<List<T>> visit) {
    if (left.isEmpty()) {
      visit.test(done);
    }
    for (T next : left) {
      List<T> more = Stream.concat(done.stream(), Stream.of(next)).toList();
      orders(left.stream().filter(each -> each != next).toList(), more, visit);
    }
  }

  @Test
  void noOrderOfRandomStepsHasFewerTurns() {
    Random random = new Random(20261126);
    int fewer = 0;
    for (int round = 0; round < 300; round++) {
      int count = 2 + random.nextInt(5);
      List<Optional<Face>> lies =
          Stream.generate(() -> WAYS.get(random.nextInt(WAYS.size()))).limit(count).toList();
      List<BitSet> before =
          IntStream.range(0, count).mapToObj(step -> someBelow(step, random)).toList();
      List<Integer> found = new FewTurns(lies, before).order();
      assertTrue(isAllowed(found, before), found::toString);
      int least = leastTurns(lies, before);
      assertEquals(least, FewTurns.turns(found.stream().map(lies::get).toList()), lies::toString);
      fewer += least < FewTurns.turns(lies) ? 1 : 0;
    }
    assertTrue(fewer > 50, "orders have to be worth changing: " + fewer);
  }

  private static BitSet someBelow(int step, Random random) {
    BitSet some = new BitSet();
    IntStream.range(0, step).filter(i -> random.nextInt(4) == 0).forEach(some::set);
    return some;
  }

  private static boolean isAllowed(List<Integer> order, List<BitSet> before) {
    return order.stream()
        .allMatch(
            step ->
                before.get(step).stream().allMatch(i -> order.indexOf(i) < order.indexOf(step)));
  }

  private static int leastTurns(List<Optional<Face>> lies, List<BitSet> before) {
    int[] least = {Integer.MAX_VALUE};
    orders(
        IntStream.range(0, lies.size()).boxed().toList(),
        List.of(),
        order -> {
          if (isAllowed(order, before)) {
            int turns = FewTurns.turns(order.stream().map(lies::get).toList());
            least[0] = Math.min(least[0], turns);
          }
          return true;
        });
    return least[0];
  }

  private static final List<Face> SIDES =
      List.of(Face.FRONT, Face.BACK, Face.BOTTOM, Face.TOP, Face.RIGHT);

  /** A core with blocks screwed to its sides, some of them one on the other. */
  private record Cluster(TestPiece piece, Map<String, Box> boxes, Map<String, String> on) {
    static Cluster random(Random random) {
      Cluster cluster = new Cluster(new TestPiece(), new LinkedHashMap<>(), new LinkedHashMap<>());
      cluster.add("core", TestPiece.box(0, 900, 0, 900, 0, 900));
      cluster.add("wing", TestPiece.box(-300, 0, 0, 900, 0, 900));
      cluster.screw("wing", Face.RIGHT, "core");
      for (int i = 0; i < 5; i++) {
        cluster.stick("block" + i, random);
      }
      return cluster;
    }

    private void add(String name, Box box) {
      boxes.put(name, box);
      double[] mm =
          Stream.of(Axis.values())
              .flatMap(axis -> Stream.of(box.on(axis).from(), box.on(axis).to()))
              .mapToDouble(each -> each.toMm())
              .toArray();
      piece.part(name, name, "M" + boxes.size(), "ash", mm);
    }

    private void screw(String name, Face face, String to) {
      piece.fasten("screws", name, face, to, false, "", 0);
      on.put(name, to);
    }

    private void stick(String name, Random random) {
      List<String> there = boxes.keySet().stream().filter(each -> !each.equals("wing")).toList();
      String to = there.get(random.nextInt(there.size()));
      Face side = SIDES.get(random.nextInt(SIDES.size()));
      Box base = boxes.get(to);
      Box box = base;
      for (Axis axis : Axis.values()) {
        double from = base.on(axis).from().toMm() + 10 * (1 + random.nextInt(20));
        double end = side.sign() > 0 ? base.at(side).toMm() : base.at(side).toMm() - 100;
        double at = axis == side.axis() ? end : from;
        box = box.with(axis, TestPiece.box(at, at + 100, 0, 1, 0, 1).x());
      }
      Box placed = box;
      if (boxes.values().stream().noneMatch(placed::overlaps)) {
        add(name, placed);
        screw(name, side.opposite(), to);
      }
    }

    boolean isAllowed(List<String> order, Map<String, Face> enters) {
      return IntStream.range(1, order.size())
          .allMatch(
              i ->
                  (!on.containsKey(order.get(i))
                          || order.subList(0, i).contains(on.get(order.get(i))))
                      && order.subList(0, i).stream()
                          .noneMatch(other -> isInWay(order.get(i), other, enters)));
    }

    private boolean isInWay(String moving, String other, Map<String, Face> enters) {
      Face out = enters.get(moving).opposite();
      Box path = boxes.get(moving).extended(out, TestPiece.box(0, 5000, 0, 1, 0, 1).x().length());
      return path.overlaps(boxes.get(other));
    }
  }

  private static Optional<Face> lies(Face enters) {
    return switch (enters) {
      case TOP, BACK -> Optional.of(Face.BACK);
      case FRONT -> Optional.of(Face.FRONT);
      case BOTTOM -> Optional.of(Face.BOTTOM);
      case LEFT, RIGHT -> Optional.empty();
    };
  }

  private static int turns(List<String> order, Map<String, Face> enters, int begun) {
    return FewTurns.turns(
        order.subList(begun, order.size()).stream().map(each -> lies(enters.get(each))).toList());
  }

  @Test
  void noOrderOfASmallPieceHasFewerTurns() {
    Random random = new Random(20261127);
    int turned = 0;
    for (int round = 0; round < 60; round++) {
      Cluster cluster = Cluster.random(random);
      List<Step> steps =
          Planner.plan(cluster.piece().piece(), new Diagnostics()).orElseThrow().steps().stream()
              .filter(step -> step.verb() == Verb.FIT)
              .toList();
      Map<String, Face> enters = new LinkedHashMap<>();
      List<String> order = new ArrayList<>();
      for (Step step : steps) {
        step.newParts().forEach(part -> enters.put(part, step.enters(List.of(part)).orElseThrow()));
        order.addAll(step.newParts());
      }
      int begun = steps.getFirst().newParts().size();
      int found = turns(order, enters, begun);
      int[] least = {found};
      orders(
          order.subList(begun, order.size()),
          order.subList(0, begun),
          other -> {
            if (cluster.isAllowed(other, enters)) {
              least[0] = Math.min(least[0], turns(other, enters, begun));
            }
            return true;
          });
      assertEquals(least[0], found, () -> order + " " + enters);
      turned += found > 2 ? 1 : 0;
    }
    assertTrue(turned > 10, "some must need several turns: " + turned);
  }
}
