package storyrod.drawing;

import java.util.List;
import java.util.Optional;
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
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.Drawing.Tone;
import storyrod.measure.Length;

/** A drawing with one of everything. */
final class Samples {
  private Samples() {}

  static Drawing everything() {
    return new Drawing("sample", 120, 90, Optional.of(new Scale(1, 1)), elements());
  }

  static List<At> rectangle(double x, double y, double width, double height) {
    return List.of(
        new At(x, y), new At(x + width, y), new At(x + width, y + height), new At(x, y + height));
  }

  private static List<Element> elements() {
    List<At> board = rectangle(30, 30, 50.8, 25.4);
    List<At> closed = List.of(board.get(0), board.get(1), board.get(2), board.get(3), board.get(0));
    return List.of(
        new Group(
            "case.side",
            "S",
            "Side & \"more\"",
            List.of(
                new Area(Tone.FRONT, List.of(board, rectangle(40, 35, 5, 5))),
                new Area(Tone.HATCH, List.of(rectangle(60, 35, 12, 12), rectangle(64, 39, 4, 4))),
                new Line(Role.VISIBLE, closed))),
        new Line(Role.HIDDEN, List.of(new At(30, 50), new At(80.8, 50))),
        new Line(Role.CENTRE, List.of(new At(25, 42.7), new At(85, 42.7))),
        new Ellipse(Role.THIN, new At(50, 44), 4, 2, 0.5, Optional.of(Tone.TOP)),
        new Dimension(board.get(0), board.get(1), true, 12, "2", Length.inches(2)),
        new Dimension(board.get(0), new At(35, 30), true, 20, "27 23/32", Length.mm(5)),
        new Dimension(board.get(3), board.get(0), false, 12, "1", Length.inches(1)),
        new Dimension(new At(30, 33), board.get(0), false, 20, "1/8", Length.mm(3)),
        new Balloon(new At(100, 20), new At(75, 33), "AB"),
        new Note(
            new At(42, 38),
            new At(88, 70),
            new At(90, 70.95),
            Anchor.START,
            List.of("5× Ø 1/4, 3/8 deep,", "for pin")),
        new Arrow(new At(32, 62), new At(50, 62), true),
        new Arrow(new At(110, 40), new At(95, 45), false),
        new Text(TextStyle.SMALL, new At(52, 63), Anchor.START, true, "grain ☐"),
        new Text(TextStyle.TITLE, new At(10, 80), Anchor.START, true, "Part A < 3 1/2"));
  }
}
