package storyrod.check;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import storyrod.check.Hollow.Use;
import storyrod.description.Diagnostic;
import storyrod.geometry.Convex;
import storyrod.geometry.Cylinder;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** A screw that ends in a slot or a notch, where its thread finds no wood. */
final class ScrewHold implements Check {
  /** In how many steps the way of a screw is gone along. */
  private static final int STEPS = 200;

  private static final double TELL = 0.25;
  private static final double HOLDS = 0.5;

  @Override
  public String code() {
    return "screw-hold";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "The thread of a screw lies in wood, and no more than a quarter of it in a notch or a"
            + " cutout, nor half of it in another part's groove; beyond half it holds nothing.",
        "Common practice.",
        "A screw through a curved or slanted side is the matter of breaks-out. It looks along"
            + " the screw's axis. Screws of hardware whose holes are not described are"
            + " unknown.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    Hollows hollows = new Hollows(piece);
    return piece.parts().stream().flatMap(part -> findings(piece, part, hollows.of(part))).toList();
  }

  private Stream<Diagnostic> findings(Piece piece, Part part, List<Hollow> hollows) {
    return hollows.stream()
        .filter(each -> each.use() == Use.THREAD || each.use() == Use.BRAD)
        .flatMap(screw -> finding(piece, screw, emptyFor(screw, hollows)).stream());
  }

  private static List<Hollow> emptyFor(Hollow screw, List<Hollow> hollows) {
    return hollows.stream()
        .filter(each -> each.use() == Use.OPEN || each.use() == Use.TAKEN)
        .filter(each -> !each.isMeantBy(screw))
        .filter(each -> screw.depthIn(each).isPositive())
        .toList();
  }

  private Optional<Diagnostic> finding(Piece piece, Hollow screw, List<Hollow> empty) {
    return screw.forms().stream()
        .map(form -> ((Convex.Rod) form.bodies().getFirst()).bore())
        .max(Comparator.comparingDouble(bore -> lost(bore, empty)))
        .filter(bore -> lost(bore, empty) > (isBare(empty) ? TELL : HOLDS))
        .map(bore -> told(piece, screw, bore, empty));
  }

  /** The share of a bore's axis that lies in hollows. */
  private static double lost(Cylinder bore, List<Hollow> empty) {
    if (empty.isEmpty()) {
      return 0;
    }
    long lost =
        IntStream.range(0, STEPS)
            .mapToDouble(i -> bore.depthMm() * (i + 0.5) / STEPS)
            .mapToObj(deep -> bore.mouth().add(bore.direction().multiply(deep)))
            .filter(at -> empty.stream().anyMatch(hollow -> hollow.holds(at)))
            .count();
    return (double) lost / STEPS;
  }

  /** Whether nothing lies there; what pins the edge of a panel is told by hole-meets as well. */
  private static boolean isBare(List<Hollow> empty) {
    return empty.stream().anyMatch(each -> each.use() == Use.OPEN);
  }

  private Diagnostic told(Piece piece, Hollow screw, Cylinder bore, List<Hollow> empty) {
    LengthFormat format = piece.description().format();
    Part part = screw.part();
    Length all = Length.nearest(bore.depthMm());
    Length held = Length.nearest(bore.depthMm() * (1 - lost(bore, empty)));
    String message =
        "of %s of %s in %s only %s lie in wood, the rest in %s"
            .formatted(
                format.formatWithUnit(all),
                screw.cut().forWhat().orElseThrow(),
                part.name(),
                format.formatWithUnit(held),
                empty.getFirst().name());
    boolean isLoose = screw.use() == Use.THREAD && lost(bore, empty) > HOLDS;
    Diagnostic finding =
        isLoose
            ? Diagnostic.error(code(), screw.cut().at(), message)
            : Diagnostic.warning(code(), screw.cut().at(), message);
    return finding
        .also(empty.getFirst().cut().at(), "the other is asked for here")
        .also(part.at(), part.name() + " is defined here")
        .hint("move the screw to where it meets wood over its whole length, or take a longer one");
  }
}
