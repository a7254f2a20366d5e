package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.GeneralDrawing.Laid;
import storyrod.drawing.GeneralDrawing.Plan;

/**
 * Two narrow views of a piece in one drawing: side by side at one scale, both standing on one line,
 * so that heights can be followed from one to the other.
 */
final class PairedDrawing {
  private static final double BETWEEN = 8;
  private static final int MOST_TRIES = 4;

  private final String name;
  private final Plan left;
  private final Plan right;

  PairedDrawing(String name, Plan left, Plan right) {
    this.name = name;
    this.left = left;
    this.right = right;
  }

  /** The largest drawing in which both find room, or nothing. */
  Optional<Drawing> fitting(List<Scale> scales, Size area) {
    return scales.stream()
        .filter(scale -> GeneralDrawing.mayFit(left, scale, area))
        .limit(MOST_TRIES)
        .flatMap(scale -> drawn(scale, area).stream())
        .findFirst();
  }

  private Optional<Drawing> drawn(Scale scale, Size area) {
    return GeneralDrawing.laid(left, scale, area)
        .flatMap(
            one ->
                GeneralDrawing.laid(right, scale, beside(one, area))
                    .map(other -> drawn(List.of(one, named(other)), area, scale)))
        .filter(each -> each.heightMm() <= area.heightMm());
  }

  private static Size beside(Laid one, Size area) {
    return new Size(area.widthMm() - one.bounds().width() - BETWEEN, area.heightMm());
  }

  private Drawing drawn(List<Laid> views, Size area, Scale scale) {
    double free = area.widthMm();
    double above = 0;
    double below = 0;
    for (Laid each : views) {
      free -= each.bounds().width();
      above = Math.max(above, each.floor() - each.bounds().top());
      below = Math.max(below, each.bounds().bottom() - each.floor());
    }
    List<Element> elements = new ArrayList<>();
    double at = free / 3;
    for (Laid each : views) {
      double dy = GeneralDrawing.MARGIN + above - each.floor();
      elements.addAll(each.moved(at - each.bounds().left(), dy));
      at += each.bounds().width() + free / 3;
    }
    double height = above + below + 2 * GeneralDrawing.MARGIN;
    return new Drawing(name, area.widthMm(), height, Optional.of(scale), elements);
  }

  /** The same part stands in both views; in the right one its group bears that view's name too. */
  private Laid named(Laid laid) {
    return new Laid(laid.elements().stream().map(this::own).toList(), laid.bounds(), laid.floor());
  }

  private Element own(Element element) {
    return element instanceof Group group
        ? new Group(right.name() + "-" + group.id(), group.mark(), group.name(), group.elements())
        : element;
  }
}
