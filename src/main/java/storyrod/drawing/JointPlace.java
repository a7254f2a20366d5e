package storyrod.drawing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Comb;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.InPlace;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.piece.PocketHoles;
import storyrod.piece.Slanted;
import storyrod.piece.Slots;
import storyrod.piece.SplineSlot;

/**
 * Where a joint lies in the piece, and how much of its two parts a drawing of it shows.
 *
 * @param first the part that goes in, is fastened, or lies on
 * @param second the part that takes it
 */
public record JointPlace(Joint joint, JointPart first, JointPart second) {
  /** Of a joint this many times as long as it is thick, only the end is shown. */
  private static final int LONG = 3;

  /** What is shown beside a joint, as a share of its size, and its bounds in mm of the piece. */
  private static final double BESIDE = 0.45;

  /** No further apart than this two holes of a row are shown together. */
  private static final double NEXT_HOLE_MM = 60;

  /** How much of where the parts meet is shown beside holes. */
  private static final double HOLE_BESIDE_MM = 12;

  private static final double LEAST_BESIDE_MM = 7;
  private static final double MOST_BESIDE_MM = 18;

  /** An end of a part no further off than this share of what is shown beside is shown too. */
  private static final double NEAR = 1.6;

  private static final List<Double> SHARES = List.of(0.5, 0.25, 0.75, 0.1, 0.9);

  static JointPlace of(Piece piece, Joint joint) {
    Part first = piece.part(joint.first());
    Part second = piece.part(joint.second());
    return new JointPlace(
        joint, JointPart.of(joint, first, second), JointPart.of(joint, second, first));
  }

  /** The part that goes in, and the one that takes it. */
  public List<JointPart> parts() {
    return List.of(first, second);
  }

  /** All cuts that make it. */
  public Stream<Cut> cuts() {
    return parts().stream().flatMap(each -> each.cuts().stream());
  }

  /** The cuts whose sizes lie in the frame of the piece. */
  Stream<Cut> squareCuts() {
    return parts().stream().filter(JointPart::isSquare).flatMap(each -> each.cuts().stream());
  }

  /** The axis square to where the two meet. */
  Axis normal() {
    return joint.firstFace().axis();
  }

  private Axis longer() {
    List<Axis> inPlane = DimensionSides.inPlane(joint.firstFace());
    Box contact = joint.contact();
    return contact.size(inPlane.get(0)).isLongerThan(contact.size(inPlane.get(1)))
        ? inPlane.get(0)
        : inPlane.get(1);
  }

  private Axis shorter() {
    return Axis.other(normal(), longer());
  }

  /** Its holes or slots, those in a row first; of a row too long to be shown, one hole. */
  Optional<JointRow> row() {
    List<JointRow> all = squareCuts().flatMap(cut -> JointRow.of(cut, normal()).stream()).toList();
    return all.stream()
        .filter(each -> each.isRow() && isNear(each))
        .findFirst()
        .or(() -> all.stream().findFirst().map(JointRow::alone));
  }

  /** Whether the next hole of a row is so near that a drawing can show both. */
  private boolean isNear(JointRow row) {
    return row.step().length().toMm() <= NEXT_HOLE_MM;
  }

  /** The face from which its section is seen: across its run, or along a row of holes. */
  Face sectionFace() {
    Axis axis = alongSection().map(along -> Axis.other(normal(), along)).orElse(longer());
    return switch (axis) {
      case X -> Face.RIGHT;
      case Y -> Face.FRONT;
      case Z -> Face.TOP;
    };
  }

  /** The axis of a row of fingers, tails or holes, which a section has to run along. */
  private Optional<Axis> alongSection() {
    return squareCuts()
        .flatMap(cut -> fingers(cut).stream())
        .filter(along -> along != normal())
        .findFirst()
        .or(() -> row().filter(JointRow::isRow).map(JointRow::along))
        .filter(along -> !hasPockets());
  }

  /** Slanted holes show from the side. */
  private boolean hasPockets() {
    return squareCuts().anyMatch(PocketHoles.class::isInstance);
  }

  private static Optional<Axis> fingers(Cut cut) {
    return switch (cut) {
      case Comb comb -> Optional.of(comb.along());
      case Dovetails row -> Optional.of(row.across());
      case Cut.Trench trench -> Optional.empty();
      case Cut.Tenon tenon -> Optional.empty();
      case Cut.Shaped shaped -> Optional.empty();
      case Cut.Roundover roundover -> Optional.empty();
      case Cut.Holes holes -> Optional.empty();
      case PocketHoles pockets -> Optional.empty();
      case InPlace inPlace -> Optional.empty();
      case Slanted.Slope slope -> Optional.empty();
      case Slanted.Housing housing -> Optional.empty();
      case SplineSlot slot -> Optional.empty();
      case Slots slots -> Optional.empty();
    };
  }

  /** Where the section may lie on its axis, the best first: through a hole, else in the middle. */
  List<Length> sectionsAt() {
    Axis axis = sectionFace().axis();
    Range contact = joint.contact().on(axis);
    return Stream.concat(
            row().map(each -> each.centres().getFirst().on(axis)).stream(),
            SHARES.stream().map(share -> between(contact, share)))
        .toList();
  }

  private static Length between(Range range, double share) {
    return Length.nearest(range.from().toMm() + share * range.length().toMm());
  }

  /** The joint itself, of a long one its first end, of one with holes what is around them. */
  private Box core() {
    return drilled().orElseGet(this::fromEnd);
  }

  private Box fromEnd() {
    Box core = joint.contact();
    for (Cut cut : squareCuts().toList()) {
      core = JointPart.box(cut).map(core::around).orElse(core);
    }
    Range whole = joint.contact().on(longer());
    Length end = whole.from().plus(thickness(core).times(LONG)).min(whole.to());
    return core.with(longer(), new Range(whole.from(), end));
  }

  /** Where holes square to the meeting faces are its only cuts, what is around the shown ones. */
  private Optional<Box> drilled() {
    boolean isDrilled = squareCuts().allMatch(cut -> cut instanceof Cut.Holes);
    return row().filter(each -> isDrilled).map(this::around);
  }

  private Box around(JointRow row) {
    Box core = joint.contact();
    for (Cut cut : squareCuts().toList()) {
      Range deep = JointPart.box(cut).orElseThrow().on(normal());
      core = core.with(normal(), core.on(normal()).around(deep));
    }
    for (Axis axis : DimensionSides.inPlane(joint.firstFace())) {
      core = core.with(axis, row.around(axis, Length.nearest(HOLE_BESIDE_MM)));
    }
    return core;
  }

  private Length thickness(Box core) {
    return core.size(shorter()).max(core.size(normal())).max(Length.nearest(LEAST_BESIDE_MM));
  }

  /** How much is shown beside the joint. */
  Length beside() {
    double size = thickness(core()).toMm();
    return Length.nearest(Math.clamp(BESIDE * size, LEAST_BESIDE_MM, MOST_BESIDE_MM));
  }

  /** What is shown: the joint with some of both parts around it, and ends that are near. */
  Box window() {
    Box window = core();
    Length beside = beside();
    for (Axis axis : Axis.values()) {
      Range own = window.on(axis);
      Range shown = new Range(own.from().minus(beside), own.to().plus(beside));
      window = window.with(axis, withEnds(axis, shown));
    }
    return window;
  }

  private Range withEnds(Axis axis, Range shown) {
    Length near = Length.nearest(NEAR * beside().toMm());
    Length from = shown.from();
    Length to = shown.to();
    for (JointPart each : parts()) {
      Range own = each.part().bounds().on(axis);
      boolean endsLow =
          own.from().isShorterThan(from) && !own.from().isShorterThan(from.minus(near));
      boolean endsHigh = own.to().isLongerThan(to) && !own.to().isLongerThan(to.plus(near));
      from = endsLow ? own.from() : from;
      to = endsHigh ? own.to() : to;
    }
    return new Range(from, to);
  }

  /** How far the first part is moved out of the second to be seen apart from it. */
  Length apart() {
    Axis axis = joint.entry().axis();
    return core().size(axis).plus(beside());
  }
}
