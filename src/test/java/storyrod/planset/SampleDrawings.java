package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.drawing.Drawing;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Balloon;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.Drawing.Tone;
import storyrod.drawing.Drawings;
import storyrod.drawing.Scale;
import storyrod.measure.LengthFormat;
import storyrod.piece.Mark;
import storyrod.piece.Piece;

/** Plain drawings of the sample, with something of all that drawings have. */
final class SampleDrawings {
  private SampleDrawings() {}

  static Drawings of(Piece piece) {
    Map<String, Drawing> parts = new LinkedHashMap<>();
    piece
        .marks()
        .forEach(mark -> parts.put(mark.mark(), partDrawing(mark, piece.description().format())));
    Map<Integer, Drawing> steps = new LinkedHashMap<>();
    steps.put(piece.marks().size() + 1, view("step", 150, 95, "A"));
    steps.put(piece.marks().size() + 2, view("step", 150, 95, "A"));
    return new Drawings(
        view("cover", 165, 118, ""),
        view("exploded", 170, 160, "B"),
        parts,
        Map.of("ply", List.of(view("layout", 175, 90, "A"))),
        steps);
  }

  private static Drawing partDrawing(Mark mark, LengthFormat format) {
    double width = mark.shown().finishedLength().toMm() / 8;
    double height = mark.shown().finishedWidth().toMm() / 8;
    List<Element> elements = new ArrayList<>(plate(18, 16, width, height, Tone.FRONT));
    elements.add(
        new Dimension(
            new At(18, 16),
            new At(18 + width, 16),
            true,
            7,
            format.format(mark.shown().finishedLength()),
            mark.shown().finishedLength()));
    elements.add(
        new Dimension(
            new At(18, 16),
            new At(18, 16 + height),
            false,
            8,
            format.format(mark.shown().finishedWidth()),
            mark.shown().finishedWidth()));
    return new Drawing(
        "part-" + mark.mark(), width + 34, height + 22, Optional.of(new Scale(1, 8)), elements);
  }

  private static Drawing view(String name, double width, double height, String balloon) {
    List<Element> elements = new ArrayList<>();
    elements.addAll(plate(2, 2, width - 4, height - 4, Tone.TOP));
    elements.addAll(plate(width * 0.2, height * 0.2, width * 0.6, height * 0.6, Tone.SIDE));
    if (!balloon.isEmpty()) {
      elements.add(
          new Balloon(
              new At(width * 0.1, height * 0.12), new At(width * 0.3, height * 0.4), balloon));
    }
    elements.add(
        new Text(TextStyle.NOTE, new At(width / 2, height / 2), Anchor.MIDDLE, true, "36 3/8"));
    return new Drawing(name, width, height, Optional.empty(), elements);
  }

  private static List<Element> plate(double x, double y, double width, double height, Tone tone) {
    List<At> ring =
        List.of(
            new At(x, y),
            new At(x + width, y),
            new At(x + width, y + height),
            new At(x, y + height));
    List<At> closed = new ArrayList<>(ring);
    closed.add(ring.getFirst());
    return List.of(new Area(tone, List.of(ring)), new Line(Role.VISIBLE, closed));
  }
}
