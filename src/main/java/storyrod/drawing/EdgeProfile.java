package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Note;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.Drawing.Tone;
import storyrod.geometry.Axis;
import storyrod.piece.Cut;

/**
 * A rounded edge enlarged, the part sawn through across it: what the bit takes off in tone, with
 * its radius. Where edges of both faces are rounded, each comes out like this one.
 */
final class EdgeProfile implements CutFigure {
  /** The radius as drawn, and how much it is enlarged at most. */
  private static final double RADIUS_MM = 8;

  private static final double LARGEST = 5;

  /** How much wood is drawn beside the arc. */
  private static final double BESIDE_MM = 6;

  private static final int PIECES = 24;
  private static final double NOTE_HIGH_MM = 7;
  private static final double ELBOW_MM = 2;

  private final Taken taken;
  private final Cut.Roundover cut;
  private final String said;
  private final double radius;

  private EdgeProfile(Taken taken, Cut.Roundover cut, Notation notation) {
    this.taken = taken;
    this.cut = cut;
    String length = notation.format().forBits().format(cut.radius());
    this.said = notation.words().say("part.roundover", length);
    double mm = cut.radius().toMm();
    this.radius = mm * Math.min(LARGEST, RADIUS_MM / mm);
  }

  /** Of a step's first rounded edge. */
  static Optional<EdgeProfile> of(Taken taken, Notation notation) {
    return Cut.only(Cut.Roundover.class, taken.cuts()).stream()
        .findFirst()
        .map(cut -> new EdgeProfile(taken, cut, notation));
  }

  private double side() {
    return radius + BESIDE_MM;
  }

  @Override
  public Size size() {
    Text note = new Text(TextStyle.NOTE, new At(0, 0), Anchor.START, true, said);
    double wide = 2 * ELBOW_MM + PlacedText.of(note).right() + ELBOW_MM / 2;
    return new Size(side() + wide, NOTE_HIGH_MM + side());
  }

  @Override
  public Group in(Size room) {
    double x = room.widthMm() - size().widthMm();
    double y = (room.heightMm() - size().heightMm()) / 2 + NOTE_HIGH_MM;
    At corner = new At(x + side(), y);
    List<At> arc = arc(corner);
    List<Element> elements = new ArrayList<>();
    elements.add(new Area(Tone.SIDE, List.of(and(arc, corner))));
    elements.add(new Line(Role.DIMENSION, List.of(arc.getFirst(), corner, arc.getLast())));
    elements.add(new Line(Role.VISIBLE, ends(arc, corner)));
    At tip = arc.get(PIECES / 2);
    At elbow = new At(corner.x() + ELBOW_MM, y - NOTE_HIGH_MM / 2);
    elements.add(new Note(tip, elbow, elbow.plus(ELBOW_MM, 0), Anchor.START, List.of(said)));
    String mark = taken.flat().part().mark();
    return new Group("cut-" + Ink.id(taken.flat().part()), mark, mark, elements);
  }

  /** From the upper face round to the outer one, about a middle inside the wood. */
  private List<At> arc(At corner) {
    return IntStream.rangeClosed(0, PIECES)
        .mapToObj(i -> Math.PI / 2 * i / PIECES)
        .map(
            turn ->
                corner.plus(
                    -radius * (1 - StrictMath.sin(turn)), radius * (1 - StrictMath.cos(turn))))
        .toList();
  }

  private static List<At> and(List<At> arc, At corner) {
    return Stream.concat(arc.stream(), Stream.of(corner)).toList();
  }

  /** The arc with what is left of both faces; below, the wood ends or goes on. */
  private List<At> ends(List<At> arc, At corner) {
    Axis through = cut.from().axis();
    double thick = taken.flat().box().size(through).toMm() * radius / cut.radius().toMm();
    double down = Math.min(side(), thick);
    List<At> line = new ArrayList<>(List.of(corner.plus(-side(), 0)));
    line.addAll(arc);
    line.add(corner.plus(0, down));
    if (thick <= side()) {
      line.add(corner.plus(-side(), down));
    }
    return line;
  }
}
