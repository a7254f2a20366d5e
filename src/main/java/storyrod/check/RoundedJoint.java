package storyrod.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** A part whose printed length, less the printed depths of its joints, misses what lies between. */
final class RoundedJoint implements Check {
  @Override
  public String code() {
    return "rounded-joint";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "The printed length of a part, less the printed depths of the slots that its ends fill or"
            + " the printed lengths of its tenons, is what is printed from shoulder to shoulder, or"
            + " misses it by less than 1/64 in (0.4 mm).",
        "Follows from rounding: each printed size is off by up to half of the finest fraction.",
        "It looks at ends that go down to the bottom of a slot, and at tenons and tongues. An end"
            + " with room before the bottom holds nothing apart, and parts that lean are left out.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    return piece.parts().stream()
        .filter(part -> !part.pose().isTurned())
        .flatMap(part -> Stream.of(part.length(), part.width()).flatMap(a -> row(piece, part, a)))
        .filter(row -> !row.off().abs().isShorterThan(RoundedRow.SEEN))
        .map(this::finding)
        .toList();
  }

  /** An end of a part in another one, as deep as it goes in. */
  private record End(Joint joint, Length depth) {}

  /** What lies between the faces that a part meets, and what its ends add to that. */
  private record Row(Part part, Axis axis, List<End> ends, LengthFormat format) {
    Length between() {
      return part.shoulder().size(axis);
    }

    Length made() {
      Length whole = format.rounded(part.box().size(axis));
      return ends.stream().map(end -> format.rounded(end.depth)).reduce(whole, Length::minus);
    }

    Length off() {
      return made().minus(format.rounded(between()));
    }

    String depths() {
      return ends.stream()
          .map(end -> format.format(end.depth))
          .collect(Collectors.joining(" and "));
    }
  }

  /** The row along an axis, if something is known of each end that a joint makes longer. */
  private static Stream<Row> row(Piece piece, Part part, Axis axis) {
    List<Face> longer =
        Stream.of(Face.of(axis, -1), Face.of(axis, 1))
            .filter(face -> reach(part, face).isPositive())
            .toList();
    List<End> ends = longer.stream().flatMap(face -> end(piece, part, face).stream()).toList();
    return ends.isEmpty() || ends.size() < longer.size()
        ? Stream.empty()
        : Stream.of(new Row(part, axis, ends, piece.description().format()));
  }

  private static Length reach(Part part, Face face) {
    return part.box().at(face).minus(part.shoulder().at(face)).times(face.sign());
  }

  private static Optional<End> end(Piece piece, Part part, Face face) {
    Length reach = reach(part, face);
    return piece.joints().stream()
        .filter(joint -> joint.first().equals(part.name()) && joint.firstFace() == face)
        .filter(joint -> isTenon(part, joint) || fills(piece.part(joint.second()), joint, reach))
        .map(joint -> new End(joint, reach))
        .findFirst();
  }

  private static boolean isTenon(Part part, Joint joint) {
    return part.cuts(Cut.Tenon.class).stream()
        .anyMatch(cut -> cut.from() == joint.firstFace() && cut.isFor(joint.second()));
  }

  private static boolean fills(Part second, Joint joint, Length reach) {
    return second.cuts(Cut.Trench.class).stream()
        .filter(cut -> cut.isFor(joint.first()) && cut.depth().equals(reach))
        .anyMatch(cut -> cut.from() == joint.firstFace().opposite());
  }

  private Diagnostic finding(Row row) {
    LengthFormat format = row.format;
    Part part = row.part;
    Diagnostic finding =
        Diagnostic.advice(
                code(),
                row.ends.getFirst().joint.at(),
                "%s is printed as %s %s, less %s for its joints: that makes %s between its shoulders, where %s is meant"
                    .formatted(
                        part.name(),
                        format.format(part.box().size(row.axis)),
                        row.axis == part.length() ? "long" : "wide",
                        row.depths(),
                        format.formatWithUnit(row.made()),
                        format.formatWithUnit(row.between())))
            .also(part.at(), part.name() + " is defined here");
    return finding.hint(
        "write a depth that prints as it is, or `printable(...)` round its formula");
  }
}
