package storyrod.piece.joint;

import java.util.List;
import java.util.Optional;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Meeting;
import storyrod.piece.Slots;

/**
 * Tenons of their own, with round edges, glued into equal mortises with round ends in both parts.
 * Each mortise is deeper than its share of the tenon by 1/16 in or 1.5 mm if not said (common
 * practice).
 */
public final class LooseTenon extends Inserted {
  public LooseTenon() {
    super(
        ItemKind.LOOSE_TENON,
        "loose-tenon",
        "The end of one part meets another, held by tenons of their own in mortises of both.",
        DEPTH_INTO,
        ROOM);
  }

  @Override
  List<Sized> sizes(ItemEntry item) {
    return List.of(
        new Sized("thickness", item.sizes().thickness()),
        new Sized("width", item.sizes().width()),
        new Sized("length", item.length()));
  }

  @Override
  Length alongRow(ItemEntry item) {
    return item.sizes().width().orElseThrow();
  }

  @Override
  Length acrossRow(ItemEntry item) {
    return item.sizes().thickness().orElseThrow();
  }

  @Override
  Length depth(Meeting meeting, ItemEntry item, boolean inSecond) {
    return share(meeting, item, inSecond);
  }

  @Override
  Cut cut(Meeting meeting, ItemEntry item, Row row) {
    return new Slots(
        "round-ended mortise",
        Slots.Form.ROUND_ENDS,
        row.from(),
        row.first(),
        row.along(),
        row.step(),
        row.count(),
        new Slots.Size(alongRow(item), acrossRow(item), row.depth()),
        false,
        Optional.of(item.name()),
        meeting.entry().at());
  }
}
