package storyrod.build;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.build.BuildPlan.Setting;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Part;

/**
 * Two units that stand apart, are held by a third one, and have the four outer corners: the legs of
 * an end, or the panels of a stool. What leans is measured across its feet.
 *
 * @param together what is together, in its order
 * @param meet whether two units hold each other
 */
record Posts(List<Unit> together, BiPredicate<Unit, Unit> meet) {
  /** Nearer than this a corner of a solid is where the box round it has one. */
  private static final double NEAR_MM = 0.01;

  Posts {
    together = List.copyOf(together);
  }

  /** Two posts between whose corners the tape is held, each across a plane of the piece. */
  private record Pair(Unit one, Unit two, Axis wide, Axis high) {
    Box around() {
      return box(one).around(box(two));
    }

    boolean leans() {
      return one.isTurned() || two.isTurned();
    }

    boolean isApart() {
      return box(one).on(wide).to().isShorterThan(box(two).on(wide).from());
    }
  }

  /** The diagonal between the outer corners of the first such pair. */
  Optional<Setting> diagonal() {
    return firsts()
        .flatMap(one -> together.stream().flatMap(two -> pairs(one, two)))
        .filter(pair -> pair.isApart() && isOutside(pair))
        .filter(pair -> holdsCorners(pair, pair.one(), -1) && holdsCorners(pair, pair.two(), 1))
        .filter(pair -> areHeld(pair.one(), pair.two()))
        .map(Posts::setting)
        .findFirst();
  }

  /** Those that can be the first of a pair: most of many are not, and pairs are many more. */
  private Stream<Unit> firsts() {
    Box all = all();
    boolean leans = together.stream().anyMatch(Unit::isTurned);
    return together.stream().filter(each -> leans || isFirst(box(each), all));
  }

  /** Whether something begins where all begins, and leaves room for another beyond it. */
  private static boolean isFirst(Box own, Box all) {
    return Stream.of(Axis.values())
        .anyMatch(
            axis ->
                own.on(axis).from().equals(all.on(axis).from())
                    && own.on(axis).to().isShorterThan(all.on(axis).to()));
  }

  private Box all() {
    return together.stream().map(Posts::box).reduce(Box::around).orElseThrow();
  }

  private static Stream<Pair> pairs(Unit one, Unit two) {
    return Stream.of(Axis.values()).map(wide -> new Pair(one, two, wide, high(one, two, wide)));
  }

  /** The way in which both are long, or along the floor where they lean. */
  private static Axis high(Unit one, Unit two, Axis wide) {
    Box around = box(one).around(box(two));
    boolean leans = one.isTurned() || two.isTurned();
    return Stream.of(Axis.values())
        .filter(axis -> axis != wide && !(leans && axis == Axis.Z))
        .max(Comparator.comparing(around::size))
        .orElseThrow();
  }

  private boolean areHeld(Unit one, Unit two) {
    return one != two && holders(one, two).findAny().isPresent();
  }

  private Stream<Unit> holders(Unit one, Unit two) {
    return together.stream().filter(each -> meet.test(one, each) && meet.test(two, each));
  }

  /** A slab from corner to corner keeps its own angles. */
  private boolean isFilled(Pair pair) {
    return holders(pair.one(), pair.two())
        .anyMatch(each -> box(each).on(pair.high()).contains(pair.around().on(pair.high())));
  }

  /** Feet stand below all else, and posts reach as far as all that is together. */
  private boolean isOutside(Pair pair) {
    Box all = all();
    Box own = pair.around();
    return pair.leans()
        ? pair.wide() != Axis.Z && own.at(Face.BOTTOM).equals(all.at(Face.BOTTOM))
        : !isFilled(pair)
            && own.on(pair.wide()).equals(all.on(pair.wide()))
            && own.on(pair.high()).equals(all.on(pair.high()));
  }

  /** Whether a post has wood at both of its outer corners. */
  private static boolean holdsCorners(Pair pair, Unit post, int side) {
    Box around = pair.around();
    double wide = around.on(pair.wide()).end(side).toMm();
    return Stream.of(-1, 1)
        .map(sign -> around.on(pair.high()).end(sign).toMm())
        .allMatch(
            high ->
                corners(post)
                    .filter(at -> !pair.leans() || isAt(at, Axis.Z, around.z().from().toMm()))
                    .anyMatch(at -> isAt(at, pair.wide(), wide) && isAt(at, pair.high(), high)));
  }

  private static Stream<Vector3D> corners(Unit post) {
    return post.parts().stream()
        .flatMap(part -> part.placed().faces().stream())
        .flatMap(face -> face.outer().stream());
  }

  private static boolean isAt(Vector3D corner, Axis axis, double mm) {
    return Math.abs(corner.toArray()[axis.ordinal()] - mm) < NEAR_MM;
  }

  private static Setting setting(Pair pair) {
    Length diagonal =
        Squares.diagonal(
            pair.around().on(pair.wide()).length(), pair.around().on(pair.high()).length());
    return new Setting(pair.leans() ? "diagonal-feet" : "diagonal", Optional.empty(), diagonal);
  }

  private static Box box(Unit unit) {
    return unit.parts().stream().map(Part::bounds).reduce(Box::around).orElseThrow();
  }
}
