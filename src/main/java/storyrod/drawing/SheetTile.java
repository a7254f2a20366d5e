package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.Drawing.Tone;
import storyrod.drawing.SawnPiece.Laid;
import storyrod.measure.Length;

/**
 * A sheet or a board in little, with the parts of a step strong on it: where each comes from.
 *
 * @param strong the marks of the step's parts
 */
record SheetTile(SawnPiece sheet, Set<String> strong, List<String> captions) implements Tile {
  /** As low as this a sheet is but a stamp. */
  private static final double LEAST_MM = 25;

  private static final double MOST_MM = 60;

  /** What is as slim as this is a board: the width of the paper is none too much for it. */
  private static final double SLIM = 5;

  /** What is shown of a sheet is no longer than so many times its width, or it would be low. */
  private static final double LONGEST = 2;

  private static final double LEAST_OF_BOARD_MM = 5;

  /** A sheet of which the step takes less than this share of a side is shown in part. */
  private static final double SHOWN = 0.7;

  /** What is shown beyond the step's parts, as a share of what they take. */
  private static final double BEYOND = 1.12;

  /** The ends of break lines stand out beyond what is shown. */
  private static final double FOR_BREAKS_MM = 0.2;

  private double shownMm(Length whole, ToDoubleFunction<storyrod.layout.LayoutJob.Area> to) {
    double taken =
        BEYOND
            * sheet.parts().stream()
                .filter(part -> strong.contains(part.mark()))
                .mapToDouble(part -> to.applyAsDouble(part.area()))
                .max()
                .orElse(whole.toMm());
    return taken < SHOWN * whole.toMm() ? taken : whole.toMm();
  }

  /** Not so short that it would be a strip across the sheet. */
  private double lengthMm() {
    double shown = shownMm(sheet.length(), area -> area.x().toMm() + area.length().toMm());
    return Math.min(sheet.length().toMm(), Math.max(shown, takenWidthMm()));
  }

  private double takenWidthMm() {
    return shownMm(sheet.width(), area -> area.y().toMm() + area.width().toMm());
  }

  private double widthMm() {
    return Math.min(sheet.width().toMm(), Math.max(takenWidthMm(), lengthMm() / LONGEST));
  }

  private boolean isBoard() {
    return sheet.length().toMm() > SLIM * sheet.width().toMm();
  }

  @Override
  public double shape() {
    return lengthMm() / widthMm();
  }

  @Override
  public double leastMm() {
    return isBoard() ? LEAST_OF_BOARD_MM : LEAST_MM;
  }

  @Override
  public double mostMm() {
    return MOST_MM;
  }

  @Override
  public int inARow() {
    return isBoard() ? 1 : Strip.IN_A_ROW;
  }

  @Override
  public List<Element> in(Bounds room) {
    Bounds inner = room.widened(-FOR_BREAKS_MM);
    double factor = Math.min(inner.width() / lengthMm(), inner.height() / widthMm());
    At origin = new At(inner.left(), inner.top());
    Bounds shown = Bounds.of(origin, origin.plus(lengthMm() * factor, widthMm() * factor));
    List<Element> elements = new ArrayList<>();
    elements.add(new Area(Tone.WHITE, List.of(shown.corners())));
    for (Laid part : sheet.parts()) {
      Bounds at = bounds(origin, factor, part.area()).within(shown);
      if (at.left() < at.right() && at.top() < at.bottom()) {
        elements.add(blank(part, at));
      }
    }
    elements.addAll(edges(shown));
    return elements;
  }

  /** The sheet's own edges, and a break line where it goes on. */
  private List<Element> edges(Bounds shown) {
    At far = new At(shown.left(), shown.bottom());
    At near = new At(shown.right(), shown.top());
    At corner = new At(shown.right(), shown.bottom());
    boolean isLong = lengthMm() < sheet.length().toMm();
    boolean isWide = widthMm() < sheet.width().toMm();
    return List.of(
        edge(far, new At(shown.left(), shown.top())),
        edge(new At(shown.left(), shown.top()), near),
        isLong ? BreakLine.of(shown.right(), shown.top(), shown.bottom()) : edge(near, corner),
        isWide ? BreakLine.level(shown.bottom(), shown.left(), shown.right()) : edge(far, corner));
  }

  private static Line edge(At from, At to) {
    return new Line(Role.VISIBLE, List.of(from, to));
  }

  private Group blank(Laid part, Bounds at) {
    boolean isStrong = strong.contains(part.mark());
    List<Element> elements = new ArrayList<>();
    elements.add(new Area(isStrong ? Tone.FRONT : Tone.WHITE, List.of(at.corners())));
    elements.add(new Line(Role.THIN, at.outline()));
    if (isStrong) {
      Label mark = Label.of(TextStyle.SMALL, part.mark());
      elements.addAll(Label.place(List.of(mark), at, Optional.empty()));
    }
    String id = "part-" + part.id().replace('.', '-').replace('#', '-');
    return new Group(id, part.mark(), part.title(), elements);
  }

  private static Bounds bounds(At origin, double factor, storyrod.layout.LayoutJob.Area area) {
    At from = origin.plus(area.x().toMm() * factor, area.y().toMm() * factor);
    return Bounds.of(from, from.plus(area.length().toMm() * factor, area.width().toMm() * factor));
  }
}
