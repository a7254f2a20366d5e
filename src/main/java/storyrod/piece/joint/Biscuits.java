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
 * Biscuits between two parts, in slots that a disc of 100 mm leaves when it is plunged in (common
 * practice, from memory); so a slot is longer than its biscuit, which can be shifted along it.
 */
public final class Biscuits extends Inserted {
  private static final Length DISC = Length.mm(100);

  public Biscuits() {
    super(
        ItemKind.BISCUIT,
        "biscuits",
        "The end of one part meets another, held by biscuits that lie in slots of both.");
  }

  @Override
  List<Sized> sizes(ItemEntry item) {
    return List.of(
        new Sized("thickness", item.sizes().thickness()),
        new Sized("slot-depth", item.sizes().slotDepth()));
  }

  @Override
  Length alongRow(ItemEntry item) {
    return Slots.plungedLength(DISC, item.sizes().slotDepth().orElseThrow());
  }

  @Override
  Length acrossRow(ItemEntry item) {
    return item.sizes().thickness().orElseThrow();
  }

  @Override
  Length depth(Meeting meeting, ItemEntry item, boolean inSecond) {
    return item.sizes().slotDepth().orElseThrow();
  }

  @Override
  Cut cut(Meeting meeting, ItemEntry item, Row row) {
    return new Slots(
        "biscuit slot",
        Slots.Form.PLUNGED,
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
