package storyrod.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.geometry.Axis;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.Joint;
import storyrod.piece.Piece;
import storyrod.piece.Slanted;
import storyrod.piece.Slots;
import storyrod.piece.SplineSlot;

/** Screws of one joint that stand so close that the wood between them splits. */
final class CrowdedFasteners implements Check {
  private static final Length SCREWS = Length.inches(1);

  /** Two pocket screws in a rail 1 1/2 in wide, a quarter of its width from each edge. */
  private static final Length POCKET_SCREWS = Length.inch(3, 4);

  @Override
  public String code() {
    return "crowded-fasteners";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "Screws of one joint stand at least 1 in apart, pocket screws at least 3/4 in, "
            + "as two do in a rail 1 1/2 in wide.",
        "Common practice.",
        "Screws of different joints are not held against each other.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    return piece.joints().stream().flatMap(joint -> finding(piece, joint).stream()).toList();
  }

  /** A row of fasteners: how far apart they stand, and how far they should. */
  private record Row(Length apart, Length least) {
    boolean isCrowded() {
      return apart.isShorterThan(least);
    }
  }

  private Optional<Diagnostic> finding(Piece piece, Joint joint) {
    return joint.driven().stream()
        .flatMap(driven -> piece.part(driven.part()).cuts().stream())
        .filter(cut -> cut.at().equals(joint.at()))
        .flatMap(CrowdedFasteners::row)
        .filter(Row::isCrowded)
        .findFirst()
        .map(row -> finding(piece, joint, row));
  }

  private static Stream<Row> row(Cut cut) {
    return switch (cut) {
      case Cut.Trench trench -> Stream.empty();
      case Cut.Shaped shaped -> Stream.empty();
      case Cut.Roundover roundover -> Stream.empty();
      case Cut.Tenon tenon -> Stream.empty();
      case Cut.Comb comb -> Stream.empty();
      case Cut.Holes holes when holes.count() > 1 -> Stream.of(new Row(holes.step().abs(), SCREWS));
      case Cut.Holes holes -> Stream.empty();
      case Cut.PocketHoles pockets when pockets.centres().size() > 1 ->
          Stream.of(new Row(apart(pockets), POCKET_SCREWS));
      case Cut.PocketHoles pockets -> Stream.empty();
      case Slanted.Slope slope -> Stream.empty();
      case Slanted.Housing housing -> Stream.empty();
      case Slots slots -> Stream.empty();
      case Dovetails dovetails -> Stream.empty();
      case SplineSlot slot -> Stream.empty();
      case Cut.InPlace inPlace -> Stream.empty();
    };
  }

  private static Length apart(Cut.PocketHoles pockets) {
    Axis along = Axis.other(pockets.from().axis(), pockets.end().axis());
    return pockets.centres().get(1).on(along).minus(pockets.centres().get(0).on(along)).abs();
  }

  private Diagnostic finding(Piece piece, Joint joint, Row row) {
    return Diagnostic.warning(
            code(),
            joint.at(),
            "%s of %s and %s stand only %s apart"
                .formatted(
                    joint.type(),
                    joint.first(),
                    joint.second(),
                    piece.description().format().formatWithUnit(row.apart)))
        .hint(
            "take fewer: they should be at least %s apart"
                .formatted(piece.description().format().formatWithUnit(row.least)));
  }
}
