package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import storyrod.build.CutKind;
import storyrod.build.ShowFaces;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.Arrow;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.Drawing.Tone;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.piece.Cut;
import storyrod.piece.Mark;
import storyrod.piece.Part;
import storyrod.words.Words;

/**
 * A part seen from the face that is marked, as its drawing lies: the letter with an arrow to what
 * the drawing shows up, the loop of the face mark, and a wedge at each edge from which joints are
 * set out.
 *
 * @param edges the flat part's faces from which its joints are set out, of its four narrow ones
 * @param isTurned whether the part's drawing shows its other face
 */
record MarkTile(Mark mark, FlatPart flat, List<Face> edges, boolean isTurned, List<String> captions)
    implements Tile {
  private static final double LOOP_MM = 1.1;
  private static final double WEDGE_MM = 1.1;
  private static final double OFF_MM = 0.4;
  private static final double ARROW_MM = 4;
  private static final double ARROW_ROOM_MM = 3;
  private static final double EDGE_MM = 1.5;
  private static final int POINTS = 16;

  /** Room round the part for its edge marks. */
  private static final double AROUND_MM = 2;

  static MarkTile of(Mark mark, ShowFaces faces, Words words) {
    Part part = mark.shown();
    FlatPart flat = FlatPart.of(part);
    Optional<Face> show = faces.of(part);
    boolean isTurned = show.map(flat::turned).filter(face -> face == Face.BACK).isPresent();
    return new MarkTile(mark, flat, edges(flat), isTurned, captions(mark, show, words));
  }

  /** Where no joint says which, the edge that lies lowest. */
  private static List<Face> edges(FlatPart flat) {
    List<Face> from =
        flat.part().cuts(Cut.Trench.class).stream()
            .filter(trench -> !Set.of("notch", "cutout").contains(trench.term()))
            .map(trench -> flat.turned(CutKind.edge(flat.part(), trench)))
            .filter(face -> face.axis() != Axis.Y)
            .distinct()
            .sorted()
            .toList();
    return from.isEmpty() ? List.of(Face.BOTTOM) : from;
  }

  private static List<String> captions(Mark mark, Optional<Face> show, Words words) {
    String count =
        mark.mirrored() > 0
            ? words.say("step.cut.handed", mark.same(), mark.mirrored())
            : words.say("step.mark.count", mark.count());
    List<String> all = new ArrayList<>();
    show.map(face -> words.say("part.face." + face.word()))
        .ifPresent(
            face -> all.add(List.of(count, face).stream().collect(Collectors.joining(", "))));
    all.add(count);
    return all;
  }

  private double lengthMm() {
    return flat.size(Axis.X).toMm();
  }

  private double widthMm() {
    return flat.size(Axis.Z).toMm();
  }

  @Override
  public double shape() {
    return ShortFace.shape(lengthMm(), widthMm());
  }

  @Override
  public List<Element> in(Bounds room) {
    Bounds inner =
        new Bounds(
            room.left() + AROUND_MM,
            room.top() + AROUND_MM,
            room.right() - AROUND_MM,
            room.bottom() - AROUND_MM);
    ShortFace face = ShortFace.in(inner, lengthMm(), widthMm());
    List<Element> elements = new ArrayList<>();
    for (Bounds each : face.rectangles()) {
      elements.add(new Area(Tone.TOP, List.of(each.corners())));
      elements.add(new Line(Role.VISIBLE, each.outline()));
    }
    face.breakLine().ifPresent(elements::add);
    edges.forEach(edge -> elements.addAll(wedge(edge, face.bounds())));
    elements.addAll(letter(face.rectangles().getFirst()));
    return List.of(
        new Group(Ink.id(flat.part()), mark.mark(), mark.title(), List.copyOf(elements)));
  }

  /** The letter with its arrow, and beside them the face mark, or below where that has no room. */
  private List<Element> letter(Bounds on) {
    double wide = TextSetting.of(TextStyle.MARK, mark.mark()).width();
    double row = ARROW_ROOM_MM + wide + 3 * LOOP_MM;
    boolean isRow = row <= on.width() || on.height() < on.width();
    double left = on.left() + Math.max(0, Math.min(EDGE_MM, (on.width() - row) / 2));
    double middle = isRow ? on.middle().y() : on.top() + on.height() / 3;
    double half = Math.min(ARROW_MM, on.height() * 0.8) / 2;
    double x = left + ARROW_ROOM_MM / 2;
    double base = middle + TextStyle.MARK.sizeMm() * TextSetting.ASCENT / 2;
    At text = new At(left + ARROW_ROOM_MM, base);
    At loop =
        isRow
            ? new At(text.x() + wide + 1.6 * LOOP_MM, middle)
            : new At(on.middle().x(), on.bottom() - on.height() / 4);
    return List.of(
        new Arrow(new At(x, middle + half), new At(x, middle - half), false),
        new Text(TextStyle.MARK, text, Anchor.START, true, mark.mark()),
        new Line(Role.CUT, loop(loop)));
  }

  private static List<At> loop(At middle) {
    List<At> points = new ArrayList<>();
    points.add(middle.plus(LOOP_MM, 2 * LOOP_MM / 1.5));
    IntStream.rangeClosed(0, POINTS)
        .mapToDouble(i -> Math.PI * (1.75 * i / POINTS))
        .mapToObj(
            turn ->
                middle.plus(-LOOP_MM * 0.8 * StrictMath.cos(turn), -LOOP_MM * StrictMath.sin(turn)))
        .forEach(points::add);
    return points;
  }

  /** Outside the part with its point at the edge; of a part seen from behind left is right. */
  private List<Element> wedge(Face edge, Bounds on) {
    At middle = on.middle();
    boolean right = edge == Face.RIGHT != isTurned;
    return switch (edge.axis()) {
      case X -> {
        double x = right ? on.right() + OFF_MM : on.left() - OFF_MM;
        double out = right ? WEDGE_MM : -WEDGE_MM;
        yield wedge(new At(x, middle.y()), new At(out, WEDGE_MM), new At(out, -WEDGE_MM));
      }
      case Z, Y -> {
        boolean up = edge == Face.TOP;
        double y = up ? on.top() - OFF_MM : on.bottom() + OFF_MM;
        double out = up ? -WEDGE_MM : WEDGE_MM;
        double x = on.left() + on.width() / 3;
        yield wedge(new At(x, y), new At(WEDGE_MM, out), new At(-WEDGE_MM, out));
      }
    };
  }

  private static List<Element> wedge(At point, At one, At other) {
    return List.of(
        new Line(
            Role.CUT,
            List.of(point.plus(one.x(), one.y()), point, point.plus(other.x(), other.y()))));
  }
}
