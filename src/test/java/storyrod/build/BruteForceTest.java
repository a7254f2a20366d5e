package storyrod.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import storyrod.build.BuildPlan.Step;
import storyrod.description.Diagnostics;
import storyrod.geometry.Box;
import storyrod.geometry.Face;

/**
 * Random puzzles of a few pieces cut from a small cube, solved a second way: every order of putting
 * them in is tried, and each move is replayed cube by cube on a grid.
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
    int[] by = new int[3];
    by[way.axis().ordinal()] = way.sign();
    for (int step = 1; step <= SIDE; step++) {
      for (int[] cell : cells(owner, piece)) {
        int x = cell[0] + step * by[0];
        int y = cell[1] + step * by[1];
        int z = cell[2] + step * by[2];
        boolean isInside = Math.min(x, Math.min(y, z)) >= 0 && Math.max(x, Math.max(y, z)) < SIDE;
        if (isInside && standing.contains(owner[x][y][z])) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean isSolvable(int[][][] owner, List<Integer> standing) {
    for (int next = 0; next < PIECES; next++) {
      int piece = next;
      boolean fits =
          !standing.contains(next)
              && (standing.isEmpty()
                  || List.of(Face.values()).stream()
                      .anyMatch(way -> leaves(owner, piece, standing, way)));
      if (fits) {
        List<Integer> more = new ArrayList<>(standing);
        more.add(next);
        if (more.size() == PIECES || isSolvable(owner, more)) {
          return true;
        }
      }
    }
    return false;
  }

  private static void assertReplays(int[][][] owner, BuildPlan plan) {
    List<Integer> standing = new ArrayList<>();
    for (Step step : plan.steps()) {
      for (Operation operation : step.operations()) {
        if (operation.verb() == Verb.FIT) {
          int piece = Integer.parseInt(operation.target().substring(1));
          assertTrue(
              standing.isEmpty()
                  || leaves(owner, piece, standing, step.enters().orElseThrow().opposite()),
              () -> operation.name() + " into " + standing);
          standing.add(piece);
        }
      }
    }
    assertEquals(PIECES, standing.size());
  }

  @Test
  void planExistsExactlyWhereSomeOrderDoesAndReplaysWithoutCollision() {
    Random random = new Random(20261125);
    int solvable = 0;
    for (int i = 0; i < 150; i++) {
      int[][][] owner = puzzle(random);
      Optional<BuildPlan> plan = Planner.plan(described(owner).piece(), new Diagnostics());
      assertEquals(isSolvable(owner, List.of()), plan.isPresent(), "puzzle " + i);
      plan.ifPresent(found -> assertReplays(owner, found));
      solvable += plan.isPresent() ? 1 : 0;
    }
    assertTrue(solvable > 10 && solvable < 140, "both kinds must come up: " + solvable);
  }
}
