package storyrod.piece;

import java.util.ArrayList;
import java.util.List;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;

/**
 * The short stub that stays beside a tenon at one edge, as thick as the tenon.
 *
 * @param side the edge of the part at which it stays
 * @param box what stays of the end there, from the shoulder
 */
public record Haunch(Face side, Box box) {
  /** How wide it is, from the tenon's edge outwards. */
  public Length width() {
    return box.size(side.axis());
  }

  /** What is cut away at its side: the end beyond it, and what lies outside of it. */
  List<Box> boxes(Cut.Tenon tenon) {
    Length edge = tenon.tenon().at(side);
    Length outer = tenon.end().at(side);
    Box whole = tenon.end().with(side.axis(), between(edge, outer));
    Length tip = box.at(tenon.from());
    List<Box> boxes = new ArrayList<>();
    boxes.add(whole.with(tenon.from().axis(), between(tip, tenon.tenon().at(tenon.from()))));
    if (!box.at(side).equals(outer)) {
      boxes.add(tenon.end().with(side.axis(), between(box.at(side), outer)));
    }
    return boxes;
  }

  private static Range between(Length one, Length other) {
    return new Range(one.min(other), one.max(other));
  }
}
