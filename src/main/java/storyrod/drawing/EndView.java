package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.Drawing.Tone;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.words.Words;

/**
 * The end of a panel, enlarged: its first staves, with the annual rings up in one and down in the
 * next. Where they lie in a board is the board's; which way they curve is what is shown.
 *
 * @param staves how many of the staves are drawn
 * @param goesOn whether further staves follow
 * @param wide the width of a stave on the paper, in mm
 * @param thick its thickness on the paper, in mm
 */
record EndView(
    Part part, int staves, boolean goesOn, double wide, double thick, List<String> captions)
    implements CutFigure {
  private static final int MOST_STAVES = 3;
  private static final double MOST_MM = 48;
  private static final double MOST_STAVE_MM = 18;

  /** Thinner the rings cannot be told; the words say that the thickness is enlarged. */
  private static final double LEAST_THICK_MM = 4.5;

  private static final double EDGE_MM = 1;
  private static final double LINE_MM = 3.6;

  /** Between rings on the paper, and how far outside its board their middle lies. */
  private static final double RING_MM = 1.1;

  private static final double HEART = 0.2;
  private static final int POINTS = 48;

  /** Of a panel whose staves are turned so; empty of any other. */
  static Optional<EndView> of(Piece piece, Part part, Words words) {
    return piece.isStaved(part) && !piece.isLaminated(part) && !piece.matchesStaves(part)
        ? Optional.of(alternated(piece, part, words))
        : Optional.empty();
  }

  private static EndView alternated(Piece piece, Part part, Words words) {
    int count = piece.panelStaves(part);
    double width = piece.gluedWidth(part).toMm() / count;
    int shown = Math.min(count, MOST_STAVES);
    double wide = Math.min(MOST_STAVE_MM, MOST_MM / shown);
    double thick = Math.max(LEAST_THICK_MM, part.finishedThickness().toMm() * wide / width);
    List<String> captions =
        List.of(words.say("step.board.end", part.mark()), words.say("step.board.rings"));
    return new EndView(part, shown, count > shown, wide, thick, captions);
  }

  @Override
  public Size size() {
    return new Size(MOST_MM + 2 * EDGE_MM, thick + 2 * EDGE_MM + captions.size() * LINE_MM);
  }

  @Override
  public Group in(Size room) {
    double left = room.widthMm() - size().widthMm();
    double top = (room.heightMm() - size().heightMm()) / 2 + EDGE_MM;
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < staves; i++) {
      double from = left + i * wide;
      elements.addAll(stave(new Bounds(from, top, from + wide, top + thick), i % 2 == 0));
    }
    if (goesOn) {
      elements.addAll(goingOn(left + staves * wide, top));
    }
    for (int i = 0; i < captions.size(); i++) {
      At at = new At(left, top + thick + (i + 1) * LINE_MM);
      elements.add(new Text(TextStyle.SMALL, at, Anchor.START, true, captions.get(i)));
    }
    return new Group("end-" + Ink.id(part), part.mark(), part.mark(), elements);
  }

  private static List<Element> stave(Bounds end, boolean isHeartDown) {
    List<Element> elements = new ArrayList<>();
    List<At> ring = end.corners();
    elements.add(new Area(Tone.WHITE, List.of(ring)));
    double out = HEART * end.width();
    At heart =
        new At((end.left() + end.right()) / 2, isHeartDown ? end.bottom() + out : end.top() - out);
    double furthest = heart.distance(isHeartDown ? ring.getFirst() : ring.getLast());
    for (double radius = out + RING_MM; radius < furthest; radius += RING_MM) {
      Clipping.inside(circle(heart, radius), end)
          .forEach(arc -> elements.add(new Line(Role.DIMENSION, arc)));
    }
    elements.add(new Line(Role.VISIBLE, end.outline()));
    return elements;
  }

  private static List<At> circle(At middle, double radius) {
    return IntStream.rangeClosed(0, POINTS)
        .mapToDouble(i -> 2 * Math.PI * i / POINTS)
        .mapToObj(turn -> middle.plus(radius * StrictMath.cos(turn), radius * StrictMath.sin(turn)))
        .toList();
  }

  /** The edges of the next stave, broken off. */
  private List<Element> goingOn(double left, double top) {
    double right = left + EDGE_MM;
    return List.of(
        BreakLine.of(right, top, top + thick),
        new Line(Role.VISIBLE, List.of(new At(left, top), new At(right, top))),
        new Line(Role.VISIBLE, List.of(new At(left, top + thick), new At(right, top + thick))));
  }
}
