package storyrod.planset;

import java.awt.Graphics2D;
import storyrod.drawing.Drawing;

/** Puts a drawing on a Graphics2D, in units of 1/100 mm, and into an SVG text. */
public interface Painting {
  void paint(Drawing drawing, Graphics2D graphics);

  String svg(Drawing drawing);
}
