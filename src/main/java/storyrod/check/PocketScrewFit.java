package storyrod.check;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.description.ItemEntry;
import storyrod.geometry.Axis;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.measure.Rational;
import storyrod.measure.Unit;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.PocketHoles;

/** A pocket screw of another length than its stock asks for, or too near to an edge. */
final class PocketScrewFit implements Check {
  /** The wide step's radius, and as much wood beside it. */
  private static Length fromEdge(LengthFormat format) {
    return format.unit() == Unit.INCH ? Length.inch(3, 8) : Length.mm(9);
  }

  private static final List<Usual> USUAL =
      List.of(
          new Usual(Length.inch(1, 2), Length.inches(1)),
          new Usual(Length.inch(3, 4), Length.inch(5, 4)),
          new Usual(Length.inches(1), Length.inch(3, 2)),
          new Usual(Length.inch(11, 8), Length.inches(2)),
          new Usual(Length.inch(3, 2), Length.inch(5, 2)));

  /** How much of a screw lies in the narrow step that the jig leaves before the end. */
  private static final Length IN_NARROW_STEP = Length.mm(14);

  /** The cosine of the 15° at which the jig drills. */
  private static final Rational COS_15 = Rational.of(966, 1000);

  /** So much wood stays over a screw's tip: with less the face swells, or splits, above it. */
  private static final Length SKIN = Length.inch(1, 16);

  /** Metric stock and screws go with those in inches. */
  private static final Length ROUNDING = Length.inch(1, 8);

  /** The length of the screw for a thickness. */
  private record Usual(Length thickness, Length screw) {}

  @Override
  public String code() {
    return "pocket-screw-fit";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "Pocket screws are 1 in long for stock of 1/2 in, 1 1/4 in for 3/4 in, 1 1/2 in for 1 in,"
            + " 2 in for 1 3/8 in and 2 1/2 in for 1 1/2 in, to within 1/8 in, and stand at least"
            + " 3/8 in (9 mm) from the edge. At least 1/16 in of wood remains over their tips in the"
            + " part they are driven into: all but 14 mm of their length reaches into it, at 15°.",
        "Common practice, from memory.",
        "Stock between these is held to the nearest. Screws of one joint are held against each"
            + " other by crowded-fasteners.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    Stream<Diagnostic> inFirst =
        piece.parts().stream()
            .flatMap(
                part ->
                    part.cuts().stream()
                        .filter(PocketHoles.class::isInstance)
                        .flatMap(cut -> findings(piece, part, (PocketHoles) cut)));
    return Stream.concat(inFirst, piece.joints().stream().flatMap(joint -> out(piece, joint)))
        .toList();
  }

  /** Screws whose tips would come out of the part they are driven into, or nearly so. */
  private Stream<Diagnostic> out(Piece piece, Joint joint) {
    LengthFormat format = piece.description().format();
    Part into = piece.part(joint.second());
    Length have = into.box().size(joint.entry().axis());
    return piece.part(joint.first()).cuts().stream()
        .filter(cut -> cut instanceof PocketHoles && cut.at().equals(joint.at()))
        .flatMap(cut -> cut.forWhat().map(piece.description().items()::get).stream())
        .filter(screw -> screw.length().filter(each -> comesOut(each, have)).isPresent())
        .map(
            screw ->
                Diagnostic.warning(
                        code(),
                        joint.at(),
                        "%s reaches about %s into %s, which is only %s thick there"
                            .formatted(
                                screw.name(),
                                format.formatWithUnit(reach(screw.length().orElseThrow())),
                                into.name(),
                                format.formatWithUnit(have)))
                    .also(into.at(), into.name() + " is defined here")
                    .hint(
                        "take a shorter screw, a thicker part or another joint: %s of wood should remain before its tip"
                            .formatted(format.forBits().formatWithUnit(SKIN))));
  }

  private static boolean comesOut(Length screw, Length have) {
    return reach(screw).plus(SKIN).isLongerThan(have);
  }

  /** How far a screw goes beyond the end: all but what lies in the narrow step of its hole. */
  private static Length reach(Length screw) {
    return screw.minus(IN_NARROW_STEP).max(Length.ZERO).times(COS_15, RoundingMode.HALF_EVEN);
  }

  private Stream<Diagnostic> findings(Piece piece, Part part, PocketHoles pockets) {
    LengthFormat format = piece.description().format();
    List<Diagnostic> found = new ArrayList<>();
    Length thick = part.box().size(pockets.from().axis());
    Optional<Length> length =
        pockets.forWhat().map(piece.description().items()::get).flatMap(ItemEntry::length);
    Length wanted = usual(thick);
    if (length.filter(each -> each.minus(wanted).abs().isLongerThan(ROUNDING)).isPresent()) {
      found.add(
          Diagnostic.warning(
                  code(),
                  pockets.at(),
                  "%s is %s long in stock %s thick"
                      .formatted(
                          pockets.forWhat().orElseThrow(),
                          format.formatWithUnit(length.orElseThrow()),
                          format.formatWithUnit(thick)))
              .also(part.at(), part.name() + " is defined here")
              .hint(
                  "%s is usual there: a longer one comes out, a shorter one hardly holds"
                      .formatted(format.formatWithUnit(wanted))));
    }
    Length edge = toEdge(part, pockets);
    if (edge.isShorterThan(fromEdge(format))) {
      found.add(
          Diagnostic.warning(
                  code(),
                  pockets.at(),
                  "a pocket hole lies only %s from the edge of %s"
                      .formatted(format.formatWithUnit(edge), part.name()))
              .also(part.at(), part.name() + " is defined here")
              .hint(
                  "leave %s or more: take fewer, or a wider part"
                      .formatted(format.formatWithUnit(fromEdge(format)))));
    }
    return found.stream();
  }

  private static Length usual(Length thick) {
    return USUAL.stream()
        .min(Comparator.comparing(each -> each.thickness().minus(thick).abs()))
        .map(Usual::screw)
        .orElseThrow();
  }

  private static Length toEdge(Part part, PocketHoles pockets) {
    Axis across = Axis.other(pockets.from().axis(), pockets.end().axis());
    Range whole = part.box().on(across);
    return pockets.centres().stream()
        .map(at -> at.on(across).minus(whole.from()).min(whole.to().minus(at.on(across))))
        .reduce(Length::min)
        .orElseThrow();
  }
}
