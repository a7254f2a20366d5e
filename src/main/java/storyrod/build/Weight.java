package storyrod.build;

import java.util.List;
import storyrod.description.SheetSize;
import storyrod.description.StockEntry;
import storyrod.measure.Length;
import storyrod.measure.Rational;
import storyrod.piece.KeptBoard;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** Roughly what is lifted, to tell when it takes two. */
final class Weight {
  /**
   * One person's load at its best, in kg: the load constant of NIOSH Publication 94-110 (memory).
   */
  private static final double ONE_PERSON_KG = 23;

  /** Where a stock gives no density, in kg/m³: between softwood and dense hardwood (memory). */
  private static final Rational USUAL = Rational.of(700, 1);

  private static final SheetSize USUAL_SHEET = new SheetSize(Length.inches(96), Length.inches(48));
  private static final double MM3_PER_M3 = 1e9;

  private final Piece piece;

  Weight(Piece piece) {
    this.piece = piece;
  }

  boolean isHeavy(Operation operation) {
    return switch (operation.verb()) {
      case BLANK, SIZE -> comesOffASheet(operation) && sheetKg(part(operation)) > ONE_PERSON_KG;
      case FIT -> isHeavy(operation.parts());
      case CHOOSE, MARK -> false;
      case MILL, KEEP, REJOIN, CUT, DRILL, SAND, MOUNT, TEST, FINISH -> false;
      case PRE_FINISH -> false;
      case DRY_FIT, TRIM, TRIAL_FIT -> false;
    };
  }

  private boolean comesOffASheet(Operation operation) {
    boolean blankDid = piece.keptBoard(operation.target()).filter(KeptBoard::isSawn).isPresent();
    return Traits.isSheet(part(operation))
        && piece.keptAs(operation.target()).isEmpty()
        && blankDid == (operation.verb() == Verb.BLANK);
  }

  boolean isHeavy(List<String> parts) {
    return kg(parts) > ONE_PERSON_KG;
  }

  /** What parts weigh together, by their boxes. */
  double kg(List<String> parts) {
    return parts.stream().map(piece::part).mapToDouble(this::kg).sum();
  }

  private Part part(Operation operation) {
    return piece.part(operation.target());
  }

  private double kg(Part part) {
    return part.box().volumeMm3() / MM3_PER_M3 * density(part.stock());
  }

  private static double sheetKg(Part part) {
    SheetSize sheet = part.stock().sheet().orElse(USUAL_SHEET);
    return sheet.length().toMm()
        * sheet.width().toMm()
        * part.finishedThickness().toMm()
        / MM3_PER_M3
        * density(part.stock());
  }

  private static double density(StockEntry stock) {
    return stock.density().map(located -> located.value()).orElse(USUAL).toDouble();
  }
}
