package storyrod.build;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.piece.Comb;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.InPlace;
import storyrod.piece.Part;
import storyrod.piece.PocketHoles;
import storyrod.piece.Slanted;
import storyrod.piece.Slots;
import storyrod.piece.SplineSlot;

/**
 * What cuts have in common that are made at one setting of a machine.
 *
 * @param verb CUT or DRILL
 * @param term the trade's word for the cut
 * @param size a trench's width, a tenon's or a slot's thickness, a hole's diameter or a roundover's
 *     radius; for pocket holes the part's thickness; for dovetails how much a tail widens at each
 *     side; for a slope what it takes at its end; zero for what is cut along a path
 * @param depth how deep, or how long a tenon is; zero where it goes right through; for a slope how
 *     far it runs
 */
public record CutKind(Verb verb, String term, Length size, Length depth)
    implements Comparable<CutKind> {
  /**
   * The socket of a haunch is cut from its mortise. A mitred end is fragile and leaves nothing to
   * lean on a stop, curves leave no straight edge to run along a fence, a rounded edge nothing to
   * measure from. A slot in a tongue needs the tongue.
   */
  private static final List<String> AFTER_ALL_OTHERS =
      List.of(Cut.Trench.HAUNCH_SOCKET, "peg slot", "mitre", "spline slot", "slot");

  /**
   * Joints are cut and drilled while faces and edges are square; then parts are tapered and sawn to
   * their curves, which takes edges away, and what edges are left are shaped last (common
   * practice).
   */
  private static final List<String> SHAPING =
      List.of("taper", Cut.Shaped.OUTLINE, "chamfer", "roundover");

  /** In the middle of a hole the point of a wide bit would find no wood. */
  private static final String WIDE_FIRST = "counterbore";

  private static final Comparator<CutKind> ORDER =
      Comparator.comparing((CutKind kind) -> SHAPING.indexOf(kind.term()))
          .thenComparing(CutKind::verb)
          .thenComparing(kind -> !kind.term().equals(WIDE_FIRST))
          .thenComparing(kind -> AFTER_ALL_OTHERS.indexOf(kind.term()))
          .thenComparing(CutKind::term)
          .thenComparing(CutKind::size)
          .thenComparing(CutKind::depth);

  public static CutKind of(Part part, Cut cut) {
    return switch (cut) {
      case Cut.Trench trench ->
          new CutKind(Verb.CUT, trench.term(), width(part, trench), trenchDepth(part, trench));
      case Cut.Shaped shaped -> new CutKind(Verb.CUT, shaped.term(), Length.ZERO, Length.ZERO);
      case Cut.Roundover roundover ->
          new CutKind(Verb.CUT, roundover.term(), roundover.radius(), Length.ZERO);
      case Cut.Tenon tenon ->
          new CutKind(Verb.CUT, tenon.term(), tenon.tenon().size(part.thickness()), tenon.length());
      case Comb comb -> new CutKind(Verb.CUT, comb.term(), comb.finger(), comb.length());
      case Cut.Holes holes ->
          new CutKind(
              Verb.DRILL,
              holes.term(),
              holes.diameter(),
              holes.through() ? Length.ZERO : holes.depth());
      case PocketHoles pocket ->
          new CutKind(Verb.DRILL, pocket.term(), part.finishedThickness(), Length.ZERO);
      case Slanted.Slope slope -> new CutKind(Verb.CUT, slope.term(), slope.drop(), slope.run());
      case Slanted.Housing housing ->
          new CutKind(Verb.CUT, housing.term(), housing.mouth().length(), housing.depth());
      case Slots slots ->
          new CutKind(
              Verb.CUT, slots.term(), slots.width(), slots.through() ? Length.ZERO : slots.depth());
      case Dovetails dovetails ->
          new CutKind(Verb.CUT, dovetails.term(), dovetails.widening(), dovetails.baseline());
      case SplineSlot slot -> new CutKind(Verb.CUT, slot.term(), slot.thickness(), slot.depth());
      case InPlace inPlace ->
          new CutKind(Verb.DRILL, inPlace.term(), inPlace.diameter(), inPlace.depth());
    };
  }

  /** The axis across which a trench is as wide as the saw or the bit has to cut. */
  static Axis widthAxis(Part part, Cut.Trench trench) {
    return widthAxis(part.box(), trench);
  }

  private static Axis widthAxis(Box part, Cut.Trench trench) {
    Box removed = trench.removed();
    List<Axis> inFace =
        Arrays.stream(Axis.values()).filter(axis -> axis != trench.from().axis()).toList();
    return inFace.stream()
        .min(
            Comparator.comparing((Axis axis) -> runsThrough(part, trench, axis))
                .thenComparing(removed::size))
        .orElseThrow();
  }

  /** How far a trench's nearer side lies from the part's nearer edge. */
  public static Length fence(Part part, Cut.Trench trench) {
    return part.box().at(edge(part, trench)).minus(trench.removed().at(edge(part, trench))).abs();
  }

  /** Whether a trench ends inside the part, so that the cutter has to stop. */
  public static boolean isStopped(Part part, Cut.Trench trench) {
    return !runsThrough(part.box(), trench, runAxis(part, trench));
  }

  /**
   * Whether a cut goes right through, but from no side to the other: it has two sizes and no depth.
   */
  static boolean isCutOut(Part part, Cut.Trench trench) {
    return trenchDepth(part, trench).isZero() && isStopped(part, trench);
  }

  /** How long a trench is, across its width. */
  static Length run(Part part, Cut.Trench trench) {
    return trench.removed().size(runAxis(part, trench));
  }

  private static Axis runAxis(Part part, Cut.Trench trench) {
    return Axis.other(trench.from().axis(), widthAxis(part, trench));
  }

  /** The edge from which a trench is set out: the nearer one. */
  public static Face edge(Part part, Cut.Trench trench) {
    return edge(part.box(), trench);
  }

  /** The same in the frame in which the box of the part is given. */
  public static Face edge(Box part, Cut.Trench trench) {
    Axis axis = widthAxis(part, trench);
    Length before = trench.removed().on(axis).from().minus(part.on(axis).from());
    Length behind = part.on(axis).to().minus(trench.removed().on(axis).to());
    return Face.of(axis, behind.isShorterThan(before) ? 1 : -1);
  }

  private static boolean runsThrough(Box part, Cut.Trench trench, Axis axis) {
    return trench.removed().on(axis).equals(part.on(axis));
  }

  private static Length width(Part part, Cut.Trench trench) {
    return trench.removed().size(widthAxis(part, trench));
  }

  private static Length trenchDepth(Part part, Cut.Trench trench) {
    return trench.depth().equals(part.box().size(trench.from().axis()))
        ? Length.ZERO
        : trench.depth();
  }

  @Override
  public int compareTo(CutKind other) {
    return ORDER.compare(this, other);
  }
}
