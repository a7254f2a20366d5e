package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.description.Diagnostic;
import storyrod.description.Span;
import storyrod.geometry.Cylinder;
import storyrod.geometry.Fineness;
import storyrod.geometry.Solid;
import storyrod.measure.Length;
import storyrod.piece.Carving;
import storyrod.piece.Cut;
import storyrod.piece.Drilling;
import storyrod.piece.InPlace;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.Slanted;

/**
 * A hole that comes out through a slanted or curved side of its part, or a screw driven at an angle
 * that comes out or nearly so. Square sides are the matter of {@link HoleEdge}.
 */
final class BreaksOut implements Check {
  private static final int ALONG = 24;
  private static final int ROUND = 16;

  /** What a screw's point leaves in front of it, as in {@link ScrewLength}. */
  private static final Length SKIN = Length.inch(1, 8);

  @Override
  public String code() {
    return "breaks-out";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A hole does not come out through a tapered, bevelled or curved side, nor does "
            + "a screw that is driven at an angle; before the point of a screw 1/8 in of wood"
            + " remains.",
        "Common practice.",
        "It looks at the part that is drilled and at the one that the screw is driven "
            + "into, and at no third one.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    return piece.parts().stream().flatMap(part -> findings(part).stream()).toList();
  }

  /** A bore, and what has to be said of it. */
  private record Bore(Cylinder cylinder, boolean through, double ahead) {}

  private List<Diagnostic> findings(Part part) {
    List<Cut> shaping = part.cuts().stream().filter(BreaksOut::shapes).toList();
    boolean leans = part.cuts().stream().anyMatch(InPlace.class::isInstance);
    if (shaping.isEmpty() && !leans) {
      return List.of();
    }
    Solid wood = Carving.of(part.box(), shaping, Fineness.USUAL);
    List<Diagnostic> found = new ArrayList<>();
    for (Cut cut : part.cuts()) {
      if (bores(cut).stream().anyMatch(bore -> comesOut(wood, bore))) {
        found.add(fault(part, cut, shaping));
      }
    }
    return found;
  }

  private static boolean shapes(Cut cut) {
    return cut instanceof Slanted.Slope || cut instanceof Cut.Shaped;
  }

  private static List<Bore> bores(Cut cut) {
    if (cut instanceof Cut.Holes holes) {
      return Drilling.of(holes).stream().map(each -> new Bore(each, holes.through(), 0)).toList();
    }
    if (cut instanceof InPlace inPlace) {
      return Drilling.of(inPlace).stream().map(each -> new Bore(each, false, SKIN.toMm())).toList();
    }
    return List.of();
  }

  /**
   * Whether the wall of a bore leaves the wood. A face that slants may lie deeper than the bore's
   * mouth, or before its end if it goes through: so it is followed from where its whole round is in
   * the wood.
   */
  private static boolean comesOut(Solid wood, Bore bore) {
    double reach = bore.cylinder.depthMm() + bore.ahead;
    List<Boolean> whole =
        IntStream.range(0, ALONG)
            .mapToObj(i -> isWhole(wood, bore, (i + 0.5) / ALONG * reach))
            .toList();
    int first = whole.indexOf(true);
    int last = bore.through ? whole.lastIndexOf(true) : ALONG - 1;
    return first < 0 || whole.subList(first, last + 1).contains(false);
  }

  private static boolean isWhole(Solid wood, Bore bore, double depth) {
    Cylinder cylinder = bore.cylinder;
    Vector3D middle = cylinder.mouth().add(cylinder.direction().multiply(depth));
    Vector3D one = cylinder.direction().orthogonal();
    Vector3D other = cylinder.direction().cross(one);
    return wood.holds(middle)
        && IntStream.range(0, ROUND)
            .mapToDouble(i -> 2 * StrictMath.PI * i / ROUND)
            .mapToObj(
                turn ->
                    one.multiply(StrictMath.cos(turn)).add(other.multiply(StrictMath.sin(turn))))
            .allMatch(out -> wood.holds(middle.add(out.multiply(cylinder.radiusMm()))));
  }

  private Diagnostic fault(Part part, Cut cut, List<Cut> shaping) {
    String use = cut.forWhat().map(what -> " for " + what).orElse("");
    Diagnostic fault =
        Diagnostic.warning(
                code(),
                cut.at(),
                "a %s%s comes out through a side of %s, or next to it"
                    .formatted(cut.term(), use, part.name()))
            .also(part.at(), part.name() + " is defined here");
    Optional<Span> shape = shaping.stream().map(Cut::at).findFirst();
    return shape
        .map(at -> fault.also(at, "its shape is given here"))
        .orElse(fault)
        .hint("move it to where the wood is thicker, or make it less deep or the screw shorter");
  }
}
