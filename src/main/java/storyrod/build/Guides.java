package storyrod.build;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Setting;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.Slanted;
import storyrod.piece.SplineSlot;

/**
 * How far a fence, a stop or a guide lies from a side of each part that is cut or drilled: {@code
 * fence} to the nearer wall, {@code stop} to each line that is cut, {@code line} to the middle.
 */
public final class Guides {
  /** How the keys of such settings begin; the word for the side follows. */
  public static final List<String> KEYS = List.of("fence-", "stop-", "line-");

  private static final List<String> FENCED =
      List.of("dado", "stopped dado", "groove", "stopped groove", "lid groove", "mortise");

  /** What is cut at its shoulders first, or gauged at both walls. */
  private static final List<String> STOPPED =
      List.of("half-lap", "cross-lap", "bridle cheek", "open mortise");

  private final ShowFaces shows;

  Guides(Piece piece) {
    this.shows = new ShowFaces(piece);
  }

  /** Whether a setting is one of these. */
  public static boolean isOne(Setting setting) {
    return KEYS.stream().anyMatch(setting.key()::startsWith);
  }

  List<Setting> of(Part part, List<Cut> cuts) {
    return Stream.of(trenches(part, cuts), splines(part, cuts), slots(part, cuts), rows(part, cuts))
        .flatMap(each -> each)
        .distinct()
        .toList();
  }

  private static Stream<Setting> trenches(Part part, List<Cut> cuts) {
    return Cut.only(Cut.Trench.class, cuts).stream()
        .flatMap(
            trench ->
                FENCED.contains(trench.term())
                    ? Stream.of(at("fence-", part, CutKind.edge(part, trench), near(part, trench)))
                    : STOPPED.contains(trench.term()) ? stops(part, trench) : Stream.empty());
  }

  /** Both lines; where it begins at the end itself, only the other one is cut. */
  private static Stream<Setting> stops(Part part, Cut.Trench trench) {
    Length near = near(part, trench);
    Face edge = CutKind.edge(part, trench);
    return Stream.of(near, near.plus(trench.removed().size(edge.axis())))
        .filter(Length::isPositive)
        .map(line -> at("stop-", part, edge, line));
  }

  private static Length near(Part part, Cut.Trench trench) {
    return CutKind.fence(part, trench);
  }

  private Stream<Setting> splines(Part part, List<Cut> cuts) {
    return Cut.only(SplineSlot.class, cuts).stream()
        .map(slot -> slot.isInFrame(part) ? inFrame(part, slot) : inCase(part, slot));
  }

  /** In a frame the slot runs along the middle of the mitre, square to the faces. */
  private Setting inFrame(Part part, SplineSlot slot) {
    Face side = side(part, part.thickness(), slot.run().from());
    return at("fence-", part, side, off(part, side, slot.run().end(side.sign())));
  }

  /** In a case it runs across the end, and its nearer wall is measured on the mitre at 45°. */
  private static Setting inCase(Part part, SplineSlot slot) {
    Length deep =
        Arrays.stream(Face.values())
            .filter(face -> face.axis() == part.thickness())
            .flatMap(face -> slot.onMitre().stream().map(at -> off(part, face, at.on(face.axis()))))
            .min(Length::compareTo)
            .orElseThrow();
    return new Setting(
        "spline-inset", Optional.empty(), Length.nearest(deep.toMm() * StrictMath.sqrt(2)));
  }

  private Stream<Setting> slots(Part part, List<Cut> cuts) {
    return lines(part, RowLines.ofSlots(cuts));
  }

  /** The lines on which holes lie in rows, on each face in which there are any. */
  private Stream<Setting> rows(Part part, List<Cut> cuts) {
    return lines(part, RowLines.ofHoles(cuts));
  }

  private Stream<Setting> lines(Part part, List<RowLines> rows) {
    return rows.stream()
        .flatMap(each -> each.lines().stream().map(at -> line(part, each.across(), at)));
  }

  /**
   * Where on their lines the holes or slots lie, all from the end nearest to one of them, told as
   * lines are.
   *
   * @return none where there are no lines, or these differ
   */
  public static List<Setting> along(Part part, List<Cut> cuts) {
    List<RowLines> all = RowLines.of(cuts);
    boolean isSloped = !part.cuts(Slanted.Slope.class).isEmpty();
    return all.size() == 1 && all.getFirst().areAlike() && !isSloped
        ? along(part, all.getFirst())
        : List.of();
  }

  private static List<Setting> along(Part part, RowLines rows) {
    Face low = Face.of(rows.along(), -1);
    Face high = low.opposite();
    List<Length> lows = rows.places().stream().map(at -> off(part, low, at)).sorted().toList();
    List<Length> highs = rows.places().stream().map(at -> off(part, high, at)).sorted().toList();
    boolean fromHigh = highs.getFirst().isShorterThan(lows.getFirst());
    return (fromHigh ? highs : lows)
        .stream().map(each -> at("line-", part, fromHigh ? high : low, each)).toList();
  }

  private Setting line(Part part, Axis axis, Length at) {
    Face side = side(part, axis, at);
    return at("line-", part, side, off(part, side, at));
  }

  /** Across the thickness the side that is seen, so that it comes out flush; else the nearer. */
  private Face side(Part part, Axis axis, Length at) {
    Length low = off(part, Face.of(axis, -1), at);
    Length high = off(part, Face.of(axis, 1), at);
    Face nearer = Face.of(axis, high.isShorterThan(low) ? 1 : -1);
    return axis == part.thickness() ? shows.of(part).orElse(nearer) : nearer;
  }

  private static Length off(Part part, Face side, Length at) {
    return part.box().at(side).minus(at).abs();
  }

  private static Setting at(String key, Part part, Face side, Length distance) {
    return new Setting(key + side.word(), Optional.of(part.name()), distance);
  }
}
