package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.Arrow;

/** Texts that stand so near to the head of an arrow that the two run into one figure. */
final class ArrowTexts {
  /** What is left between a head and a text at least, in mm: about a thick line, and seen. */
  static final double APART_MM = 0.7;

  private ArrowTexts() {}

  static List<String> tooNear(Drawing drawing) {
    List<String> near = new ArrayList<>();
    List<PlacedText> texts = Painter.texts(drawing);
    for (Bounds head : heads(drawing)) {
      for (PlacedText text : texts) {
        if (head.widened(APART_MM).overlaps(Bounds.of(text))) {
          near.add("'" + text.text() + "' touches the arrow at " + head.middle());
        }
      }
    }
    return near;
  }

  private static List<Bounds> heads(Drawing drawing) {
    return Clean.flat(drawing.elements()).stream()
        .filter(Arrow.class::isInstance)
        .flatMap(each -> Lowering.simple(each).stream())
        .flatMap(each -> each instanceof Area area ? Stream.of(area) : Stream.empty())
        .map(area -> Bounds.around(area.rings().getFirst()))
        .toList();
  }
}
