package storyrod.drawing;

import java.util.stream.Stream;
import storyrod.build.Slides.Row;
import storyrod.drawing.Drawing.At;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.measure.Length;
import storyrod.piece.Part;

/** Where the lines of slides, and what they are measured from, lie on a wall's view on paper. */
record SlidePoints(SlideWall shown, Fit fit) {
  /** How far before a member's end its line begins. */
  private static final double OVER_MM = 1.5;

  private At at(Length y, Length z) {
    return fit.on(View.at(SlideWall.SEEN_FROM).project(new Point(Length.ZERO, y, z).toMm()));
  }

  Bounds on(Part part) {
    Box box = part.box();
    return Bounds.of(at(box.y().from(), box.z().from()), at(box.y().to(), box.z().to()));
  }

  /** Everything that is shown. */
  Bounds all() {
    return shown.shown().stream().map(this::on).reduce(Bounds.NONE, Bounds::with);
  }

  /** The drawers' sides, and all that their lines are measured from. */
  Bounds measured() {
    Stream<Bounds> floors =
        shown.rows().stream().flatMap(row -> row.floor().stream()).map(this::on);
    Stream<Bounds> rows =
        shown.rows().stream()
            .map(row -> on(row.side()).with(at(SlideWall.end(row), SlideWall.floor(row))));
    return Stream.concat(floors, rows).reduce(Bounds.NONE, Bounds::with);
  }

  /** The front end of a row's member on its line. */
  At start(Row row) {
    return at(SlideWall.end(row), SlideWall.line(row));
  }

  /** How far back the front end of any member lies. */
  double startsX() {
    return shown.rows().stream().mapToDouble(row -> start(row).x()).max().orElseThrow();
  }

  /** Where a row's line begins. */
  At before(Row row) {
    return start(row).plus(-OVER_MM, 0);
  }

  /** From where a row's height is measured. */
  At origin(Row row) {
    Length face = row.floor().orElse(row.wall()).box().at(Face.FRONT).max(SlideWall.front(row));
    return at(face, SlideWall.floor(row));
  }

  /** From where a row's set-back is measured. */
  At front(Row row) {
    return new At(at(SlideWall.front(row), Length.ZERO).x(), on(row.front()).bottom());
  }

  /** Half way from the upper edge of a drawer's side to the member, or to the line. */
  double between(Row row) {
    return (on(row.side()).top() + start(row).y() - shown.halfMm() * fit.factor()) / 2;
  }
}
