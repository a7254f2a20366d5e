package storyrod.piece.joint;

import java.util.List;
import java.util.Optional;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Meeting;

/**
 * Dowels between two parts. Each hole is deeper than its share of the dowel by 1/16 in or 1.5 mm if
 * not said (common practice).
 */
public final class Dowels extends Inserted {
  public Dowels() {
    super(
        ItemKind.DOWEL,
        "dowels",
        "The end of one part meets another, held by dowels that lie in both.",
        DEPTH_INTO,
        ROOM);
  }

  @Override
  List<Sized> sizes(ItemEntry item) {
    return List.of(new Sized("diameter", item.diameter()), new Sized("length", item.length()));
  }

  @Override
  Length alongRow(ItemEntry item) {
    return item.diameter().orElseThrow();
  }

  @Override
  Length acrossRow(ItemEntry item) {
    return item.diameter().orElseThrow();
  }

  @Override
  Length depth(Meeting meeting, ItemEntry item, boolean inSecond) {
    return share(meeting, item, inSecond);
  }

  @Override
  Cut cut(Meeting meeting, ItemEntry item, Row row) {
    return new Cut.Holes(
        "dowel hole",
        row.from(),
        row.first(),
        row.along(),
        row.step(),
        row.count(),
        item.diameter().orElseThrow(),
        row.depth(),
        false,
        Optional.of(item.name()),
        meeting.entry().at());
  }
}
