package storyrod.drawing;

import java.util.List;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.Element;
import storyrod.geometry.Range;
import storyrod.piece.Part;

/**
 * A board that is glued up or sawn apart, seen on its face: its staves or strips with the glue
 * lines between them, an arrow where each clamp presses, what comes off toned, and its sizes.
 *
 * @param marks of all parts for which it stands
 * @param largest the most mm on the paper for one of the board
 * @param isUpright whether its grain runs down the paper; none that is clamped stands so
 */
record BoardFigure(
    BoardPlan plan,
    Notation notation,
    List<String> captions,
    List<String> marks,
    double largest,
    boolean isUpright)
    implements StripCell {
  /** What its balloon takes at the left. */
  private static final double BALLOON_MM = 13;

  private static final double EDGE_MM = 1;

  /** The board's own height at least, and where its width is dimensioned. */
  private static final double LEAST_MM = 6.5;

  private static final double DIMENSIONED_MM = 15;

  /** As large as its cell has room. */
  static BoardFigure of(BoardPlan plan, Notation notation, List<String> captions, List<Part> same) {
    List<String> marks = same.stream().map(Part::mark).distinct().toList();
    return new BoardFigure(plan, notation, captions, marks, Double.POSITIVE_INFINITY, false);
  }

  BoardFigure atMost(double factor) {
    return new BoardFigure(plan, notation, captions, marks, factor, isUpright);
  }

  /** The same, standing as it fills a column best: its grain down the paper if it is long. */
  BoardFigure upright() {
    boolean isLong = plan.length().compareTo(plan.width()) > 0 && plan.clampsMm().isEmpty();
    return new BoardFigure(plan, notation, captions, marks, largest, isLong);
  }

  /** What runs across the paper. */
  private double levelMm() {
    return (isUpright ? plan.width() : plan.length()).toMm();
  }

  private double downMm() {
    return (isUpright ? plan.length() : plan.width()).toMm();
  }

  /** The sizes that are dimensioned below it. */
  List<Range> level() {
    return isUpright ? plan.across() : plan.along();
  }

  /** The sizes that are dimensioned at its right. */
  List<Range> down() {
    return isUpright ? plan.along() : plan.across();
  }

  private double above() {
    return EDGE_MM + (plan.clampsMm().isEmpty() ? 0 : PlacedBoard.ARROW_MM + PlacedBoard.OFF_MM);
  }

  private double below() {
    double arrows = plan.clampsMm().isEmpty() ? 0 : PlacedBoard.ARROW_MM + PlacedBoard.OFF_MM;
    return Math.max(arrows, tiers(level())) + EDGE_MM + captions.size() * SmallLines.LINE_MM;
  }

  private double right() {
    return tiers(down()) + EDGE_MM;
  }

  private static double tiers(List<Range> sizes) {
    return sizes.isEmpty()
        ? 0
        : TieredDimensions.FIRST_MM + (sizes.size() - 1) * TieredDimensions.NEXT_MM + EDGE_MM;
  }

  @Override
  public String mark() {
    return plan.part().mark();
  }

  @Override
  public double shape() {
    return levelMm() / downMm();
  }

  @Override
  public double heightMm(double cellMm) {
    double wide = (cellMm - BALLOON_MM - right()) / shape();
    return Math.min(wide, largest * downMm()) + above() + below();
  }

  @Override
  public double leastMm() {
    return above() + (down().isEmpty() ? LEAST_MM : DIMENSIONED_MM) + below();
  }

  @Override
  public List<Element> in(Bounds cell) {
    boolean isTooSlim =
        Strips.isNarrow(cell.width())
            && !isUpright
            && down().stream().anyMatch(size -> beyond(size, factor(cell)) > 0);
    BoardFigure shown =
        isTooSlim
            ? new BoardFigure(plan.withoutWidths(), notation, captions, marks, largest, isUpright)
            : this;
    At origin = new At(cell.left() + BALLOON_MM, cell.top() + above());
    List<Element> placed = new PlacedBoard(shown, origin, shown.factor(cell)).elements(cell);
    return Stream.concat(placed.stream(), captions(cell).stream()).toList();
  }

  /** Smaller where figures that a short size has no room for would stand out of the cell. */
  private double factor(Bounds cell) {
    double factor = factor(cell, right());
    return factor(cell, Math.max(right(), figuresMm(factor)));
  }

  private double factor(Bounds cell, double rightMm) {
    double fitting =
        Math.min(
            (cell.width() - BALLOON_MM - rightMm) / levelMm(),
            (cell.height() - above() - below()) / downMm());
    return Math.min(fitting, largest);
  }

  /** How far the figures below a board of a scale run out at its right. */
  private double figuresMm(double factor) {
    return level().stream()
        .mapToDouble(size -> beyond(size, factor) - (levelMm() - size.to().toMm()) * factor)
        .map(run -> run + EDGE_MM)
        .max()
        .orElse(0);
  }

  private double beyond(Range size, double factor) {
    At to = new At(size.length().toMm() * factor, 0);
    String figures = notation.format().format(size.length());
    return DimensionLayout.of(new Dimension(new At(0, 0), to, true, 0, figures, size.length()))
        .beyond();
  }

  private List<Element> captions(Bounds cell) {
    return SmallLines.endingAt(new At(cell.left() + EDGE_MM, cell.bottom() - EDGE_MM), captions);
  }
}
