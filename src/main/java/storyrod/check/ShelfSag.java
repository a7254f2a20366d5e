package storyrod.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.description.Located;
import storyrod.description.PartEntry;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.Rational;
import storyrod.measure.Unit;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.wood.Beam;
import storyrod.wood.Beam.Ends;
import storyrod.wood.Mass;
import storyrod.wood.StockWood;

/** A shelf that bends more under its load than the eye forgives. */
final class ShelfSag implements Check {
  /** 0.02 in for each foot of span. */
  static final double LIMIT = 0.02 / 12;

  /** Spans on one support that are as good as equal: at so much the longer one bends 9 % more. */
  private static final double LIKE = 0.9;

  /** The pound avoirdupois is 0.45359237 kg exactly (international agreement of 1959). */
  private static final double KG_PER_POUND = 0.45359237;

  @Override
  public String code() {
    return "shelf-sag";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A part that lies flat and has a `load` bends by no more than 0.02 in for each foot of its"
            + " span when it is loaded; in time half as much again is added.",
        "Beam theory with the modulus of the Wood Handbook or of the stock; the limit and the"
            + " addition are common practice.",
        "The ends are taken to lie on their supports without being held, which is on the safe side;"
            + " only over a support between two spans that are alike does the part run on. What"
            + " lies on the rails of a plinth all along is left out. A strip glued along the front counts; one along the back does not.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    return piece.parts().stream()
        .flatMap(part -> load(piece, part).stream().flatMap(load -> finding(piece, part, load)))
        .toList();
  }

  /** The load of a part that lies flat on others. */
  static Optional<Located<Rational>> load(Piece piece, Part part) {
    boolean liesFlat = part.thickness() == Axis.Z && !part.pose().isTurned();
    return piece
        .description()
        .part(part.name())
        .flatMap(PartEntry::load)
        .filter(l -> liesFlat && isCarried(piece, part) && !Supports.isOnPlinth(piece, part));
  }

  /** Of a top that is described alone nothing is known of what it lies on. */
  private static boolean isCarried(Piece piece, Part shelf) {
    Length low = shelf.box().at(Face.BOTTOM);
    return piece.parts().stream()
        .anyMatch(part -> part.bounds().at(Face.BOTTOM).isShorterThan(low));
  }

  private Stream<Diagnostic> finding(Piece piece, Part shelf, Located<Rational> load) {
    return StockWood.modulus(shelf.stock()).isEmpty()
        ? Stream.of(unknown(shelf, load))
        : sag(piece, shelf, load).filter(Sag::isTooMuch).map(sag -> sags(piece, sag)).stream();
  }

  /** How far each part with a load bends; those of unknown stiffness are left out. */
  static List<Sag> all(Piece piece) {
    return piece.parts().stream()
        .flatMap(part -> load(piece, part).flatMap(load -> sag(piece, part, load)).stream())
        .toList();
  }

  private static Optional<Sag> sag(Piece piece, Part shelf, Located<Rational> load) {
    return FlatBeam.of(piece, shelf).map(beam -> sag(piece, shelf, load, beam));
  }

  private static Sag sag(Piece piece, Part shelf, Located<Rational> load, Beam beam) {
    Span span = span(piece, shelf);
    double own = Mass.density(shelf.stock()).orElse(0.0);
    double mass = load.value().toDouble() + Mass.kg(shelf.box().volumeMm3(), own);
    double perMetre = mass * Mass.GRAVITY / (shelf.finishedLength().toMm() / 1000);
    double bends = beam.deflection(span.longestMm(), perMetre, span.ends());
    return new Sag(shelf, load, span.longestMm(), bends, span.longestMm() * LIMIT);
  }

  /** The longest stretch between two supports. */
  private record Span(double longestMm, Ends ends) {}

  /** Between the faces that its ends meet or rest at, and the parts under it. */
  private static Span span(Piece piece, Part shelf) {
    Axis along = shelf.length();
    Range whole = shelf.shoulder().on(along);
    List<Length> between =
        Supports.between(piece, shelf).stream()
            .map(part -> part.bounds().on(along).middle())
            .toList();
    List<Length> ends = Stream.concat(between.stream(), Stream.of(whole.to())).toList();
    List<Double> spans = new ArrayList<>();
    Length from = whole.from();
    for (Length at : ends) {
      spans.add(at.minus(from).toMm());
      from = at;
    }
    double longest = Collections.max(spans);
    return new Span(longest, isHeldDown(spans, longest) ? Ends.TWO_SPANS : Ends.SIMPLE);
  }

  /** Whether a span beside the longest one holds its end down: an overhang does not. */
  private static boolean isHeldDown(List<Double> spans, double longest) {
    int at = spans.indexOf(longest);
    return Stream.of(at - 1, at + 1)
        .filter(beside -> beside >= 0 && beside < spans.size())
        .anyMatch(beside -> spans.get(beside) >= LIKE * longest);
  }

  static String load(Piece piece, double kg) {
    return piece.description().format().unit() == Unit.INCH
        ? String.format(Locale.ROOT, "%.0f lb", kg / KG_PER_POUND)
        : String.format(Locale.ROOT, "%.0f kg", kg);
  }

  private Diagnostic unknown(Part shelf, Located<Rational> load) {
    return Diagnostic.advice(
            "unknown-modulus",
            load.at(),
            "how far %s bends is not known: there is no modulus of elasticity for '%s'"
                .formatted(shelf.name(), shelf.stock().species()))
        .also(shelf.stock().at(), shelf.stock().name() + " is defined here")
        .hint("add `modulus:` in MPa to the stock, from the mill's data sheet");
  }

  private Diagnostic sags(Piece piece, Sag sag) {
    Seasons print = new Seasons(piece);
    Part shelf = sag.shelf();
    double thicker = shelf.finishedThickness().toMm() * Math.cbrt(sag.bends() / sag.limit());
    return Diagnostic.warning(
            code(),
            sag.load().at(),
            "%s bends by %s under %s over a span of %s, and by %s in time; %s would pass"
                .formatted(
                    shelf.name(),
                    print.print(sag.bends()),
                    load(piece, sag.load().value().toDouble()),
                    print.print(sag.span()),
                    print.print(sag.inTime()),
                    print.print(sag.limit())))
        .also(shelf.at(), shelf.name() + " is defined here")
        .hint(
            "make it %s thick, shorter, or stiffen it with a strip on edge along the front"
                .formatted(print.print(thicker)));
  }
}
