package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.build.FaceMarks;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Tone;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.FlatFace;
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
    implements PartTile {
  private static final double WEDGE_MM = 1.1;
  private static final double OFF_MM = 0.4;

  private static final double EXACT_MM2 = 1;
  private static final double ON_SIDE = 1e-3;

  /** Room round the part for its edge marks. */
  private static final double AROUND_MM = 2;

  static MarkTile of(Mark mark, FaceMarks faces, Words words) {
    Part part = mark.shown();
    FlatPart flat = FlatPart.of(part);
    Optional<Face> show = faces.of(part);
    boolean isTurned = show.map(flat::turned).filter(face -> face == Face.BACK).isPresent();
    return new MarkTile(mark, flat, edges(flat), isTurned, captions(mark, show, words));
  }

  /** Where no joint says which, the long edge of which most is left; of two alike the lower. */
  private static List<Face> edges(FlatPart flat) {
    List<Face> from =
        FaceMarks.edges(flat.part()).stream()
            .map(flat::turned)
            .filter(face -> face.axis() != Axis.Y)
            .distinct()
            .sorted()
            .toList();
    return from.isEmpty()
        ? List.of(
            left(flat, Face.BOTTOM) + EXACT_MM2 < left(flat, Face.TOP) ? Face.TOP : Face.BOTTOM)
        : from;
  }

  /** The area in mm² of one side of a part that stays, whatever is sawn off it. */
  private static double left(FlatPart flat, Face side) {
    Part part = flat.part();
    Face own =
        Stream.of(Face.values())
            .filter(face -> flat.turned(face) == side)
            .findFirst()
            .orElseThrow();
    double at = part.box().at(own).toMm() * own.sign();
    return part.solid().faces().stream()
        .filter(face -> face.normal().dot(own.normal()) > 1 - ON_SIDE)
        .filter(face -> Math.abs(face.offsetMm() - at) < ON_SIDE)
        .mapToDouble(FlatFace::areaMm2)
        .sum();
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

  @Override
  public List<Element> in(Bounds room) {
    Bounds inner =
        new Bounds(
            room.left() + AROUND_MM,
            room.top() + AROUND_MM,
            room.right() - AROUND_MM,
            room.bottom() - AROUND_MM);
    MarkLetter letter = new MarkLetter(mark.mark());
    ShortFace whole = ShortFace.in(inner, lengthMm(), widthMm());
    boolean isOn = letter.on(whole.rectangles().getFirst()).isPresent();
    ShortFace face =
        isOn
            ? whole
            : ShortFace.in(
                new Bounds(
                    inner.left(), inner.top(), inner.right() - letter.besideMm(), inner.bottom()),
                lengthMm(),
                widthMm());
    List<Element> elements = new ArrayList<>();
    for (Bounds each : face.rectangles()) {
      elements.add(new Area(Tone.TOP, List.of(each.corners())));
      elements.add(new Line(Role.VISIBLE, each.outline()));
    }
    face.breakLine().ifPresent(elements::add);
    edges.forEach(edge -> elements.addAll(wedge(edge, face.bounds())));
    elements.addAll(
        isOn
            ? letter.on(face.rectangles().getFirst()).orElseThrow()
            : letter.beside(face.bounds()));
    return List.of(
        new Group(Ink.id(flat.part()), mark.mark(), mark.title(), List.copyOf(elements)));
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
