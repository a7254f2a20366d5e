package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static storyrod.drawing.SeenSolids.box;
import static storyrod.drawing.SeenSolids.item;
import static storyrod.drawing.SeenSolids.seen;
import static storyrod.drawing.SeenSolids.total;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.threed.rotation.QuaternionRotation;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Scene.Item;
import storyrod.drawing.Seen.Region;
import storyrod.geometry.Box;
import storyrod.geometry.FlatFace;
import storyrod.geometry.Intervals;
import storyrod.geometry.Solid;

/** Hidden lines held against a buffer of depths, point by point. */
final class DepthBufferTest {
  @Test
  void cyclicOverlapComesOutRight() {
    List<Solid> bars =
        List.of(
            Solid.of(box(-100, 150, 45, 55, 45, 55)),
            Solid.of(box(45, 55, -100, 150, -5, 5)),
            Solid.of(box(-5, 5, -5, 5, -100, 150)));
    List<Seen> seen = seen(bars.toArray(Solid[]::new));
    for (Seen bar : seen) {
      double alone = total(seen(bar.item().solid()).getFirst().lines().visible());
      assertTrue(total(bar.lines().visible()) < alone - 10, "each bar is crossed by another");
      double area = bar.regions().stream().mapToDouble(Region::areaMm2).sum();
      double whole = area(seen(bar.item().solid()));
      assertTrue(area < whole - 50, "and loses some of its area");
    }
    assertAgrees(new Scene(bars.stream().map(SeenSolids::item).toList()), 200);
  }

  @Test
  void regionsCoverTheSilhouetteOnce() {
    List<Seen> seen =
        seen(Solid.of(box(0, 100, 0, 100, 0, 100)), Solid.of(box(20, 80, -60, -10, 20, 80)));
    double covered = area(seen);
    double pixels = pixels(seen);
    assertEquals(pixels, covered, pixels * 0.01);
  }

  /** Counts whole millimetres that are in any picture of a face. */
  private static double pixels(List<Seen> seen) {
    DepthBuffer buffer = new DepthBuffer(View.USUAL);
    fill(buffer, new Scene(seen.stream().map(Seen::item).toList()));
    int count = 0;
    for (int x = -600; x < 600; x++) {
      for (int y = -600; y < 600; y++) {
        count += buffer.depth(x, y) > Double.NEGATIVE_INFINITY ? 1 : 0;
      }
    }
    return count;
  }

  @Test
  void hundredsOfBoxesAgreeWithADepthBuffer() {
    assertAgrees(boxes(3, 250, 30), 10_000);
  }

  @Test
  void thousandBoxesAgreeWithADepthBuffer() {
    assertAgrees(boxes(13, 1_000, 50), 40_000);
  }

  @Test
  @Tag("slow")
  void thousandsOfBoxesAgreeWithADepthBuffer() {
    assertAgrees(boxes(17, 2_500, 50), 100_000);
  }

  private static Scene boxes(int seed, int count, int reach) {
    Random random = new Random(seed);
    List<Item> items = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      items.add(item(Solid.of(randomBox(random, reach))));
    }
    return new Scene(items);
  }

  @Test
  void turnedBoxesAgreeWithADepthBuffer() {
    Random random = new Random(5);
    List<Item> items = new ArrayList<>();
    for (int i = 0; i < 80; i++) {
      items.add(item(turned(random)));
    }
    assertAgrees(new Scene(items), 4_000);
  }

  @Test
  void boardsWithCutsAgreeWithADepthBuffer() {
    Random random = new Random(9);
    List<Item> items = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      items.add(new Item("board", cutBoard(random), spot(random)));
    }
    Scene scene = new Scene(items);
    DepthBuffer buffer = new DepthBuffer(View.USUAL);
    fill(buffer, scene);
    int compared = compare(scene, (owner, at) -> boardVerdict(buffer, owner, at));
    assertTrue(compared > 2_000, "compared only " + compared);
  }

  /** A board's own faces rise by up to 2.2 mm to the next pixel and may hide its own edges. */
  private static double boardVerdict(DepthBuffer buffer, int owner, Sample at) {
    double all = verdict(at, buffer::depth, 2.2, 6);
    double others = verdict(at, (x, y) -> buffer.depthWithout(owner, x, y), -1.5, 6);
    return all == 1 || all == others ? all : 0;
  }

  private interface Depth {
    double at(int x, int y);
  }

  private record Sample(At at, double depth) {}

  /** Compares with a buffer in which a convex solid does not hide its own edges. */
  private static void assertAgrees(Scene scene, int atLeast) {
    DepthBuffer buffer = new DepthBuffer(View.USUAL);
    fill(buffer, scene);
    int compared =
        compare(
            scene,
            (owner, at) -> verdict(at, (x, y) -> buffer.depthWithout(owner, x, y), -1.5, 1.5));
    assertTrue(compared > atLeast, "compared only " + compared);
  }

  /** 1 if all nine pixels round a sample are in front of it, -1 if none, 0 if it cannot be told. */
  private static double verdict(Sample sample, Depth depth, double low, double high) {
    int hides = 0;
    for (int i = 0; i < 9; i++) {
      int x = (int) Math.round(sample.at().x()) + i % 3 - 1;
      int y = (int) Math.round(sample.at().y()) + i / 3 - 1;
      double front = depth.at(x, y) - sample.depth();
      hides += front > high ? 1 : front < low ? -1 : 0;
    }
    return hides == 9 ? 1 : hides == -9 ? -1 : 0;
  }

  private static int compare(Scene scene, ToDoubleBiFunction<Integer, Sample> verdicts) {
    HiddenLines lines = HiddenLines.of(scene, View.USUAL);
    int compared = 0;
    for (int i = 0; i < scene.items().size(); i++) {
      for (ScreenLine edge : lines.edges(i).stream().map(Edges.Edge::line).toList()) {
        Intervals visible = lines.visibleStretches(edge);
        for (double share = 4; share < edge.length() - 4; share += 2.3) {
          double t = share / edge.length();
          Vector3D point = edge.from().lerp(edge.to(), t);
          double depth = point.dot(View.USUAL.toViewer());
          double verdict = verdicts.applyAsDouble(i, new Sample(View.USUAL.project(point), depth));
          boolean seen = visible.stretches().stream().anyMatch(s -> s.from() <= t && t <= s.to());
          if (verdict != 0) {
            assertEquals(verdict < 0, seen, "item " + i + " at " + point);
            compared++;
          }
        }
      }
    }
    return compared;
  }

  private static void fill(DepthBuffer buffer, Scene scene) {
    for (int i = 0; i < scene.items().size(); i++) {
      Vector3D offset = scene.items().get(i).offset();
      for (FlatFace face : scene.items().get(i).solid().faces()) {
        List<List<Vector3D>> rings =
            Stream.concat(Stream.of(face.outer()), face.openings().stream())
                .map(ring -> ring.stream().map(offset::add).toList())
                .toList();
        buffer.fill(i, face.normal(), rings);
      }
    }
  }

  /** On a grid of 6 mm, so that nothing seen is so narrow that it falls between pixels. */
  private static Box randomBox(Random random, int reach) {
    Vector3D at = spot(random, reach);
    int[] size = random.ints(3, 2, 15).map(i -> 6 * i).toArray();
    return box(
        at.getX(),
        at.getX() + size[0],
        at.getY(),
        at.getY() + size[1],
        at.getZ(),
        at.getZ() + size[2]);
  }

  private static Vector3D spot(Random random) {
    return spot(random, 30);
  }

  private static Vector3D spot(Random random, int reach) {
    int[] at = random.ints(3, -reach, reach).map(i -> 6 * i).toArray();
    return Vector3D.of(at[0], at[1], at[2]);
  }

  /** A box turned by any angle: what six slanted cuts leave of a large block. */
  private static Solid turned(Random random) {
    Vector3D centre = spot(random);
    QuaternionRotation rotation =
        QuaternionRotation.fromAxisAngle(spot(random).normalize(), random.nextDouble() * 3);
    Solid solid = Solid.of(box(-500, 500, -500, 500, -500, 500));
    for (Vector3D axis :
        List.of(Vector3D.Unit.PLUS_X, Vector3D.Unit.PLUS_Y, Vector3D.Unit.PLUS_Z)) {
      Vector3D normal = rotation.apply(axis);
      double half = 8 + random.nextDouble() * 40;
      solid =
          solid
              .trimmed(centre.add(normal.multiply(half)), normal)
              .trimmed(centre.add(normal.multiply(-half)), normal.negate());
    }
    return solid;
  }

  private static Solid cutBoard(Random random) {
    int a = 12 + 6 * random.nextInt(16);
    return Solid.of(box(0, 162, 0, 30, 0, 222))
        .minus(
            List.of(
                box(0, 162, 0, 12, a, a + 30),
                box(30, 72, 0, 30, 150, 192),
                box(90, 132, 0, 30, 0, 12 + 6 * random.nextInt(10))));
  }

  private static double area(List<Seen> seen) {
    return seen.stream().flatMap(s -> s.regions().stream()).mapToDouble(Region::areaMm2).sum();
  }
}
