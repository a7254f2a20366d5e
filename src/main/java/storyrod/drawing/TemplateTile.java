package storyrod.drawing;

import storyrod.drawing.Drawing.At;

/**
 * One sheet of a full-size template.
 *
 * @param letter its place: the column's letter and the row's number
 * @param drawing at full size
 * @param origin what of the whole template lies at the drawing's top left corner, in mm
 */
public record TemplateTile(String letter, Drawing drawing, At origin) {}
