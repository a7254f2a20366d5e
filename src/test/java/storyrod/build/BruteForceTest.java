package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Step;
import storyrod.description.Diagnostics;
import storyrod.geometry.Box;
import storyrod.geometry.Face;

/**
 * Random puzzles of a few pieces cut from a small cube, solved a second way: every order of putting
 * them in, singly and in groups, is tried, and each move is replayed cube by cube on a grid.
 */
class BruteForceTest {
  private static final int SIDE = 3;
  private static final int PIECES = 5;

  private static int[][][] puzzle(Random random) {
    int[][][] owner = new int[SIDE][SIDE][SIDE];
    for (int i = 0; i < SIDE * SIDE * SIDE; i++) {
      owner[i / 9][i / 3 % 3][i % 3] = random.nextInt(PIECES + 1) - 1;
    }
    for (int piece = 0; piece < PIECES; piece++) {
      owner[piece / 3][piece % 3][random.nextInt(SIDE)] = piece;
    }
    return owner;
  }

  private static TestPiece described(int[][][] owner) {
    TestPiece piece = new TestPiece();
    for (int i = 0; i < PIECES; i++) {
      Box box = bounds(owner, i);
      piece.part(
          "p" + i,
          "Block " + i,
          "M" + i,
          "ash",
          box.x().from().toMm(),
          box.x().to().toMm(),
          box.y().from().toMm(),
          box.y().to().toMm(),
          box.z().from().toMm(),
          box.z().to().toMm());
      for (Box gap : gaps(owner, i, box)) {
        piece.hollow("p" + i, gap);
      }
      for (int other = 0; other < i; other++) {
        piece.fasten("screws", "p" + i, Face.TOP, "p" + other, false, "", 0);
      }
    }
    return piece;
  }

  private static Box bounds(int[][][] owner, int piece) {
    int[] from = {SIDE, SIDE, SIDE};
    int[] to = {0, 0, 0};
    for (int[] cell : cells(owner, piece)) {
      for (int axis = 0; axis < 3; axis++) {
        from[axis] = Math.min(from[axis], cell[axis]);
        to[axis] = Math.max(to[axis], cell[axis] + 1);
      }
    }
    return TestPiece.box(from[0], to[0], from[1], to[1], from[2], to[2]);
  }

  private static List<Box> gaps(int[][][] owner, int piece, Box bounds) {
    List<Box> gaps = new ArrayList<>();
    for (int i = 0; i < SIDE * SIDE * SIDE; i++) {
      int x = i / 9;
      int y = i / 3 % 3;
      int z = i % 3;
      Box cell = TestPiece.box(x, x + 1, y, y + 1, z, z + 1);
      if (owner[x][y][z] != piece && bounds.contains(cell)) {
        gaps.add(cell);
      }
    }
    return gaps;
  }

  private static List<int[]> cells(int[][][] owner, int piece) {
    List<int[]> cells = new ArrayList<>();
    for (int i = 0; i < SIDE * SIDE * SIDE; i++) {
      if (owner[i / 9][i / 3 % 3][i % 3] == piece) {
        cells.add(new int[] {i / 9, i / 3 % 3, i % 3});
      }
    }
    return cells;
  }

  /** Moves a piece out cube by cube and says whether it never meets one that stands. */
  private static boolean leaves(int[][][] owner, int piece, List<Integer> standing, Face way) {
    return leaves(owner, piece, standing, way, 0, way);
  }

  /** Moves a piece some cubes over and then out. */
  private static boolean leaves(
      int[][][] owner, int piece, List<Integer> standing, Face over, int cubes, Face out) {
    int[] by = new int[3];
    for (int step = 1; step <= cubes + SIDE; step++) {
      Face way = step <= cubes ? over : out;
      by[way.axis().ordinal()] += way.sign();
      if (isTaken(owner, piece, standing, by)) {
        return false;
      }
    }
    return true;
  }

  private static boolean isTaken(int[][][] owner, int piece, List<Integer> standing, int[] by) {
    for (int[] cell : cells(owner, piece)) {
      int x = cell[0] + by[0];
      int y = cell[1] + by[1];
      int z = cell[2] + by[2];
      boolean isInside = Math.min(x, Math.min(y, z)) >= 0 && Math.max(x, Math.max(y, z)) < SIDE;
      if (isInside && standing.contains(owner[x][y][z])) {
        return true;
      }
    }
    return false;
  }

  private static boolean leavesInTwo(int[][][] owner, int piece, List<Integer> standing) {
    return Stream.of(Face.values())
        .flatMap(over -> Stream.of(Face.values()).map(out -> new Face[] {over, out}))
        .filter(ways -> ways[0].axis() != ways[1].axis())
        .anyMatch(
            ways ->
                IntStream.rangeClosed(1, SIDE)
                    .anyMatch(k -> leaves(owner, piece, standing, ways[0], k, ways[1])));
  }

  /** Which moves are tried. */
  private enum Moves {
    SINGLE,
    IN_TWO,
    ALL
  }

  /** Whether some pieces can be parted, one from the others or group from group, down to single. */
  private static boolean isSolvable(int[][][] owner, int pieces, Moves moves) {
    if (Integer.bitCount(pieces) == 1) {
      return true;
    }
    for (int some = (pieces - 1) & pieces; some > 0; some = (some - 1) & pieces) {
      if (isParted(owner, some, pieces & ~some, moves)
          && isSolvable(owner, some, moves)
          && isSolvable(owner, pieces & ~some, moves)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isParted(int[][][] owner, int out, int rest, Moves moves) {
    boolean isOne = Integer.bitCount(out) == 1;
    return (isOne || moves == Moves.ALL)
            && List.of(Face.values()).stream()
                .anyMatch(way -> leaves(owner, list(out), list(rest), way))
        || isOne && moves != Moves.SINGLE && leavesInTwo(owner, list(out).getFirst(), list(rest));
  }

  private static List<Integer> list(int pieces) {
    return IntStream.range(0, PIECES).filter(i -> (pieces >> i & 1) == 1).boxed().toList();
  }

  private static boolean leaves(
      int[][][] owner, List<Integer> pieces, List<Integer> standing, Face way) {
    return pieces.stream().allMatch(piece -> leaves(owner, piece, standing, way));
  }

  /** Plays the plan again; what has been put together is kept as one set of pieces. */
  private static void assertReplays(int[][][] owner, BuildPlan plan) {
    Map<String, List<Integer>> built = new LinkedHashMap<>();
    for (Step step : plan.steps()) {
      for (Operation operation : step.operations()) {
        if (operation.verb() == Verb.FIT) {
          List<Integer> moving = pieces(operation);
          List<Integer> standing =
              built.computeIfAbsent(level(plan, operation.target()), level -> new ArrayList<>());
          assertTrue(
              standing.isEmpty()
                  || moving.stream().allMatch(each -> leaves(owner, each, standing, step)),
              () -> operation.name() + " into " + standing);
          standing.addAll(moving);
        }
      }
    }
    assertEquals(PIECES, built.get("").size());
  }

  /** A cube is one millimetre wide. */
  private static boolean leaves(int[][][] owner, int piece, List<Integer> standing, Step step) {
    Face last = step.enters().orElseThrow().opposite();
    return step.firstMove()
        .map(
            first ->
                leaves(
                    owner,
                    piece,
                    standing,
                    last,
                    (int) first.beside().toMm(),
                    first.enters().opposite()))
        .orElseGet(() -> leaves(owner, piece, standing, last));
  }

  private static List<Integer> pieces(Operation operation) {
    return operation.parts().stream().map(part -> Integer.parseInt(part.substring(1))).toList();
  }

  /** The least group that a unit goes into, by its name. */
  private static String level(BuildPlan plan, String unit) {
    return plan.steps().stream()
        .flatMap(step -> step.operations().stream())
        .map(Operation::target)
        .filter(group -> !group.equals(unit) && ("+" + group + "+").contains("+" + unit + "+"))
        .min(Comparator.comparingInt(String::length))
        .orElse("");
  }

  @Test
  void planExistsExactlyWhereSomeOrderDoesAndReplaysWithoutCollision() {
    Random random = new Random(20261125);
    int all = (1 << PIECES) - 1;
    int solvable = 0;
    int onlyInTwo = 0;
    int onlyInGroups = 0;
    for (int i = 0; i < 250; i++) {
      int[][][] owner = puzzle(random);
      Optional<BuildPlan> plan = Planner.plan(described(owner).piece(), new Diagnostics());
      assertEquals(isSolvable(owner, all, Moves.ALL), plan.isPresent(), "puzzle " + i);
      plan.ifPresent(found -> assertReplays(owner, found));
      solvable += plan.isPresent() ? 1 : 0;
      boolean isInTwo = isSolvable(owner, all, Moves.IN_TWO);
      onlyInTwo += isInTwo && !isSolvable(owner, all, Moves.SINGLE) ? 1 : 0;
      onlyInGroups += plan.isPresent() && !isInTwo ? 1 : 0;
    }
    assertTrue(solvable > 10 && solvable < 240, "both kinds must come up: " + solvable);
    assertTrue(onlyInTwo > 0, "some must need two moves");
    assertTrue(onlyInGroups > 0, "some must need groups");
  }
}
