package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import storyrod.piece.Joint;
import storyrod.piece.Piece;

/** What is kept up to date while units leave is what counting anew would give. */
class RemainingTest {
  private static final int ORDERS = 20;

  private final Piece bench = SamplePieces.bench();
  private final Reach reach = new Reach(bench.parts());

  private List<Joint> joints(Unit unit, List<Unit> others) {
    return bench.joints().stream()
        .filter(
            joint ->
                others.stream()
                    .anyMatch(
                        other ->
                            unit.has(joint.first()) && other.has(joint.second())
                                || unit.has(joint.second()) && other.has(joint.first())))
        .toList();
  }

  private void check(Remaining left, List<Unit> standing) {
    for (Unit unit : standing) {
      List<Unit> others = Assembler.without(standing, unit);
      assertEquals(reach.ways(unit, others), left.ways(unit), unit.name());
      assertEquals(joints(unit, others), left.closed(unit), unit.name());
    }
  }

  @Test
  void waysAndJointsAreThoseOfWhatStillStands() {
    List<Unit> units = Levels.of(bench).get(Unit.PIECE);
    Random random = new Random(5);
    for (int i = 0; i < ORDERS; i++) {
      Remaining left = new Remaining(units, bench.joints(), reach);
      List<Unit> standing = new ArrayList<>(units);
      while (standing.size() > 1) {
        check(left, standing);
        left.remove(standing.remove(random.nextInt(standing.size())));
      }
    }
  }

  @Test
  void ofAnOrderAllWaitForTheLastThatStands() {
    List<Unit> units = Levels.of(bench).get(Unit.PIECE).subList(0, 3);
    Remaining left = new Remaining(units, bench.joints(), reach);
    List<String> order = units.stream().map(Unit::name).toList();
    left.remove(units.get(2));
    assertEquals(List.of(order.getFirst()), List.copyOf(left.waiting(order)));
  }
}
