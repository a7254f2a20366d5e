package storyrod.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import storyrod.drawing.Drawing.Ellipse;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;

/**
 * The views of a part to one ruler, with their dimensions and the rings of details. They are laid
 * out one after the other, as long as an area holds them, and stay for other areas.
 */
final class LaidViews {
  static final double MARGIN = 1;
  private static final double BETWEEN_VIEWS = 7;

  private final PartDrawing part;
  private final Ruler ruler;
  private final List<Detail> enlarged;
  private final List<Wanted> own;
  private final Paper paper = new Paper();
  private final Map<Face, PlacedView> views = new LinkedHashMap<>();

  /** What was taken after each view. */
  private final List<Bounds> taken = new ArrayList<>();

  private Paper.State laid = Paper.NOTHING;
  private boolean stuck;

  LaidViews(PartDrawing part, Ruler ruler, List<Detail> enlarged) {
    this.part = part;
    this.ruler = ruler;
    this.enlarged = enlarged;
    this.own = new ArrayList<>(part.wanted());
    enlarged.forEach(each -> each.said().moved().forEach(moves -> own.remove(moves.before())));
  }

  /** The paper with the views that are laid out; whatever else is put on it goes with the next. */
  Paper paper() {
    return paper;
  }

  Map<Face, PlacedView> views() {
    return views;
  }

  /** Whether an area holds all of them; else {@code asFarAs} tells how wide the paper would be. */
  boolean fit(Size area) {
    return firstThatFails(area) == part.shown().size();
  }

  /** What is taken with the first view that an area does not hold. */
  Bounds asFarAs(Size area) {
    return taken.get(Math.min(firstThatFails(area), taken.size() - 1));
  }

  private int firstThatFails(Size area) {
    paper.backTo(laid);
    int number = 0;
    for (Face face : part.shown().keySet()) {
      if (number == taken.size()) {
        lay(face);
      }
      boolean isLast = number == taken.size() - 1;
      if (stuck && isLast || !fits(taken.get(number), area)) {
        return number;
      }
      number++;
    }
    return number;
  }

  private void lay(Face face) {
    PlacedView view = clearOfTexts(placed(part.flat(), face, ruler, paper));
    views.put(face, view);
    view.elements(part.shown().get(face)).forEach(paper::add);
    rings(view).forEach(paper::add);
    stuck = !Tiers.place(paper, view, own);
    taken.add(paper.bounds());
    laid = paper.state();
  }

  private List<Ellipse> rings(PlacedView view) {
    return enlarged.stream()
        .filter(each -> each.view().face() == view.face())
        .map(each -> each.ring(view))
        .toList();
  }

  /** A view further off where its rings, which reach out of it, would lie on a text. */
  private PlacedView clearOfTexts(PlacedView view) {
    List<Ellipse> rings = rings(view);
    double most = rings.stream().mapToDouble(Ellipse::rx).max().orElse(0);
    return rings.stream().allMatch(paper::hasRoomFor)
        ? view
        : new PlacedView(view.flat(), view.face(), ruler, view.offset() + most);
  }

  static boolean fits(Bounds bounds, Size area) {
    return bounds.width() <= area.widthMm() - 2 * MARGIN
        && bounds.height() <= area.heightMm() - 2 * MARGIN;
  }

  static PlacedView placed(FlatPart flat, Face face, Ruler ruler, Paper paper) {
    double right = ruler.mm(flat.size(Axis.X));
    double bottom = flat.size(Axis.Z).toMm() * ruler.factor();
    double taken =
        switch (face) {
          case RIGHT -> paper.boundsWithin(false, 0, bottom).right() - right;
          case LEFT -> -paper.boundsWithin(false, 0, bottom).left();
          case TOP -> -paper.boundsWithin(true, 0, right).top();
          case BOTTOM -> paper.boundsWithin(true, 0, right).bottom() - bottom;
          case FRONT, BACK -> -BETWEEN_VIEWS;
        };
    return new PlacedView(flat, face, ruler, taken + BETWEEN_VIEWS);
  }
}
