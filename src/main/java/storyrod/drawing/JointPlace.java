package storyrod.drawing;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Cylinder;
import storyrod.geometry.Face;
import storyrod.geometry.Lazy;
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

/** Where a joint lies in the piece, and how much of its two parts a drawing of it shows. */
public final class JointPlace {
  /** No further apart than this two holes of a row are shown together. */
  private static final double NEXT_HOLE_MM = 60;

  private static final List<Double> SHARES = List.of(0.5, 0.25, 0.75, 0.1, 0.9);

  private final Joint joint;
  private final JointPart first;
  private final JointPart second;
  private final List<Cylinder> pockets;
  private final Lazy<Face> sectionFace = new Lazy<>(this::acrossOrAlong);
  private final Lazy<JointWindow> window = new Lazy<>(() -> JointWindow.of(this));

  private JointPlace(Joint joint, JointPart first, JointPart second, List<Cylinder> pockets) {
    this.joint = joint;
    this.first = first;
    this.second = second;
    this.pockets = pockets;
  }

  static JointPlace of(Piece piece, Joint joint) {
    Part first = piece.part(joint.first());
    Part second = piece.part(joint.second());
    List<JointPart> parts =
        List.of(JointPart.of(joint, first, second), JointPart.of(joint, second, first));
    List<Cylinder> pockets =
        parts.stream().flatMap(each -> JointPockets.of(each, piece).stream()).toList();
    return new JointPlace(joint, parts.getFirst(), parts.getLast(), pockets);
  }

  public Joint joint() {
    return joint;
  }

  /** The part that goes in, is fastened, or lies on. */
  public JointPart first() {
    return first;
  }

  /** The part that takes it. */
  public JointPart second() {
    return second;
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

  /** Its pocket holes and the ways of their screws. */
  List<Cylinder> pockets() {
    return pockets;
  }

  /** The axis square to where the two meet. */
  Axis normal() {
    return joint.firstFace().axis();
  }

  /** The axis along which the two meet for longer. */
  Axis longer() {
    List<Axis> inPlane = DimensionSides.inPlane(joint.firstFace());
    Box contact = joint.contact();
    return contact.size(inPlane.get(0)).isLongerThan(contact.size(inPlane.get(1)))
        ? inPlane.get(0)
        : inPlane.get(1);
  }

  Axis shorter() {
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
    return sectionFace.get();
  }

  private Face acrossOrAlong() {
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
    return !pockets.isEmpty();
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

  /** What is shown: the joint with some of both parts around it, and ends that are near. */
  Box window() {
    return window.get().all();
  }

  /** How far the first part is moved out of the second to be seen apart from it. */
  Length apart() {
    Axis axis = joint.entry().axis();
    return window.get().core().size(axis).plus(window.get().beside());
  }

  /** What is worked out of the joint and its parts is the same where they are. */
  @Override
  public boolean equals(Object other) {
    return other instanceof JointPlace that
        && joint.equals(that.joint)
        && first.equals(that.first)
        && second.equals(that.second)
        && pockets.equals(that.pockets);
  }

  @Override
  public int hashCode() {
    return Objects.hash(joint, first, second, pockets);
  }
}
