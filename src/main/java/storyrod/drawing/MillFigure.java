package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Balloon;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Ellipse;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.Drawing.Tone;
import storyrod.measure.Length;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.words.Words;

/**
 * The end of a rough blank with what is left of it when it is milled: what comes off is toned, and
 * its faces are numbered as they are trued, the flattened one below.
 *
 * @param rough the thickness as it is bought
 * @param width in the rough
 * @param planed the thickness when it is planed
 */
record MillFigure(
    Part part, Length rough, Length width, Length planed, Notation notation, List<String> captions)
    implements StripCell {
  private static final double EDGE_MM = 1;
  private static final double RING_MM = 1.9;
  private static final double OFF_MM = 0.6;
  private static final double NUMBERS_MM = 2 * RING_MM + OFF_MM;

  /** What its balloon takes at the left. */
  private static final double BALLOON_MM = 13;

  /** What its two dimensions take at the right. */
  private static final double SIZES_MM =
      TieredDimensions.FIRST_MM + TieredDimensions.NEXT_MM + 2 * EDGE_MM;

  /** How high the end is drawn, and how low it may get where it is wide or the page is full. */
  private static final double HIGH_MM = 25;

  private static final double LEAST_MM = 16;

  /** Higher it is not made for its figures' sake, which are long in both units. */
  private static final double HIGHEST_MM = 44;

  /** How high at least, where as much of its width is left out as has no room. */
  private static final double BROKEN_MM = 11;

  /** So wide a cell is at least: what fits into it stands beside the end and not below. */
  private static final double NARROW_MM = 165;

  /** The share of what comes off that the first face takes: as little as makes it flat. */
  private static final int FIRST_FACE = 2;

  /** Of a part of bought thickness that is one board; empty of any other. */
  static Optional<MillFigure> of(Piece piece, Part part) {
    Notation notation = Notation.of(piece);
    return part.stock()
        .boughtAs()
        .filter(rough -> rough.isLongerThan(part.finishedThickness()))
        .filter(rough -> !piece.isPanel(part))
        .map(rough -> of(piece, part, rough, notation));
  }

  private static MillFigure of(Piece piece, Part part, Length rough, Notation notation) {
    Words words = notation.words();
    Length width =
        piece.staveWidth(part).plus(piece.description().shop().extraWidth(part.finishedLength()));
    List<String> captions =
        List.of(
            words.say(
                "step.mill.end",
                part.mark(),
                notation.format().format(rough),
                notation.format().format(part.finishedThickness())),
            words.say("step.mill.order"));
    return new MillFigure(part, rough, width, part.finishedThickness(), notation, captions);
  }

  @Override
  public String mark() {
    return part.mark();
  }

  @Override
  public double shape() {
    return width.toMm() / rough.toMm();
  }

  private double aroundMm(double widthMm) {
    double below = isBeside(widthMm) ? 0 : below(widthMm).size() * SmallLines.LINE_MM;
    return 2 * NUMBERS_MM + 2 * EDGE_MM + below;
  }

  private List<String> below(double widthMm) {
    return Strips.isNarrow(widthMm) ? SmallLines.within(widthMm - 2 * EDGE_MM, captions) : captions;
  }

  /** Whether the captions have room at the right of the end. */
  private boolean isBeside(double widthMm) {
    if (Strips.isNarrow(widthMm)) {
      return false;
    }
    double widest =
        captions.stream()
            .mapToDouble(each -> TextSetting.of(TextStyle.SMALL, each).width())
            .max()
            .orElse(0);
    return BALLOON_MM + HIGH_MM * shape() + SIZES_MM + 2 * EDGE_MM + widest <= NARROW_MM;
  }

  @Override
  public double heightMm(double widthMm) {
    return endMm(widthMm) + aroundMm(widthMm);
  }

  /** How high the end is in a cell that is high enough. */
  private double endMm(double widthMm) {
    double wide = (widthMm - BALLOON_MM - SIZES_MM) / shape();
    return Strips.isNarrow(widthMm)
        ? Math.max(wide, leastEndMm(BROKEN_MM))
        : Math.max(Math.min(wide, HIGH_MM), leastEndMm(LEAST_MM));
  }

  @Override
  public double leastMm() {
    return leastEndMm(LEAST_MM) + aroundMm(0);
  }

  /** So high that the figures of its inner dimension end before the lines of the outer one. */
  private double leastEndMm(double fromMm) {
    return DoubleStream.iterate(fromMm, high -> high < HIGHEST_MM, high -> high + EDGE_MM)
        .filter(high -> figuresMm(high / rough.toMm()) <= 0)
        .findFirst()
        .orElse(HIGH_MM);
  }

  /** How far the figures of its planed thickness reach beyond the end at a scale. */
  private double figuresMm(double factor) {
    At to = new At(planed.toMm() * factor, 0);
    String figures = notation.format().format(planed);
    Dimension inner = new Dimension(new At(0, 0), to, true, 0, figures, planed);
    double off = rough.minus(planed).minus(flattened()).toMm() * factor;
    return DimensionLayout.of(inner).beyond() + EDGE_MM / 2 - off;
  }

  @Override
  public List<Element> in(Bounds cell) {
    double around = aroundMm(cell.width());
    double factor = Math.min(endMm(cell.width()), cell.height() - around) / rough.toMm();
    double wide = Math.min(width.toMm() * factor, cell.width() - BALLOON_MM - SIZES_MM);
    At corner = new At(cell.left() + BALLOON_MM, cell.top() + EDGE_MM + NUMBERS_MM);
    Bounds blank = Bounds.of(corner, corner.plus(wide, rough.toMm() * factor));
    Bounds board = board(blank, factor);
    Paper paper = new Paper();
    end(blank, board, wide < width.toMm() * factor - 1e-6).forEach(paper::add);
    sizes(paper, blank, board);
    List<Element> all = new ArrayList<>();
    all.add(new Group(Ink.id(part), part.mark(), part.title(), paper.elements()));
    all.add(balloon(cell, board));
    List<String> lines = below(cell.width());
    At beside = new At(blank.right() + SIZES_MM, blank.middle().y() + SmallLines.LINE_MM);
    all.addAll(SmallLines.endingAt(isBeside(cell.width()) ? beside : below(cell), lines));
    return all;
  }

  /** What the flattened face loses. */
  private Length flattened() {
    return rough.minus(planed).dividedBy(FIRST_FACE, java.math.RoundingMode.FLOOR);
  }

  /** What is left of the blank; at its left nothing is taken off yet. */
  private Bounds board(Bounds all, double factor) {
    double off = flattened().toMm() * factor;
    double bottom = all.bottom() - off;
    return new Bounds(all.left(), bottom - planed.toMm() * factor, all.right() - off, bottom);
  }

  private List<Element> end(Bounds blank, Bounds board, boolean isBroken) {
    List<Element> elements = new ArrayList<>();
    elements.add(new Area(Tone.SIDE, List.of(blank.corners())));
    elements.add(new Area(Tone.WHITE, List.of(board.corners())));
    elements.add(new Line(Role.THIN, isBroken ? openAtTheLeft(blank) : blank.outline()));
    elements.add(new Line(Role.VISIBLE, isBroken ? openAtTheLeft(board) : board.outline()));
    if (isBroken) {
      elements.add(BreakLine.of(blank.left(), blank.top(), blank.bottom()));
    }
    At middle = board.middle();
    double out = RING_MM + OFF_MM;
    elements.addAll(number(1, new At(middle.x(), blank.bottom() + out)));
    elements.addAll(number(2, new At(blank.right() + out, middle.y())));
    elements.addAll(number(3, new At(middle.x(), blank.top() - out)));
    return elements;
  }

  private static List<At> openAtTheLeft(Bounds of) {
    return List.of(
        new At(of.left(), of.top()),
        new At(of.right(), of.top()),
        new At(of.right(), of.bottom()),
        new At(of.left(), of.bottom()));
  }

  /** Its thickness planed and, further out, in the rough. */
  private void sizes(Paper paper, Bounds blank, Bounds board) {
    TieredDimensions sizes = new TieredDimensions(paper, blank, notation.format());
    sizes.place(side(board), planed, 1);
    sizes.place(side(blank), rough, 1);
  }

  private static Paper.Stretch side(Bounds of) {
    return new Paper.Stretch(new At(of.right(), of.bottom()), new At(of.right(), of.top()));
  }

  private static List<Element> number(int number, At at) {
    At base = at.plus(0, TextStyle.SMALL.sizeMm() * (TextSetting.ASCENT - 0.42));
    return List.of(
        new Ellipse(Role.THIN, at, RING_MM, RING_MM, 0, Optional.of(Tone.WHITE)),
        new Text(TextStyle.SMALL, base, Anchor.MIDDLE, true, Integer.toString(number)));
  }

  private Balloon balloon(Bounds cell, Bounds board) {
    double x = cell.left() + Lowering.BALLOON_RADIUS + EDGE_MM;
    At tip = new At(board.left() + 2 * EDGE_MM, board.middle().y());
    return new Balloon(new At(x, tip.y()), tip, part.mark());
  }

  private static At below(Bounds cell) {
    return new At(cell.left() + EDGE_MM, cell.bottom() - EDGE_MM);
  }
}
