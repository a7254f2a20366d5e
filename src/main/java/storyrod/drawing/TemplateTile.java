package storyrod.drawing;

import java.util.List;
import storyrod.drawing.Drawing.At;

/**
 * One sheet of full-size templates.
 *
 * @param letter its place: the column's letter and the row's number
 * @param shapes the templates of which it shows something, as they lie on all sheets together
 * @param drawing at full size
 * @param origin what of all sheets together lies at the drawing's top left corner, in mm
 */
public record TemplateTile(String letter, List<FullSize> shapes, Drawing drawing, At origin) {
  public TemplateTile {
    shapes = List.copyOf(shapes);
  }
}
