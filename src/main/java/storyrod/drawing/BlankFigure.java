package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Balloon;
import storyrod.drawing.Drawing.Element;
import storyrod.piece.Mark;
import storyrod.piece.Piece;

/** A blank with its numbered cuts, as its own drawing shows it, in a cell of a strip. */
record BlankFigure(Mark of, Piece piece) implements StripCell {
  private static final double STEP_MM = 6;
  private static final double EDGE_MM = 1;

  /** A mark further from the wood than this would be taken for that of something else. */
  private static final double FAR_MM = 24;

  /** As wide it can be read. */
  private static final double NARROW_MM = 165;

  @Override
  public String mark() {
    return of.mark();
  }

  @Override
  public List<String> captions() {
    return List.of();
  }

  @Override
  public double shape() {
    return of.shown().finishedLength().toMm() / piece.blankWidth(of.shown()).toMm();
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
    return BlankDrawing.draw(of, piece, new Size(widthMm, heightMm));
  }

  @Override
  public List<Element> in(Bounds cell) {
    Drawing drawn = drawn(cell.width(), cell.height());
    List<Element> elements = new ArrayList<>();
    drawn.elements().forEach(each -> elements.add(Moved.by(each, cell.left(), cell.top())));
    balloon(elements, BlankDrawing.wood(elements), cell).ifPresent(elements::add);
    return elements;
  }

  /** As close to the wood as can be where nothing else stands, below before above. */
  private Optional<Balloon> balloon(List<Element> drawn, Bounds wood, Bounds cell) {
    Paper paper = new Paper();
    drawn.forEach(paper::add);
    return DoubleStream.iterate(
            Lowering.BALLOON_RADIUS + EDGE_MM, off -> off < FAR_MM, off -> off + STEP_MM)
        .boxed()
        .flatMap(off -> Stream.of(wood.bottom() + off, wood.top() - off))
        .filter(y -> Math.abs(y - middle(cell)) + Lowering.BALLOON_RADIUS <= cell.height() / 2)
        .flatMap(y -> row(wood, y))
        .filter(paper::hasRoomFor)
        .findFirst();
  }

  private static double middle(Bounds cell) {
    return (cell.top() + cell.bottom()) / 2;
  }

  private Stream<Balloon> row(Bounds wood, double y) {
    double tip = y > wood.bottom() ? wood.bottom() - 2 * EDGE_MM : wood.top() + 2 * EDGE_MM;
    return DoubleStream.iterate(wood.left(), x -> x < wood.right(), x -> x + STEP_MM)
        .mapToObj(x -> new Balloon(new At(x + STEP_MM, y), new At(x + STEP_MM, tip), of.mark()));
  }
}
