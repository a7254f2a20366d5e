package storyrod.drawing;

import java.util.List;
import storyrod.geometry.Axis;
import storyrod.geometry.Point;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.measure.Rational;
import storyrod.piece.Slanted;
import storyrod.words.Words;

/** What a note says of a slanted cut, and where it points. */
record SlantedNotes(Words words, LengthFormat format) {
  private static final List<Integer> SIXTHS = List.of(3, 2, 4, 1, 5);

  String said(Slanted.Slope slope) {
    return switch (slope.kind()) {
      case CHAMFER -> words.say("part.chamfer", format.format(slope.run()));
      case TAPER -> words.say("part.taper", format.format(slope.drop()));
      case BEVEL, MITRE ->
          words.say("part." + slope.term(), words.figures(slope.angle().toString()));
    };
  }

  /** Points on the slope, in its middle first. */
  static List<Point> tips(FlatPart flat, Slanted.Slope slope) {
    Axis along = slope.along();
    Length middle = flat.size(along).dividedBy(2, java.math.RoundingMode.FLOOR);
    return SIXTHS.stream().map(sixths -> between(slope, sixths).with(along, middle)).toList();
  }

  private static Point between(Slanted.Slope slope, int sixths) {
    Point point = slope.first();
    for (Axis axis : Axis.values()) {
      Length way = slope.second().on(axis).minus(slope.first().on(axis));
      point = point.moved(axis, way.times(Rational.of(sixths, 6), java.math.RoundingMode.FLOOR));
    }
    return point;
  }
}
