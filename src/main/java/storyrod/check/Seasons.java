package storyrod.check;

import java.util.Locale;
import java.util.OptionalDouble;
import storyrod.geometry.Axis;
import storyrod.measure.Length;
import storyrod.measure.Unit;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.wood.Climate;
import storyrod.wood.Climates;
import storyrod.wood.StockWood;

/** How solid wood moves between the seasons of the room in which a piece stands; lengths in mm. */
final class Seasons {
  private final Piece piece;
  private final Climate climate;

  Seasons(Piece piece) {
    this.piece = piece;
    this.climate = Climates.of(piece.description().climate());
  }

  Climate climate() {
    return climate;
  }

  /** Whether a part grows and shrinks along an axis: it is solid, and the axis is not its grain. */
  static boolean moves(Part part, Axis axis) {
    return isSolid(part) && part.length() != axis;
  }

  private static boolean isSolid(Part part) {
    return part.stock().kind() == storyrod.description.StockKind.SOLID;
  }

  /** What a width grows from the driest to the dampest season; none where nobody knows. */
  OptionalDouble wholeYear(Part part, Length width) {
    return change(part, width, climate.dry().moisture(), climate.damp().moisture());
  }

  /** What a width grows from the mean of the year, when the piece is built, to its dampest time. */
  OptionalDouble swelling(Part part, Length width) {
    return change(part, width, climate.meanMoisture(), climate.damp().moisture());
  }

  /** What a width shrinks from the mean of the year to its driest time. */
  OptionalDouble shrinking(Part part, Length width) {
    OptionalDouble change = change(part, width, climate.meanMoisture(), climate.dry().moisture());
    return change.isPresent() ? OptionalDouble.of(-change.getAsDouble()) : change;
  }

  private static OptionalDouble change(Part part, Length width, double from, double to) {
    return StockWood.change(part.stock(), width.toMm(), from, to);
  }

  /** A computed movement for a reader: {@code 3/32 in}, {@code 2.4 mm}. */
  String print(double mm) {
    return piece.description().format().unit() == Unit.INCH
        ? String.format(Locale.ROOT, "%.2f in", mm / 25.4)
        : String.format(Locale.ROOT, "%.1f mm", mm);
  }

  /** {@code from 6.2 % of moisture to 10.9 %}. */
  String span() {
    return String.format(
        Locale.ROOT,
        "from %.1f %% of moisture in the dry season to %.1f %% in the damp one",
        climate.dry().moisture(),
        climate.damp().moisture());
  }
}
