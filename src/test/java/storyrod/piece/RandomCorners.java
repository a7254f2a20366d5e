package storyrod.piece;

import java.util.List;
import java.util.Random;
import storyrod.geometry.Face;
import storyrod.piece.RandomJoints.Maker;
import storyrod.piece.RandomJoints.Sample;

/** Makers of random joints whose fingers, tails or tenons enter the other part. */
final class RandomCorners {
  static final List<Maker> ALL =
      List.of(
          new Maker("box-joint", RandomCorners::boxJoint),
          new Maker("dovetail", RandomCorners::dovetail),
          new Maker("tenon", RandomCorners::tenon),
          new Maker("tenon", RandomCorners::haunched),
          new Maker("tenon", RandomCorners::haunchedInAGroove),
          new Maker("tongue", RandomCorners::tongue));

  private RandomCorners() {}

  private static Sample boxJoint(Random random) {
    boolean atTheBack = random.nextBoolean();
    return new Sample(
        """
        parts:
          post: {stock: ply18, x: 0 to 18, y: 0 to 400, z: 0 to %s, grain: y}
          rail: {stock: ash, x: post.right + GAP to 300, y: %s, z: 0 to post.top, grain: x}
        joints:
          - box-joint: {end: rail.left, into: post, %s, starts: %s, glue: yes}
        """
            .formatted(
                RandomJoints.mm(random, 60, 150),
                atTheBack ? "380 to 400" : "0 to 20",
                random.nextBoolean()
                    ? "finger: " + RandomJoints.mm(random, 5, 29)
                    : "fingers: " + (3 + random.nextInt(12)),
                random.nextBoolean() ? "end" : "into"),
        Face.RIGHT,
        atTheBack ? Face.BACK : Face.FRONT);
  }

  private static Sample dovetail(Random random) {
    boolean lapped = random.nextBoolean();
    return new Sample(
        """
        parts:
          post: {stock: odd, x: 0 to 30, y: 0 to 400, z: 0 to 150, grain: y}
          rail: {stock: ash, x: post.right + GAP to 300, y: 380 to 400, z: %s to %s, grain: x}
        joints:
          - dovetail: {end: rail.left, into: post, tails: %d, slope: %s, pin: %s, half-pin: %s%s}
        """
            .formatted(
                RandomJoints.mm(random, 0, 20),
                RandomJoints.mm(random, 110, 150),
                1 + random.nextInt(3),
                RandomJoints.mm(random, 5, 9),
                RandomJoints.mm(random, 2, 12),
                RandomJoints.mm(random, 2, 12),
                lapped ? ", lap: " + RandomJoints.mm(random, 3, 20) : ""),
        Face.BACK);
  }

  private static Sample tenon(Random random) {
    boolean through = random.nextBoolean();
    return new Sample(
        """
        parts:
          post: {stock: odd, x: 0 to 50, y: 0 to 30, z: 0 to 400, grain: z}
          rail: {stock: ash, x: post.right + GAP to 300, y: 5 to 25, z: 200 to %s, grain: x}
        joints:
          - tenon: {end: rail.left, into: post, %s, thickness: %s, shoulder: %s, glue: yes}
        """
            .formatted(
                RandomJoints.mm(random, 230, 390),
                through ? "through: yes" : "depth: " + RandomJoints.mm(random, 1, 48.4),
                RandomJoints.mm(random, 1, 20),
                RandomJoints.mm(random, 0, 14)),
        Face.RIGHT);
  }

  /** A haunch of {@code LONG} at the end of the post, or some way from it. */
  private static Sample haunched(Random random) {
    boolean top = random.nextBoolean();
    String depth = RandomJoints.mm(random, 10, 48.4);
    return new Sample(
            """
            parts:
              post: {stock: odd, x: 0 to 50, y: 0 to 30, z: 0 to 400, grain: z}
              rail: {stock: ash, x: post.right + GAP to 300, y: 5 to 25, z: %s, grain: x}
            joints:
              - tenon: {end: rail.left, into: post, depth: %s, thickness: %s, shoulder: %s, haunch: %s, haunch-depth: LONG%s}
            """
                .formatted(
                    top ? "330 to 400 - " + random.nextInt(12) : random.nextInt(12) + " to 60",
                    depth,
                    RandomJoints.mm(random, 1, 20),
                    RandomJoints.mm(random, 0, 14),
                    top ? "top" : "bottom",
                    random.nextBoolean()
                        ? ", haunch-width: " + RandomJoints.mm(random, 1, 30)
                        : ""),
            Face.RIGHT)
        .withLength(RandomJoints.mm(random, 1, 9.9), Double.parseDouble(depth));
  }

  /** A panel lies in the same groove, less deep than the haunch or deeper. */
  private static Sample haunchedInAGroove(Random random) {
    String depth = RandomJoints.mm(random, 16, 48.4);
    return new Sample(
            """
            parts:
              post: {stock: odd, x: 0 to 50, y: 0 to 30, z: 0 to 400, grain: z}
              rail: {stock: ash, x: post.right + GAP to 300, y: 5 to 25, z: 330 to 400, grain: x}
              panel: {stock: ply6, x: post.right to 300, y: 12 to 18, z: 100 to 330, grain: z}
            joints:
              - groove: {end: panel.left, into: post, depth: %s}
              - tenon: {end: rail.left, into: post, depth: %s, thickness: 6, haunch: top, haunch-depth: LONG}
            """
                .formatted(RandomJoints.mm(random, 4, 15), depth),
            Face.RIGHT)
        .withLength(RandomJoints.mm(random, 1, 15.9), Double.parseDouble(depth));
  }

  private static Sample tongue(Random random) {
    return new Sample(
        """
        parts:
          post: {stock: odd, x: 0 to 60, y: 0 to 30, z: 0 to 400, grain: z}
          rail: {stock: ash, x: post.right + GAP to 300, y: 5 to 25, z: 100 to 200, grain: x}
        joints:
          - tongue: {end: rail.left, into: post, depth: %s, thickness: %s, glue: yes}
        """
            .formatted(RandomJoints.mm(random, 1, 59), RandomJoints.mm(random, 1, 20)),
        Face.RIGHT,
        Face.BOTTOM,
        Face.TOP);
  }
}
