package storyrod.piece;

import java.util.List;
import java.util.Random;
import storyrod.geometry.Face;
import storyrod.piece.RandomJoints.Maker;
import storyrod.piece.RandomJoints.Sample;

/** Makers of random joints held by something that lies in both parts. */
final class RandomInserts {
  static final List<Maker> ALL =
      List.of(
          new Maker("biscuits", RandomInserts::biscuits),
          new Maker("dowels", RandomInserts::dowels),
          new Maker("loose-tenon", RandomInserts::looseTenon));

  /** A rail whose end meets a post of some width; a peg lies in the first of a row of places. */
  private static final String FRAME =
      """
        insert: {kind: %s}
      parts:
        post: {stock: odd, x: 0 to %s, y: 0 to 30, z: 0 to 400, grain: z}
        rail: {stock: ash, x: post.right + GAP to 300, y: 5 to 25, z: 100 to 300, grain: x}
        peg: {stock: strip, x: %s, y: 14 to 16, z: 100 + 100 / COUNT - 0.8 to 100 + 100 / COUNT + 0.8, grain: x}
      joints:
        - %s: {end: rail.left, into: post, %s, count: COUNT, glue: yes}
      """;

  private RandomInserts() {}

  /** The slot is as long as the disc leaves it, so that the rail can be shifted along it. */
  private static Sample biscuits(Random random) {
    String thick = RandomJoints.mm(random, 3, 8);
    return sample(
            1 + random.nextInt(2),
            FRAME.formatted(
                "biscuit, length: 40, width: 12, thickness: %s, slot-depth: LONG".formatted(thick),
                "18",
                "post.right - LONG + 1 to post.right + LONG - 1",
                "biscuits",
                "biscuit: insert"))
        .alsoFree(Face.BOTTOM)
        .alsoFree(Face.TOP)
        .withPlay(3)
        .withLength(RandomJoints.mm(random, 5, 17.9), 18);
  }

  private static Sample dowels(Random random) {
    return shared(
        random,
        "dowels",
        "dowel",
        "dowel, length: 60, diameter: " + RandomJoints.mm(random, 4, 12));
  }

  private static Sample looseTenon(Random random) {
    return shared(
        random,
        "loose-tenon",
        "tenon",
        "loose-tenon, length: 60, width: %s, thickness: %s"
            .formatted(RandomJoints.mm(random, 10, 14), RandomJoints.mm(random, 4, 8)));
  }

  /** An insert of 60 mm of which {@code LONG} lies in a post of 50 mm; each hole has its room. */
  private static Sample shared(Random random, String kind, String key, String insert) {
    double room = 0.1 + random.nextInt(30) / 10.0;
    return sample(
            1 + random.nextInt(4),
            FRAME.formatted(
                insert,
                "50",
                "post.right - LONG to post.right + 60 - LONG",
                kind,
                "%s: insert, depth-into: LONG, room: %.1f".formatted(key, room)))
        .withPlay(6.2)
        .withLength(RandomJoints.mm(random, 2, 46.8), 50 - room);
  }

  private static Sample sample(int count, String body) {
    return new Sample(body.replace("COUNT", String.valueOf(count)), Face.RIGHT);
  }
}
