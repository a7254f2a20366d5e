package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Balloon;
import storyrod.drawing.Drawing.Element;
import storyrod.piece.Mark;
import storyrod.piece.Piece;

/** A blank with its numbered cuts, as its own drawing shows it, in a cell of a strip. */
record BlankFigure(Mark mark, Piece piece) implements StripCell {
  private static final double STEP_MM = 6;
  private static final double EDGE_MM = 1;

  /** As wide it can be read. */
  private static final double NARROW_MM = 165;

  @Override
  public double shape() {
    return mark.shown().finishedLength().toMm() / piece.blankWidth(mark.shown()).toMm();
  }

  @Override
  public double heightMm(double widthMm) {
    return drawn(widthMm, Strip.MOST_MM).heightMm();
  }

  @Override
  public double leastMm() {
    return heightMm(NARROW_MM);
  }

  private Drawing drawn(double widthMm, double heightMm) {
    return BlankDrawing.draw(mark, piece, new Size(widthMm, heightMm));
  }

  @Override
  public List<Element> in(Bounds cell) {
    Drawing drawn = drawn(cell.width(), cell.height());
    List<Element> elements = new ArrayList<>();
    drawn.elements().forEach(each -> elements.add(Moved.by(each, cell.left(), cell.top())));
    elements.add(balloon(elements, BlankDrawing.wood(elements)));
    return elements;
  }

  /** Close below the wood, where nothing else stands. */
  private Balloon balloon(List<Element> drawn, Bounds wood) {
    Paper paper = new Paper();
    drawn.forEach(paper::add);
    double y = wood.bottom() + Lowering.BALLOON_RADIUS + EDGE_MM;
    return DoubleStream.iterate(wood.left(), x -> x < wood.right(), x -> x + STEP_MM)
        .mapToObj(x -> new At(x + STEP_MM, y))
        .map(at -> new Balloon(at, new At(at.x(), wood.bottom() - 2 * EDGE_MM), mark.mark()))
        .filter(paper::hasRoomFor)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("bug: no room for the mark of a blank"));
  }
}
