package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.Arrow;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Balloon;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Ellipse;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Note;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.RunningDimension;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.Drawing.Tone;

/** Takes dimensions, balloons, notes and arrows apart into lines, areas, ellipses and texts. */
final class Lowering {
  static final double BALLOON_RADIUS = 3.2;
  static final double LINE_SPACING = 1.35;

  /** How far above a note's base line its leader ends. */
  static final double LEADER_ABOVE = 0.95;

  /** Between the base lines of a count and its mark, in mm. */
  private static final double COUNTED_SPACING = 2.7;

  static final double DOT_RADIUS = 0.5;

  /** The height of capitals and figures, in parts of the size of the font. */
  static final double CAPITAL = 0.711;

  private Lowering() {}

  /** The simple elements of one; those of a group stay without their group. */
  static List<Element> simple(Element element) {
    return switch (element) {
      case Line line -> List.of(line);
      case Area area -> List.of(area);
      case Ellipse ellipse -> List.of(ellipse);
      case Text text -> List.of(text);
      case Dimension dimension -> DimensionLayout.of(dimension).elements();
      case RunningDimension running -> new RunningLayout(running).elements();
      case Balloon balloon -> balloon(balloon);
      case Note note -> note(note);
      case Arrow arrow -> arrow(arrow);
      case Group group -> group.elements().stream().flatMap(each -> simple(each).stream()).toList();
    };
  }

  static Stream<Text> texts(Element element) {
    return simple(element).stream()
        .flatMap(each -> each instanceof Text text ? Stream.of(text) : Stream.empty());
  }

  /** An arrowhead as a filled triangle whose point lies at {@code tip}. */
  static Area head(At tip, At from, Head head) {
    double length = from.distance(tip);
    double x = (tip.x() - from.x()) / length;
    double y = (tip.y() - from.y()) / length;
    At base = tip.plus(-x * head.length, -y * head.length);
    double across = head.length * head.slope;
    return new Area(
        Tone.INK,
        List.of(
            List.of(tip, base.plus(-y * across, x * across), base.plus(y * across, -x * across))));
  }

  /** The arrowheads in use; the slope is half the width by the length. */
  enum Head {
    SLIM(2.4, 0.17),
    LEADER(2.0, 0.18),
    MOTION(3.4, 0.28);

    final double length;
    final double slope;

    Head(double length, double slope) {
      this.length = length;
      this.slope = slope;
    }
  }

  private static List<Element> balloon(Balloon balloon) {
    At centre = balloon.centre();
    List<Element> elements = new ArrayList<>();
    double distance = centre.distance(balloon.tip());
    double radius = balloon.count() > 0 ? Balloons.RADIUS_MM : BALLOON_RADIUS;
    if (distance > radius) {
      double part = radius / distance;
      At edge =
          centre.plus(
              (balloon.tip().x() - centre.x()) * part, (balloon.tip().y() - centre.y()) * part);
      elements.add(new Line(Role.DIMENSION, List.of(edge, balloon.tip())));
      elements.add(dot(balloon.tip()));
    }
    elements.add(new Ellipse(Role.THIN, centre, radius, radius, 0, Optional.of(Tone.WHITE)));
    elements.addAll(balloon.count() > 0 ? counted(balloon) : List.of(mark(balloon)));
    return elements;
  }

  private static Text mark(Balloon balloon) {
    At at = balloon.centre().plus(0, TextStyle.MARK.sizeMm() * CAPITAL / 2);
    return new Text(TextStyle.MARK, at, Anchor.MIDDLE, true, balloon.mark());
  }

  /** How many, as "8x", over the mark; one alone needs no count. */
  private static List<Text> counted(Balloon balloon) {
    double half = TextStyle.SMALL.sizeMm() * CAPITAL / 2;
    double down = balloon.count() > 1 ? COUNTED_SPACING / 2 + half : half;
    Text mark = small(balloon.centre().plus(0, down), balloon.mark());
    return balloon.count() > 1
        ? List.of(
            small(balloon.centre().plus(0, down - COUNTED_SPACING), balloon.count() + "x"), mark)
        : List.of(mark);
  }

  private static Text small(At at, String text) {
    return new Text(TextStyle.SMALL, at, Anchor.MIDDLE, true, text);
  }

  private static Element dot(At at) {
    return new Ellipse(Role.DIMENSION, at, DOT_RADIUS, DOT_RADIUS, 0, Optional.of(Tone.INK));
  }

  private static List<Element> note(Note note) {
    List<Element> elements = new ArrayList<>();
    List<At> leader = new ArrayList<>(List.of(note.tip(), note.elbow()));
    double side = 2 * PlacedText.startOf(note.anchor()) - 1;
    if (side != 0) {
      leader.add(new At(note.text().x() + side * 0.8, note.elbow().y()));
    }
    elements.add(new Line(Role.DIMENSION, leader));
    elements.add(head(note.tip(), note.elbow(), Head.LEADER));
    double down = 0;
    for (String line : note.lines()) {
      elements.add(new Text(TextStyle.NOTE, note.text().plus(0, down), note.anchor(), true, line));
      down += TextStyle.NOTE.sizeMm() * LINE_SPACING;
    }
    return elements;
  }

  private static List<Element> arrow(Arrow arrow) {
    List<Element> elements = new ArrayList<>();
    Head head = arrow.twoHeads() ? Head.SLIM : Head.MOTION;
    Role role = arrow.twoHeads() ? Role.DIMENSION : Role.CUT;
    elements.add(new Line(role, List.of(arrow.from(), shortened(arrow, head))));
    elements.add(head(arrow.to(), arrow.from(), head));
    if (arrow.twoHeads()) {
      elements.add(head(arrow.from(), arrow.to(), head));
    }
    return elements;
  }

  /** The line stops inside the head, so that its width does not blunt the point. */
  private static At shortened(Arrow arrow, Head head) {
    double length = arrow.from().distance(arrow.to());
    double part = Math.max(0, (length - head.length / 2) / length);
    return arrow
        .from()
        .plus(
            (arrow.to().x() - arrow.from().x()) * part, (arrow.to().y() - arrow.from().y()) * part);
  }
}
