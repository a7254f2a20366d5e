package storyrod.check;

import java.util.List;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.StockKind;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Point;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** A board across the end of a wide slab that holds it anywhere but in its middle. */
final class BreadboardFixed implements Check {
  /** A narrower end moves too little to tear its joint. */
  private static final Length WIDE = Length.inches(6);

  /** A peg nearer to the middle than this part of the width counts as the middle one. */
  private static final int MIDDLE_SHARE = 8;

  @Override
  public String code() {
    return "breadboard-fixed";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A board that lies across the end of a slab of solid wood wider than 6 in (150 mm), on a"
            + " tongue, is pegged in round holes in the middle only; pegs away from the middle go"
            + " through slots. Else the slab splits as it gets narrower.",
        "Common practice.",
        "It does not work out how far the slab moves, and takes a slot to be long enough. An end"
            + " that is glued on is the matter of cross-grain.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    return piece.joints().stream().flatMap(joint -> finding(piece, joint).stream()).toList();
  }

  private Optional<Diagnostic> finding(Piece piece, Joint joint) {
    Part slab = piece.part(joint.first());
    Part end = piece.part(joint.second());
    Optional<Cut.Tenon> tongue = tongue(slab, end, joint);
    if (joint.glued() || tongue.isEmpty() || !isAcross(slab, end)) {
      return Optional.empty();
    }
    return fixedPeg(slab, end, tongue.get())
        .map(
            peg ->
                told(
                        slab,
                        end,
                        joint,
                        "is pegged to it %s from its middle in a round hole"
                            .formatted(piece.description().format().formatWithUnit(peg)))
                    .hint(
                        "let the joint bore the holes, with `peg-from`, or cut slots in the tongue"));
  }

  private Diagnostic told(Part slab, Part end, Joint joint, String how) {
    return Diagnostic.warning(
            code(),
            joint.at(),
            "%s lies across the end of %s and %s, so it cannot move"
                .formatted(end.name(), slab.name(), how))
        .also(slab.at(), slab.name() + " is defined here");
  }

  private static Optional<Cut.Tenon> tongue(Part slab, Part end, Joint joint) {
    return slab.cuts().stream()
        .filter(Cut.Tenon.class::isInstance)
        .map(Cut.Tenon.class::cast)
        .filter(cut -> cut.isFor(end.name()) && cut.at().equals(joint.at()))
        .filter(cut -> cut.term().equals("tongue"))
        .findFirst();
  }

  private static boolean isAcross(Part slab, Part end) {
    return slab.stock().kind() == StockKind.SOLID
        && end.stock().kind() == StockKind.SOLID
        && end.length() == slab.width()
        && slab.finishedWidth().isLongerThan(WIDE);
  }

  /** How far from the middle the first peg sits that holds the slab there. */
  private static Optional<Length> fixedPeg(Part slab, Part end, Cut.Tenon tongue) {
    Axis run = slab.width();
    Box box = tongue.tenon();
    Length near = new Length(box.size(run).ticks() / MIDDLE_SHARE);
    return round(end).stream()
        .filter(at -> round(slab).stream().anyMatch(other -> samePlace(slab, at, other)))
        .filter(at -> isIn(box, slab, at))
        .map(at -> at.on(run).minus(box.on(run).middle()).abs())
        .filter(off -> off.isLongerThan(near))
        .findFirst();
  }

  /** The centres of all round holes. */
  private static List<Point> round(Part part) {
    return part.cuts().stream()
        .filter(Cut.Holes.class::isInstance)
        .flatMap(cut -> ((Cut.Holes) cut).centres().stream())
        .toList();
  }

  private static boolean samePlace(Part slab, Point one, Point other) {
    return one.on(slab.width()).equals(other.on(slab.width()))
        && one.on(slab.length()).equals(other.on(slab.length()));
  }

  private static boolean isIn(Box tongue, Part slab, Point at) {
    return tongue.on(slab.width()).contains(at.on(slab.width()))
        && tongue.on(slab.length()).contains(at.on(slab.length()));
  }
}
