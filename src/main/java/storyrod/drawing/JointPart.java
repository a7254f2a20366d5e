package storyrod.drawing;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.piece.Comb;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.InPlace;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.PocketHoles;
import storyrod.piece.Slanted;
import storyrod.piece.Slots;
import storyrod.piece.SplineSlot;

/**
 * One of the two parts of a joint, with those of its cuts that make the joint.
 *
 * @param part as it stands in the piece
 */
public record JointPart(Part part, List<Cut> cuts) {
  public JointPart {
    cuts = List.copyOf(cuts);
  }

  /** Where an entry stands for several joints, the place tells which cut is whose. */
  static JointPart of(Joint joint, Part part, Part other) {
    return new JointPart(
        part,
        part.cuts().stream()
            .filter(cut -> cut.at().equals(joint.at()) || isShared(cut, other))
            .filter(cut -> part.pose().isTurned() || isAt(joint, cut))
            .toList());
  }

  /** Whether several joints made it together, so that it bears the place of one of them only. */
  private static boolean isShared(Cut cut, Part other) {
    return cut instanceof Cut.Trench trench
        && !trench.alsoFor().isEmpty()
        && trench.isFor(other.name());
  }

  private static boolean isAt(Joint joint, Cut cut) {
    return box(cut).map(box -> touches(box, joint.contact())).orElse(true);
  }

  private static boolean touches(Box one, Box other) {
    return Arrays.stream(Axis.values())
        .allMatch(
            axis ->
                !one.on(axis).from().isLongerThan(other.on(axis).to())
                    && !other.on(axis).from().isLongerThan(one.on(axis).to()));
  }

  /** Whether its cuts lie in the frame of the piece. */
  boolean isSquare() {
    return !part.pose().isTurned();
  }

  /** The box round what a cut makes, or leaves where that is a tenon; none where no box tells. */
  static Optional<Box> box(Cut cut) {
    return switch (cut) {
      case Cut.Trench trench -> Optional.of(trench.removed());
      case Cut.Tenon tenon -> Optional.of(tenon.tenon());
      case Comb comb -> Optional.of(comb.end());
      case Dovetails row -> Optional.of(row.end());
      case Slanted.Housing housing -> Optional.of(housing.removed());
      case Slots slots -> Optional.of(slots.around());
      case Cut.Holes holes -> Optional.of(JointRow.around(holes));
      case PocketHoles pockets -> Optional.of(JointRow.around(pockets));
      case Cut.Shaped shaped -> Optional.empty();
      case Cut.Roundover roundover -> Optional.empty();
      case InPlace inPlace -> Optional.empty();
      case Slanted.Slope slope -> Optional.empty();
      case SplineSlot slot -> Optional.empty();
    };
  }
}
