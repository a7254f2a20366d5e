package storyrod.build;

import java.util.List;
import java.util.stream.Stream;
import storyrod.build.Catches.End;
import storyrod.build.PlacedItem.Makeup;
import storyrod.build.PlacedItem.Origin;
import storyrod.description.HardwareEntry;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Pose;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Part;

/**
 * Catches as two bodies each: the catch on what stands beside the door, the strike on the door. A
 * deep post has the catch on its flank; one that ends with the door, as a frame's stile does, has
 * it on its back, and the catch reaches past its edge.
 */
record CatchItems(Catches catches, HardwareShapes shapes) {
  /** A strike: thick, high, wide (usual sizes, from memory). */
  private static final Length STRIKE = Length.mm(2);

  private static final Length STRIKE_HIGH = Length.mm(15);
  private static final Length STRIKE_WIDE = Length.mm(18);

  /** What of a catch that reaches past an edge is screwed on (from memory). */
  private static final Length ON = Length.mm(18);

  /** How far a strike keeps from the door's edge, or from the post. */
  private static final Length IN = Length.mm(4);

  private static final int SORTS = 2;
  private static final Range AT_EDGE = new Range(Length.ZERO, Length.ZERO);

  /** Empty where no post is known. */
  List<PlacedItem> of(HardwareEntry entry) {
    return catches.ends(entry).stream().flatMap(end -> of(entry, end)).toList();
  }

  private Stream<PlacedItem> of(HardwareEntry entry, End end) {
    return Stream.of(body(entry, end), strike(entry, end));
  }

  private PlacedItem body(HardwareEntry entry, End end) {
    Part post = end.post();
    Face out = end.out();
    Length before = end.door().bounds().at(Face.BACK).plus(STRIKE);
    boolean isDeep = !post.bounds().at(Face.BACK).minus(before).isShorterThan(Catches.LONG);
    Length depth = isDeep ? before : post.bounds().at(Face.BACK);
    Point at = new Point(post.bounds().at(out), depth, end.height());
    Face from = isDeep ? out : Face.BACK;
    Box[] boxes = isDeep ? flank(out) : back(out, before.minus(depth));
    return new PlacedItem(
        entry.item().value(),
        Origin.of(entry, List.of(post.name()), new Makeup(1, 0, SORTS)),
        post.name(),
        at.toMm(),
        from.normal(),
        shapes.boxes(Pose.NONE, boxes));
  }

  private static Box[] flank(Face out) {
    Range along = new Range(Length.ZERO, Catches.LONG);
    return new Box[] {new Box(past(out, Catches.DEEP), along, HardwareShapes.about(Catches.WIDE))};
  }

  private static Box[] back(Face out, Length before) {
    Range high = HardwareShapes.about(Catches.WIDE);
    Box on = new Box(past(out.opposite(), ON), new Range(Length.ZERO, Catches.DEEP), high);
    Range deep = new Range(before, Catches.DEEP);
    return new Box[] {on, new Box(past(out, Catches.LONG.minus(ON)), deep, high)};
  }

  private static Range past(Face out, Length length) {
    return AT_EDGE.extended(out.sign(), length);
  }

  /** Behind the door's free edge, past the flank of a post that it laps over. */
  private PlacedItem strike(HardwareEntry entry, End end) {
    Face out = end.out();
    Length edge = end.edge().plus(IN.times(out.sign()));
    Range thick = new Range(Length.ZERO, STRIKE);
    Box plate = new Box(past(out, STRIKE_WIDE), thick, HardwareShapes.about(STRIKE_HIGH));
    return new PlacedItem(
        entry.item().value(),
        Origin.of(entry, List.of(end.door().name()), new Makeup(1, 1, SORTS)),
        end.door().name(),
        new Point(edge, end.door().bounds().at(Face.BACK), end.height()).toMm(),
        Face.BACK.normal(),
        shapes.boxes(Pose.NONE, plate));
  }
}
