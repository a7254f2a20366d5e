package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
  @Override
  public double shape() {
    return sheet.length().toMm() / sheet.width().toMm();
  }

  @Override
  public List<Element> in(Bounds room) {
    double factor =
        Math.min(room.width() / sheet.length().toMm(), room.height() / sheet.width().toMm());
    At origin = new At(room.left(), room.top());
    List<Element> elements = new ArrayList<>();
    Bounds whole = bounds(origin, factor, all());
    elements.add(new Area(Tone.WHITE, List.of(whole.corners())));
    sheet.parts().forEach(part -> elements.add(blank(part, bounds(origin, factor, part.area()))));
    elements.add(new Line(Role.VISIBLE, whole.outline()));
    return elements;
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

  private storyrod.layout.LayoutJob.Area all() {
    return new storyrod.layout.LayoutJob.Area(
        Length.ZERO, Length.ZERO, sheet.length(), sheet.width());
  }

  private static Bounds bounds(At origin, double factor, storyrod.layout.LayoutJob.Area area) {
    At from = origin.plus(area.x().toMm() * factor, area.y().toMm() * factor);
    return Bounds.of(from, from.plus(area.length().toMm() * factor, area.width().toMm() * factor));
  }
}
