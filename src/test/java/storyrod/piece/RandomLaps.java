package storyrod.piece;

import java.util.List;
import java.util.Random;
import storyrod.geometry.Face;
import storyrod.piece.RandomJoints.Maker;
import storyrod.piece.RandomJoints.Sample;

/** Makers of random joints in which two parts lie in or across each other. */
final class RandomLaps {
  static final List<Maker> ALL =
      List.of(
          new Maker("bridle", RandomLaps::bridle),
          new Maker("cross-lap", RandomLaps::crossLap),
          new Maker("half-lap", RandomLaps::halfLap),
          new Maker("mitre", RandomLaps::mitre));

  private RandomLaps() {}

  private static Sample bridle(Random random) {
    boolean corner = random.nextBoolean();
    Sample sample =
        new Sample(
            """
            parts:
              post: {stock: odd, x: 0 to %s, y: 0 to 400, z: 0 to 30, grain: y}
              rail: {stock: ash, x: post.right + GAP to 300, y: %s, z: %s, grain: x}
            joints:
              - bridle: {end: rail.left, into: post%s, glue: yes}
            """
                .formatted(
                    RandomJoints.mm(random, 20, 90),
                    corner
                        ? "post.back - 60 to post.back"
                        : RandomJoints.between(RandomJoints.mm(random, 1, 339), 60),
                    RandomJoints.between(RandomJoints.mm(random, 0, 10), 20),
                    random.nextBoolean() ? "" : ", thickness: " + RandomJoints.mm(random, 1, 19)),
            Face.RIGHT);
    return corner ? sample.alsoFree(Face.BACK) : sample;
  }

  private static Sample crossLap(Random random) {
    boolean fromAbove = random.nextBoolean();
    return new Sample(
        """
        parts:
          post: {stock: odd, x: 0 to 400, y: 150 to 180, z: 0 to %s, grain: x}
          rail: {stock: ash, x: %s, y: 0 to 300, z: 0 to %s, grain: y}
        joints:
          - cross-lap: {end: rail.%s, into: post%s}
        """
            .formatted(
                RandomJoints.mm(random, 40, 120),
                RandomJoints.between(RandomJoints.mm(random, 1, 379), 20),
                RandomJoints.mm(random, 41, 120),
                fromAbove ? "bottom" : "top",
                random.nextBoolean()
                    ? ""
                    : ", depth: "
                        + (fromAbove ? "post.top - " : "")
                        + RandomJoints.mm(random, 1, 39)),
        fromAbove ? Face.TOP : Face.BOTTOM);
  }

  private static Sample halfLap(Random random) {
    boolean corner = random.nextBoolean();
    boolean onTop = random.nextBoolean();
    String rail =
        corner
            ? "post.back - 60 to post.back"
            : RandomJoints.between(RandomJoints.mm(random, 1, 339), 60);
    Face lies = onTop ? Face.TOP : Face.BOTTOM;
    Sample sample =
        new Sample(
            """
            parts:
              post: {stock: odd, x: 0 to %s, y: 0 to 400, z: 0 to 30, grain: y}
              rail: {stock: ash, x: post.right + GAP to 300, y: %s, z: %s, grain: x}
            joints:
              - half-lap: {end: rail.left, into: post, face: %s%s, glue: yes}
            """
                .formatted(
                    RandomJoints.mm(random, 20, 90),
                    rail,
                    onTop ? "10 to 30" : "0 to 20",
                    lies.word(),
                    random.nextBoolean() ? "" : ", depth: " + RandomJoints.mm(random, 1, 19)),
            lies,
            Face.RIGHT);
    return corner ? sample.alsoFree(Face.BACK) : sample;
  }

  private static Sample mitre(Random random) {
    String wide = RandomJoints.mm(random, 20, 90);
    boolean flat = random.nextBoolean();
    Sample frame =
        new Sample(
            """
            parts:
              post: {stock: ash, x: 0 to %s, y: 0 to 400, z: 0 to 20, grain: y}
              rail: {stock: ash, x: post.right + GAP to 300, y: 400 - %s to 400, z: 0 to 20, grain: x}
            joints:
              - mitre: {end: rail.left, into: post, glue: yes}
            """
                .formatted(wide, wide),
            Face.RIGHT,
            Face.BACK);
    Sample box =
        new Sample(
            """
            parts:
              post: {stock: ash, x: 0 to 20, y: 0 to 400, z: 0 to %s, grain: y}
              rail: {stock: ash, x: post.right + GAP to 300, y: 380 to 400, z: 0 to %s, grain: x}
            joints:
              - mitre: {end: rail.left, into: post, glue: yes}
            """
                .formatted(wide, wide),
            Face.RIGHT,
            Face.BACK);
    return (flat ? frame : box).alsoFree(Face.BOTTOM).alsoFree(Face.TOP);
  }
}
