package storyrod.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Joint;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** Two faces that look at each other with a gap between them that nobody can have meant. */
final class NearMiss implements Check {
  /** Less than this is what rounding leaves. */
  private static final Length NOTHING = Length.micrometres(50);

  @Override
  public String code() {
    return "near-miss";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "Two parts of one body that no joint connects have a gap between them that is narrower"
            + " than the saw's kerf: mostly one of them was meant to reach the other.",
        "Our own rule; the kerf is the shop's, or 1/8 in.",
        "Drawers, doors, loose shelves, kept cutouts and parts that lean are left out, for gaps"
            + " round them are meant.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    Nesting nesting = Nesting.of(piece);
    List<Part> fixed =
        piece.parts().stream()
            .filter(part -> !part.pose().isTurned() && piece.keptAs(part.name()).isEmpty())
            .toList();
    Set<Set<String>> joined = joined(piece);
    List<Diagnostic> found = new ArrayList<>();
    for (int i = 0; i < fixed.size(); i++) {
      for (int j = i + 1; j < fixed.size(); j++) {
        Part one = fixed.get(i);
        Part two = fixed.get(j);
        if (nesting.looseUnit(one.name()).equals(nesting.looseUnit(two.name()))
            && !joined.contains(Set.of(one.name(), two.name()))) {
          gap(piece, one.box(), two.box()).ifPresent(g -> found.add(finding(piece, one, two, g)));
        }
      }
    }
    return found;
  }

  private static Set<Set<String>> joined(Piece piece) {
    Set<Set<String>> joined = new LinkedHashSet<>();
    for (Joint joint : piece.joints()) {
      if (!joint.first().equals(joint.second())) {
        joined.add(Set.of(joint.first(), joint.second()));
      }
    }
    return joined;
  }

  /** A gap between two faces, seen from the first box. */
  private record Gap(Face face, Length width) {}

  private static Optional<Gap> gap(Piece piece, Box one, Box two) {
    return Stream.of(Face.values())
        .filter(face -> looksAt(face.axis(), one, two))
        .map(face -> new Gap(face, width(face, one, two)))
        .filter(gap -> gap.width().isLongerThan(NOTHING))
        .filter(gap -> gap.width().isShorterThan(piece.description().shop().kerf()))
        .findFirst();
  }

  private static Length width(Face face, Box one, Box two) {
    return two.at(face.opposite()).minus(one.at(face)).times(face.sign());
  }

  /** Whether the two would meet if one were moved along an axis. */
  private static boolean looksAt(Axis axis, Box one, Box two) {
    return Stream.of(Axis.values())
        .filter(other -> other != axis)
        .allMatch(other -> one.on(other).overlaps(two.on(other)));
  }

  private Diagnostic finding(Piece piece, Part one, Part two, Gap gap) {
    LengthFormat format = piece.description().format();
    return Diagnostic.warning(
            code(),
            one.at(),
            "%s.%s and %s.%s miss each other by %s"
                .formatted(
                    one.name(),
                    gap.face().word(),
                    two.name(),
                    gap.face().opposite().word(),
                    format.formatWithUnit(gap.width())))
        .also(two.at(), two.name() + " is defined here")
        .hint(
            "let one begin where the other ends, by its face; if the gap is meant, make it wider"
                + " than the saw's kerf, "
                + format.formatWithUnit(piece.description().shop().kerf()));
  }
}
