package storyrod.piece;

import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;

/**
 * Makers of random pieces of two parts and one joint. A new joint brings a maker and one line in
 * {@link #ALL}; {@link RandomJointsTest} does the rest.
 *
 * <p>A maker writes its piece one way round, the second part on the left, the first on its right;
 * the test turns it about. {@code GAP} stands for what the description may be wrong by.
 */
final class RandomJoints {
  /**
   * A random piece.
   *
   * @param body its parts and its joint in millimetres, for {@link Pieces}
   * @param first the part that goes in
   * @param second the part that takes it
   * @param free the faces towards which the first part can leave the second
   * @param playMm how far the first part can be moved any other way
   */
  record Sample(String body, String first, String second, Set<Face> free, double playMm) {
    Sample(String body, Face... free) {
      this(body, "rail", "post", new TreeSet<>(Set.of(free)), 0);
    }

    Sample withPlay(double mm) {
      return new Sample(body, first, second, free, mm);
    }

    Sample alsoFree(Face face) {
      Set<Face> more = new TreeSet<>(free);
      more.add(face);
      return new Sample(body, first, second, more, playMm);
    }

    /** The description with the first part as far from where it meets the second. */
    String withGap(String gap) {
      return body.replace("GAP", gap);
    }

    boolean hasGap() {
      return body.contains("GAP");
    }

    /** The same piece with its axes in another order. */
    Sample turned(List<Axis> axes) {
      String words =
          Pattern.compile("\\b([xyz])\\b|\\b(left|right|front|back|bottom|top)\\b")
              .matcher(body)
              .replaceAll(found -> turned(found.group(), axes));
      Set<Face> ways =
          free.stream()
              .map(face -> turned(face, axes))
              .collect(Collectors.toCollection(TreeSet::new));
      return new Sample(words, first, second, ways, playMm);
    }

    private static String turned(String word, List<Axis> axes) {
      return Face.named(word)
          .map(face -> turned(face, axes).word())
          .orElseGet(() -> axes.get("xyz".indexOf(word)).word());
    }

    private static Face turned(Face face, List<Axis> axes) {
      return Face.of(axes.get(face.axis().ordinal()), face.sign());
    }
  }

  /** Makes pieces of one kind of joint. */
  interface Maker {
    Sample make(Random random);
  }

  static final List<Maker> ALL =
      List.of(
          RandomJoints::boxJoint,
          RandomJoints::bridle,
          RandomJoints::crossLap,
          RandomJoints::dado,
          RandomJoints::dovetail,
          RandomJoints::halfLap,
          RandomJoints::mitre,
          RandomJoints::slidingLid,
          RandomJoints::stoppedDado,
          RandomJoints::tenon,
          RandomJoints::tongue);

  private RandomJoints() {}

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
                mm(random, 60, 150),
                atTheBack ? "380 to 400" : "0 to 20",
                random.nextBoolean()
                    ? "finger: " + mm(random, 5, 29)
                    : "fingers: " + (3 + random.nextInt(12)),
                random.nextBoolean() ? "end" : "into"),
        Face.RIGHT,
        atTheBack ? Face.BACK : Face.FRONT);
  }

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
                    mm(random, 20, 90),
                    corner ? "post.back - 60 to post.back" : between(mm(random, 1, 339), 60),
                    between(mm(random, 0, 10), 20),
                    random.nextBoolean() ? "" : ", thickness: " + mm(random, 1, 19)),
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
                mm(random, 40, 120),
                between(mm(random, 1, 379), 20),
                mm(random, 41, 120),
                fromAbove ? "bottom" : "top",
                random.nextBoolean()
                    ? ""
                    : ", depth: " + (fromAbove ? "post.top - " : "") + mm(random, 1, 39)),
        fromAbove ? Face.TOP : Face.BOTTOM);
  }

  private static Sample dado(Random random) {
    return new Sample(
        """
        parts:
          post: {stock: odd, x: 0 to 30, y: 0 to 400, z: 0 to %s, grain: y}
          rail: {stock: ply18, x: post.right + GAP to 300, y: %s, z: 0 to post.top, grain: x}
        joints:
          - dado: {end: rail.left, into: post, depth: %s}
        """
            .formatted(mm(random, 40, 200), between(mm(random, 1, 381), 18), mm(random, 1, 29)),
        Face.RIGHT,
        Face.BOTTOM,
        Face.TOP);
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
                mm(random, 80, 200),
                between(mm(random, 1, 381), 18),
                mm(random, 1, 29),
                mm(random, 1, 40),
                below ? "bottom" : "top"),
        Face.RIGHT,
        below ? Face.TOP : Face.BOTTOM);
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
                mm(random, 0, 20),
                mm(random, 110, 150),
                1 + random.nextInt(3),
                mm(random, 5, 9),
                mm(random, 2, 12),
                mm(random, 2, 12),
                lapped ? ", lap: " + mm(random, 3, 20) : ""),
        Face.BACK);
  }

  private static Sample halfLap(Random random) {
    boolean corner = random.nextBoolean();
    boolean onTop = random.nextBoolean();
    String rail = corner ? "post.back - 60 to post.back" : between(mm(random, 1, 339), 60);
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
                    mm(random, 20, 90),
                    rail,
                    onTop ? "10 to 30" : "0 to 20",
                    lies.word(),
                    random.nextBoolean() ? "" : ", depth: " + mm(random, 1, 19)),
            lies,
            Face.RIGHT);
    return corner ? sample.alsoFree(Face.BACK) : sample;
  }

  private static Sample mitre(Random random) {
    String wide = mm(random, 20, 90);
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
                    mm(random, 100, 390),
                    between(mm(random, 1, 170), 20),
                    mm(random, 2, 17),
                    random.nextBoolean() ? "" : ", thickness: " + mm(random, 1, 19.9)),
            Face.RIGHT,
            Face.FRONT)
        .withPlay(0.8);
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
                mm(random, 230, 390),
                through ? "through: yes" : "depth: " + mm(random, 1, 48.4),
                mm(random, 1, 20),
                mm(random, 0, 14)),
        Face.RIGHT);
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
            .formatted(mm(random, 1, 59), mm(random, 1, 20)),
        Face.RIGHT,
        Face.BOTTOM,
        Face.TOP);
  }

  /** A stretch of some length in millimetres. */
  private static String between(String from, int length) {
    return from + " to " + from + " + " + length;
  }

  /** A length in steps of a tenth of a millimetre. */
  static String mm(Random random, double from, double to) {
    long low = Math.round(from * 10);
    long tenths = low + random.nextInt((int) (Math.round(to * 10) - low) + 1);
    return tenths / 10 + "." + tenths % 10;
  }
}
