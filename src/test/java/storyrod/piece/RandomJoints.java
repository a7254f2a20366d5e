package storyrod.piece;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;

/**
 * Makers of random pieces of two parts and one joint. A new joint brings a maker and one line in
 * its family; {@link RandomJointsTest} does the rest.
 *
 * <p>A maker writes its piece one way round, the post on the left, the rail on its right; the test
 * turns it about. {@code GAP} stands for what the description may be wrong by, {@code LONG} for a
 * length that may be too great. A part whose name begins with {@code peg} stands for what is driven
 * or laid into both parts: it belongs to no joint and must have room in their holes.
 */
final class RandomJoints {
  /**
   * A random piece.
   *
   * @param body its parts and its joint in millimetres, for {@link Pieces}
   * @param free the faces towards which the rail can leave the post
   * @param playMm how far the rail can be moved any other way
   * @param length what {@code LONG} stands for in a piece that fits
   * @param longestMm from which length on it does not fit; none if 0
   */
  record Sample(String body, Set<Face> free, double playMm, String length, double longestMm) {
    Sample(String body, Face... free) {
      this(body, new TreeSet<>(Set.of(free)), 0, "0", 0);
    }

    Sample withPlay(double mm) {
      return new Sample(body, free, mm, length, longestMm);
    }

    Sample withLength(String fits, double longest) {
      return new Sample(body, free, playMm, fits, longest);
    }

    Sample alsoFree(Face face) {
      Set<Face> more = new TreeSet<>(free);
      more.add(face);
      return new Sample(body, more, playMm, length, longestMm);
    }

    /** The description of a piece that fits. */
    String fitting() {
      return withGap("0");
    }

    /** The description with the rail as far from where it meets the post. */
    String withGap(String gap) {
      return body.replace("GAP", gap).replace("LONG", length);
    }

    boolean hasGap() {
      return body.contains("GAP");
    }

    /** The description with what must not be too long as much longer than would just not fit. */
    String longerBy(double mm) {
      String longer = String.format(Locale.ROOT, "%.3f", longestMm + mm);
      return body.replace("GAP", "0").replace("LONG", longer);
    }

    boolean hasLongest() {
      return longestMm > 0;
    }

    /** The same piece with its axes in another order. */
    Sample turned(List<Axis> axes) {
      String words =
          Pattern.compile("\\b[xyz]\\b|(?<!-)\\b(left|right|front|back|bottom|top)\\b(?!:)")
              .matcher(body)
              .replaceAll(found -> turned(found.group(), axes));
      Set<Face> ways =
          free.stream()
              .map(face -> turned(face, axes))
              .collect(Collectors.toCollection(TreeSet::new));
      return new Sample(words, ways, playMm, length, longestMm);
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
  record Maker(String kind, Function<Random, Sample> pieces) {
    Sample make(Random random) {
      return pieces.apply(random);
    }

    @Override
    public String toString() {
      return kind;
    }
  }

  static final List<Maker> ALL =
      Stream.of(
              RandomCorners.ALL,
              RandomDriven.ALL,
              RandomInserts.ALL,
              RandomLaps.ALL,
              RandomSlots.ALL)
          .flatMap(List::stream)
          .toList();

  private RandomJoints() {}

  /** A stretch of some length in millimetres. */
  static String between(String from, int length) {
    return from + " to " + from + " + " + length;
  }

  /** A length in steps of a tenth of a millimetre. */
  static String mm(Random random, double from, double to) {
    long low = Math.round(from * 10);
    long tenths = low + random.nextInt((int) (Math.round(to * 10) - low) + 1);
    return tenths / 10 + "." + tenths % 10;
  }
}
