package storyrod.drawing;

import java.util.List;
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
import storyrod.drawing.Drawing.RunningDimension;
import storyrod.drawing.Drawing.RunningDimension.Height;
import storyrod.drawing.Drawing.Text;

/** The same element elsewhere on the paper, by mm. */
final class Moved {
  private Moved() {}

  static Element by(Element element, double dx, double dy) {
    return switch (element) {
      case Line l -> new Line(l.role(), all(l.points(), dx, dy));
      case Area a -> new Area(a.tone(), a.rings().stream().map(ring -> all(ring, dx, dy)).toList());
      case Ellipse e ->
          new Ellipse(e.role(), e.centre().plus(dx, dy), e.rx(), e.ry(), e.turned(), e.fill());
      case Text t -> new Text(t.style(), t.at().plus(dx, dy), t.anchor(), t.upright(), t.text());
      case Dimension d ->
          new Dimension(
              d.from().plus(dx, dy),
              d.to().plus(dx, dy),
              d.alongX(),
              d.line() + (d.alongX() ? dy : dx),
              d.text(),
              d.measure());
      case RunningDimension r ->
          new RunningDimension(
              r.origin().plus(dx, dy),
              r.line() + dx,
              r.heights().stream()
                  .map(each -> new Height(each.to().plus(dx, dy), each.text(), each.measure()))
                  .toList());
      case Balloon b ->
          new Balloon(b.centre().plus(dx, dy), b.tip().plus(dx, dy), b.mark(), b.count());
      case Note n ->
          new Note(
              n.tip().plus(dx, dy),
              n.elbow().plus(dx, dy),
              n.text().plus(dx, dy),
              n.anchor(),
              n.lines());
      case Arrow a -> new Arrow(a.from().plus(dx, dy), a.to().plus(dx, dy), a.twoHeads());
      case Group g ->
          new Group(
              g.id(),
              g.mark(),
              g.name(),
              g.elements().stream().map(each -> by(each, dx, dy)).toList());
    };
  }

  private static List<At> all(List<At> points, double dx, double dy) {
    return points.stream().map(at -> at.plus(dx, dy)).toList();
  }
}
