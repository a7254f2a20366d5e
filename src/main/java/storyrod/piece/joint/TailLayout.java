package storyrod.piece.joint;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.description.Entry;
import storyrod.description.Key;
import storyrod.description.StockEntry;
import storyrod.description.StockKind;
import storyrod.description.ValueType;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.Rational;
import storyrod.piece.Dovetails.Tail;
import storyrod.piece.Meeting;
import storyrod.wood.Species;
import storyrod.wood.SpeciesTable;

/**
 * How tails are set out over the width of their part: equal tails with equal pins between them and
 * a half pin at each edge, all given at the end of the tails, where pins are thin.
 *
 * @param length how long the tails are
 * @param across the axis along which they stand over the whole width of their part
 */
record TailLayout(Meeting meeting, Length length, Axis across) {
  static final Key TAILS =
      Key.required("tails", new ValueType.Count(1), "How many tails, all equally wide.");
  static final Key SLOPE =
      Key.optional(
          "slope",
          new ValueType.Amount(),
          "How steep their sides are, 7 for 1:7; 8 for hardwoods, 6 for softwoods and 7 for"
              + " anything else if not said.");
  static final Key PIN =
      Key.optional(
          "pin",
          new ValueType.LengthValue(false),
          "How wide the pins are at their thin side; half of the thinner part's thickness if not"
              + " said.");
  static final Key HALF_PIN =
      Key.optional(
          "half-pin",
          new ValueType.LengthValue(false),
          "The same of the half pins at both edges; half of the thinner part's thickness if not"
              + " said.");

  private static final Rational HARDWOOD = Rational.of(8, 1);
  private static final Rational SOFTWOOD = Rational.of(6, 1);
  private static final Rational ELSE = Rational.of(7, 1);

  Rational slope() {
    return meeting
        .entry()
        .find("slope", Rational.class)
        .orElseGet(() -> usual(meeting.first().stock()));
  }

  /** Common practice: steeper sides hold in soft wood, and crush or chip in hard. */
  private static Rational usual(StockEntry stock) {
    Optional<Species> wood =
        stock.kind() == StockKind.SOLID ? SpeciesTable.find(stock.species()) : Optional.empty();
    return wood.map(Species::group)
        .map(group -> group == Species.Group.HARDWOOD ? HARDWOOD : SOFTWOOD)
        .orElse(ELSE);
  }

  private Range width() {
    return meeting.first().box().on(across);
  }

  private int count() {
    return entry().expect("tails", Integer.class);
  }

  private Entry entry() {
    return meeting.entry();
  }

  private Length pin() {
    return entry().findLength("pin").orElseGet(this::half);
  }

  private Length halfPin() {
    return entry().findLength("half-pin").orElseGet(this::half);
  }

  private Length half() {
    Length one = meeting.first().shoulder().size(meeting.first().thickness());
    Length two = meeting.second().shoulder().size(meeting.second().thickness());
    return one.min(two).dividedBy(2, RoundingMode.HALF_EVEN);
  }

  /** What pins leave for all tails. */
  private Length forTails() {
    return width().length().minus(pin().times(count() - 1L)).minus(halfPin().times(2));
  }

  private Length tail() {
    return forTails().dividedBy(count(), RoundingMode.FLOOR);
  }

  /** How much a tail narrows at each side, from its end to the baseline. */
  private Length narrowing() {
    return length.times(Rational.ONE.dividedBy(slope()), RoundingMode.HALF_EVEN);
  }

  /**
   * What rounding leaves is in the last half pin of the joint as it was written, so that one turned
   * or mirrored is the same to the tick.
   */
  List<Tail> tails() {
    boolean isTurned =
        Stream.of(Face.RIGHT, Face.BACK, Face.TOP)
            .map(entry()::placed)
            .anyMatch(face -> face.axis() == across && face.sign() < 0);
    return isTurned ? upwards().reversed().stream().map(this::opposite).toList() : upwards();
  }

  private Tail opposite(Tail tail) {
    return new Tail(opposite(tail.narrow()), opposite(tail.wide()));
  }

  private Range opposite(Range range) {
    Length both = width().from().plus(width().to());
    return new Range(both.minus(range.to()), both.minus(range.from()));
  }

  private List<Tail> upwards() {
    List<Tail> tails = new ArrayList<>();
    Length at = width().from().plus(halfPin());
    for (int i = 0; i < count(); i++) {
      Range wide = new Range(at, at.plus(tail()));
      Range narrow = new Range(wide.from().plus(narrowing()), wide.to().minus(narrowing()));
      tails.add(new Tail(narrow, wide));
      at = wide.to().plus(pin());
    }
    return tails;
  }

  /** Tails must have some width left at their baseline. */
  List<Diagnostic> faults() {
    Length narrow = tail().minus(narrowing().times(2));
    return narrow.isPositive() ? List.of() : List.of(noRoom());
  }

  private Diagnostic noRoom() {
    String pins =
        count() == 1
            ? ""
            : ", %d pin%s of %s"
                .formatted(count() - 1, count() == 2 ? "" : "s", meeting.print(pin()));
    return Diagnostic.error(
            "dovetail-layout",
            entry().at("tails"),
            "%d tail%s%s and two half pins of %s do not fit in %s: they narrow by %s at each side"
                .formatted(
                    count(),
                    count() == 1 ? "" : "s",
                    pins,
                    meeting.print(halfPin()),
                    meeting.print(width().length()),
                    meeting.print(narrowing())))
        .also(meeting.first().at(), meeting.first().name() + " is defined here")
        .hint(
            "take fewer tails or thinner pins; tails two to three times as wide as pins are usual");
  }
}
