package storyrod.check;

import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.description.ItemKind;
import storyrod.geometry.Axis;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Joint;
import storyrod.piece.Piece;

/** Brads that stand too close to each other or to an edge. */
final class BradPlaces implements Check {
  private static final Length APART = Length.inch(3, 4);
  private static final Length FROM_EDGE = Length.inch(1, 8);

  @Override
  public String code() {
    return "brad-places";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "Brads of one joint, spread evenly along it, stand at least 3/4 in apart, and at least 1/8"
            + " in of wood lies on both sides of them where the parts meet.",
        "Common practice.",
        "It takes brads to be driven along the middle of the joint; nothing is drilled for them.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    return piece.joints().stream().flatMap(joint -> findings(piece, joint)).toList();
  }

  private Stream<Diagnostic> findings(Piece piece, Joint joint) {
    LengthFormat format = piece.description().format();
    return joint.fasteners().stream()
        .filter(each -> piece.description().items().get(each.item()).kind() == ItemKind.BRAD)
        .flatMap(each -> Stream.of(crowded(format, joint, each.count()), narrow(format, joint)))
        .flatMap(List::stream);
  }

  private List<Diagnostic> crowded(LengthFormat format, Joint joint, int count) {
    Length apart = sides(joint).getLast().dividedBy(count, RoundingMode.FLOOR);
    if (count < 2 || !apart.isShorterThan(APART)) {
      return List.of();
    }
    return List.of(
        Diagnostic.warning(
                code(),
                joint.at(),
                "brads of %s and %s stand only %s apart"
                    .formatted(joint.first(), joint.second(), format.formatWithUnit(apart)))
            .hint("take fewer: %s or more is usual".formatted(format.formatWithUnit(APART))));
  }

  private List<Diagnostic> narrow(LengthFormat format, Joint joint) {
    Length side = sides(joint).getFirst().dividedBy(2, RoundingMode.FLOOR);
    if (!side.isShorterThan(FROM_EDGE)) {
      return List.of();
    }
    return List.of(
        Diagnostic.warning(
                code(),
                joint.at(),
                "%s and %s meet over so little that only %s of wood lies beside each brad"
                    .formatted(joint.first(), joint.second(), format.formatWithUnit(side)))
            .hint(
                "let them meet over twice %s or more".formatted(format.formatWithUnit(FROM_EDGE))));
  }

  /** The two sides of the contact, the shorter first. */
  private static List<Length> sides(Joint joint) {
    return Stream.of(Axis.values())
        .filter(axis -> axis != joint.entry().axis())
        .map(joint.contact()::size)
        .sorted()
        .toList();
  }
}
