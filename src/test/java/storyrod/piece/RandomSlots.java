package storyrod.piece;

import java.util.List;
import java.util.Random;
import storyrod.geometry.Face;
import storyrod.piece.RandomJoints.Maker;
import storyrod.piece.RandomJoints.Sample;

/** Makers of random joints whose end or edge lies in a slot or a step. */
final class RandomSlots {
  static final List<Maker> ALL =
      List.of(
          new Maker("dado", RandomSlots::dado),
          new Maker("dado", RandomSlots::stoppedDado),
          new Maker("groove", RandomSlots::groove),
          new Maker("rabbet", RandomSlots::rabbet),
          new Maker("sliding-lid", RandomSlots::slidingLid));

  private RandomSlots() {}

  private static Sample dado(Random random) {
    return new Sample(
        """
        parts:
          post: {stock: odd, x: 0 to 30, y: 0 to 400, z: 0 to %s, grain: y}
          rail: {stock: ply18, x: post.right + GAP to 300, y: %s, z: 0 to post.top, grain: x}
        joints:
          - dado: {end: rail.left, into: post, depth: %s}
        """
            .formatted(
                RandomJoints.mm(random, 40, 200),
                RandomJoints.between(RandomJoints.mm(random, 1, 381), 18),
                RandomJoints.mm(random, 1, 29)),
        Face.RIGHT,
        Face.BOTTOM,
        Face.TOP);
  }

  /** The groove runs right through but for its end behind the lid, 0.8 mm away. */
  private static Sample slidingLid(Random random) {
    return new Sample(
            """
            parts:
              post: {stock: ply18, x: 0 to 18, y: 0 to 400, z: 0 to 200, grain: y}
              rail: {stock: ash, x: post.right + GAP to 300, y: 0 to %s, z: %s, grain: y}
            joints:
              - sliding-lid: {end: rail.left, into: post, depth: %s, opens: front%s}
            """
                .formatted(
                    RandomJoints.mm(random, 100, 390),
                    RandomJoints.between(RandomJoints.mm(random, 1, 170), 20),
                    RandomJoints.mm(random, 2, 17),
                    random.nextBoolean() ? "" : ", thickness: " + RandomJoints.mm(random, 1, 19.9)),
            Face.RIGHT,
            Face.FRONT)
        .withPlay(0.8);
  }

  /** A stopped groove holds its panel at both ends; room lets the panel move to its bottom. */
  private static Sample groove(Random random) {
    boolean stopped = random.nextBoolean();
    double room = random.nextInt(30) / 10.0;
    Sample sample =
        new Sample(
                """
            parts:
              post: {stock: odd, x: 0 to 30, y: 0 to 200, z: 0 to 400, grain: z}
              rail: {stock: ply18, x: post.right + GAP to 300, y: %s, z: %s, grain: z}
            joints:
              - groove: {end: rail.left, into: post, depth: %s, room: %s, stopped: %s}
            """
                    .formatted(
                        RandomJoints.between(RandomJoints.mm(random, 1, 181), 18),
                        stopped ? "40 to 360" : "0 to 400",
                        RandomJoints.mm(random, 4, 29),
                        room,
                        stopped ? "yes" : "no"),
                Face.RIGHT)
            .withPlay(room);
    return stopped ? sample : sample.alsoFree(Face.BOTTOM).alsoFree(Face.TOP);
  }

  private static Sample rabbet(Random random) {
    boolean atTheBack = random.nextBoolean();
    return new Sample(
        """
        parts:
          post: {stock: odd, x: 0 to 30, y: 0 to 400, z: 0 to %s, grain: y}
          rail: {stock: ply18, x: post.right + GAP to 300, y: %s, z: 0 to post.top, grain: x}
        joints:
          - rabbet: {end: rail.left, into: post, depth: %s, glue: yes}
        """
            .formatted(
                RandomJoints.mm(random, 40, 200),
                atTheBack ? "382 to 400" : "0 to 18",
                RandomJoints.mm(random, 1, 29)),
        Face.RIGHT,
        Face.BOTTOM,
        Face.TOP,
        atTheBack ? Face.BACK : Face.FRONT);
  }

  private static Sample stoppedDado(Random random) {
    boolean below = random.nextBoolean();
    return new Sample(
        """
        parts:
          post: {stock: odd, x: 0 to 30, y: 0 to 400, z: 0 to %s, grain: y}
          rail: {stock: ply18, x: post.right + GAP to 300, y: %s, z: 0 to post.top, grain: x}
        joints:
          - dado: {end: rail.left, into: post, depth: %s, stop: %s, edge: %s}
        """
            .formatted(
                RandomJoints.mm(random, 80, 200),
                RandomJoints.between(RandomJoints.mm(random, 1, 381), 18),
                RandomJoints.mm(random, 1, 29),
                RandomJoints.mm(random, 1, 40),
                below ? "bottom" : "top"),
        Face.RIGHT,
        below ? Face.TOP : Face.BOTTOM);
  }
}
