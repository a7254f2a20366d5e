package storyrod.piece;

import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import storyrod.geometry.Face;
import storyrod.piece.RandomJoints.Maker;
import storyrod.piece.RandomJoints.Sample;

/** Makers of random joints that are set flat and driven together, or only glued. */
final class RandomDriven {
  static final List<Maker> ALL =
      List.of(
          new Maker("butt", RandomDriven::butt),
          new Maker("brads", RandomDriven::brads),
          new Maker("fastened-top", RandomDriven::fastenedTop),
          new Maker("pocket-screws", RandomDriven::pocketScrews),
          new Maker("screws", RandomDriven::screws));

  private static final Face[] AWAY = {Face.RIGHT, Face.FRONT, Face.BACK, Face.BOTTOM, Face.TOP};

  private RandomDriven() {}

  private static Sample butt(Random random) {
    return new Sample(
        """
        parts:
          post: {stock: odd, x: 0 to %s, y: 0 to 400, z: 0 to 30, grain: y}
          rail: {stock: ash, x: post.right + GAP to 300, y: %s, z: %s, grain: x}
        joints:
          - butt: {end: rail.left, to: post, glue: yes}
        """
            .formatted(
                RandomJoints.mm(random, 20, 90),
                RandomJoints.between(RandomJoints.mm(random, 0, 340), 60),
                RandomJoints.between(RandomJoints.mm(random, 0, 10), 20)),
        AWAY);
  }

  private static Sample brads(Random random) {
    return new Sample(
            """
          nail: {kind: brad, length: LONG}
        parts:
          post: {stock: ply18, x: 0 to 18, y: 0 to 30, z: 0 to 400, grain: z}
          rail: {stock: ash, x: post.right + GAP to post.right + 40, y: 5 to 25, z: 100 to %s, grain: z}
        joints:
          - brads: {through: post.left, into: rail, count: %d, brad: nail}
        """
                .formatted(RandomJoints.mm(random, 150, 300), 1 + random.nextInt(5)),
            AWAY)
        .withLength(RandomJoints.mm(random, 32, 57.9), 58);
  }

  /** The peg is the tongue of a fastener; with it the board may move on the rail. */
  private static Sample fastenedTop(Random random) {
    return new Sample(
            """
            parts:
              post: {stock: ash, x: 0 to 300, y: 100 to 120, z: 0 to 60, grain: x}
              rail: {stock: odd, x: 0 to 300, y: 0 to %s, z: post.top + GAP to post.top + 30, grain: x}
              peg: {stock: strip, x: 140 to 160, y: 110 to 130, z: post.top - LONG - 2.5 to post.top - LONG - 0.5, grain: x}
            joints:
              - fastened-top: {top: rail.bottom, rail: post.back, slot-from-top: LONG, %s, fastener: clip, screw: screw}
            """
                .formatted(
                    RandomJoints.mm(random, 150, 400),
                    random.nextBoolean()
                        ? "count: " + (1 + random.nextInt(4))
                        : "slots: mortises, slot-length: "
                            + RandomJoints.mm(random, 26, 60)
                            + ", count: 1"),
            Face.TOP,
            Face.LEFT,
            Face.RIGHT,
            Face.FRONT,
            Face.BACK)
        .withLength(RandomJoints.mm(random, 4, 56.8), 56.825);
  }

  /** The peg is a bit of the screw's shank where it leaves the end. */
  private static Sample pocketScrews(Random random) {
    int count = 1 + random.nextInt(3);
    return new Sample(
            """
              driven: {kind: pocket-screw, length: LONG, diameter: 4}
            parts:
              post: {stock: odd, x: 0 to %s, y: 0 to 30, z: 0 to 400, grain: z}
              rail: {stock: ash, x: post.right + GAP to 300, y: 5 to 25, z: 100 to 100 + WIDE, grain: x}
              peg: {stock: strip, x: post.right to post.right + 1, y: 14 to 16, z: MIDDLE - 0.8 to MIDDLE + 0.8, grain: x}
            joints:
              - pocket-screws: {end: rail.left, into: post, from: %s, count: %d, screw: driven}
            """
                .formatted(
                    RandomJoints.mm(random, 40, 90), random.nextBoolean() ? "back" : "front", count)
                .replace("MIDDLE", "(100 + WIDE / %d)".formatted(2 * count))
                .replace("WIDE", RandomJoints.mm(random, 80, 200)),
            Face.RIGHT)
        .withPlay(3)
        .withLength(RandomJoints.mm(random, 30, 34.8), 34.925);
  }

  private static Sample screws(Random random) {
    int rows = 1 + random.nextInt(2);
    String pegs =
        (rows == 1 ? List.of("peg 14 to 16") : List.of("peg 9 to 11", "peg-2 19 to 21"))
            .stream()
                .map(each -> each.split(" ", 2))
                .map(
                    each ->
                        "  %s: {stock: strip, x: 0 to LONG, y: %s, z: %s, grain: x}%n"
                            .formatted(each[0], each[1], "MIDDLE - 0.8 to MIDDLE + 0.8"))
                .collect(Collectors.joining());
    int count = 1 + random.nextInt(4);
    return new Sample(
            """
              driven: {kind: wood-screw, length: LONG, diameter: %s}
            parts:
              post: {stock: ply18, x: 0 to 18, y: 0 to 30, z: 0 to 400, grain: z}
              rail: {stock: ash, x: post.right + GAP to post.right + 40, y: 5 to 25, z: %s, grain: z}
            PEGS\
            joints:
              - screws: {through: post.left, into: rail, count: %d, rows: %d, screw: driven}
            """
                .formatted(RandomJoints.mm(random, 5, 6.3), "100 to 100 + WIDE", count, rows)
                .replace("PEGS", pegs)
                .replace("MIDDLE", "(100 + WIDE / %d)".formatted(2 * count))
                .replace("WIDE", RandomJoints.mm(random, 80, 300)),
            Face.RIGHT)
        .withPlay(3)
        .withLength(RandomJoints.mm(random, 20, 57.9), 58);
  }
}
