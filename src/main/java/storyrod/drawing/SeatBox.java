package storyrod.drawing;

import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.build.PlacedItem;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Askew;
import storyrod.piece.Part;

/**
 * What is to be seen of an item of hardware and its part: the item, a long one's end only, and its
 * part as far as the edges that are near.
 */
record SeatBox(Part host, Box box) {
  /** Of what is longer only the end is shown. */
  private static final Length LONGEST = Length.mm(110);

  /** An edge no further off is shown. */
  private static final Length EDGE = Length.mm(80);

  /** So much is shown beyond the edge. */
  private static final Length BEYOND = Length.mm(4);

  /** Room for what is rounded. */
  private static final Length ABOUT = Length.mm(3);

  static SeatBox of(Picture picture, Fitting item) {
    PlacedItem placed = item.hardware().placed();
    Part host =
        picture.parts().stream()
            .filter(part -> part.name().equals(placed.host()))
            .findFirst()
            .orElseThrow(() -> new IllegalStateException("bug: hardware on a part not drawn"));
    Axis out = Face.nearest(placed.out()).axis();
    Box box = body(item);
    for (Axis axis : Axis.values()) {
      if (axis != out) {
        box = box.with(axis, toEdge(box.on(axis), host.bounds().on(axis)));
      }
    }
    return new SeatBox(host, box);
  }

  /** A stretch from its end that is nearer to an end of the part, and to that if it is near. */
  private static Range toEdge(Range item, Range part) {
    Length low = item.from().minus(part.from());
    Length high = part.to().minus(item.to());
    boolean isLow = !high.abs().isShorterThan(low.abs());
    Length length = item.length().min(LONGEST);
    Range end =
        isLow
            ? new Range(item.from(), item.from().plus(length))
            : new Range(item.to().minus(length), item.to());
    Length gap = isLow ? low : high;
    return gap.abs().isLongerThan(EDGE) ? end : withEdge(end, isLow ? part.from() : part.to());
  }

  private static Range withEdge(Range end, Length edge) {
    return end.around(new Range(edge.minus(BEYOND), edge.plus(BEYOND)));
  }

  /** The box round an item in its seat. */
  static Box body(Fitting fitting) {
    PlacedItem placed = fitting.hardware().placed();
    Box box = placed.solid().bounds(placed.at()).orElseThrow();
    for (Face face : Face.values()) {
      box = box.extended(face, ABOUT);
    }
    return box;
  }

  /** The same no deeper or higher than the face where the item goes in. */
  SeatBox onFace(PlacedItem item) {
    Axis out = Face.nearest(item.out()).axis();
    Length face = Askew.nearest(item.at()).on(out);
    return new SeatBox(host, box.with(out, new Range(face, face)));
  }

  /** Whether one item goes in where another sits. */
  static boolean holds(Fitting larger, Fitting each) {
    Point seat = Askew.nearest(each.hardware().placed().at());
    Box body = body(larger);
    return Stream.of(Axis.values()).allMatch(axis -> body.on(axis).contains(seat.on(axis)));
  }

  boolean isNear(Part part, double mm) {
    Box wide = box;
    for (Face face : Face.values()) {
      wide = wide.extended(face, Length.nearest(mm));
    }
    return wide.overlaps(part.bounds());
  }

  List<Vector3D> corners() {
    return Stream.of(box.x().from(), box.x().to())
        .flatMap(
            x ->
                Stream.of(box.y().from(), box.y().to())
                    .flatMap(
                        y ->
                            Stream.of(box.z().from(), box.z().to())
                                .map(z -> Vector3D.of(x.toMm(), y.toMm(), z.toMm()))))
        .toList();
  }
}
