package storyrod.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Description;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.ItemEntry;
import storyrod.measure.Length;
import storyrod.piece.MadeItems.Slot;

/** What is wrong with an item that is cut from a stock. */
final class MadeFaults {
  private static final String CODE = "made-item";

  private final Description description;
  private final ItemEntry item;
  private final String stock;

  MadeFaults(Description description, ItemEntry item) {
    this.description = description;
    this.item = item;
    this.stock = item.from().orElseThrow().value();
  }

  /**
   * Reports all faults; whether there are none.
   *
   * @param slots those in which it lies
   * @param uses how many of it the piece uses
   */
  boolean tell(List<Slot> slots, int uses, Diagnostics diagnostics) {
    List<Diagnostic> faults = new ArrayList<>();
    item.price().ifPresent(price -> faults.add(priced()));
    if (uses > slots.size()) {
      faults.add(sizeless());
    }
    slots.stream()
        .flatMap(slot -> Stream.of(thickness(slot), width(slot), size(slots.getFirst(), slot)))
        .flatMap(Optional::stream)
        .findFirst()
        .ifPresent(faults::add);
    diagnostics.addAll(faults);
    return faults.isEmpty();
  }

  private Diagnostic priced() {
    return Diagnostic.error(
            CODE,
            item.at(),
            "%s is cut from `%s`, and has a price like what is bought"
                .formatted(item.name(), stock))
        .hint("take its price away: its wood is counted with that of `%s`".formatted(stock));
  }

  private Diagnostic sizeless() {
    return Diagnostic.error(
            CODE,
            item.from().orElseThrow().at(),
            "%s is cut from `%s`, but what uses it does not tell how large it is"
                .formatted(item.name(), stock))
        .hint("only splines of mitres are cut from a stock; take `from` away from what is bought");
  }

  private Optional<Diagnostic> thickness(Slot slot) {
    Length have = description.stock().get(stock).thickness().value();
    return slot.cut().thickness().equals(have)
        ? Optional.empty()
        : Optional.of(
            Diagnostic.error(
                    "made-thickness",
                    slot.cut().at(),
                    "the slot for %s is %s wide, but `%s`, from which it is cut, is %s thick"
                        .formatted(item.name(), print(slot.cut().thickness()), stock, print(have)))
                .also(item.at(), item.name() + " is defined here")
                .hint(
                    "write `thickness: %s.thickness`, or cut it from another stock"
                        .formatted(stock)));
  }

  private Optional<Diagnostic> width(Slot slot) {
    Length have = slot.cut().depth().times(2);
    Length width = sized(slot).across();
    return width.isPositive() && !width.isLongerThan(have)
        ? Optional.empty()
        : Optional.of(
            Diagnostic.error(
                    "made-width",
                    item.at(),
                    "%s is %s wide, and its two slots are together %s deep"
                        .formatted(item.name(), print(width), print(have)))
                .also(slot.cut().at(), "the slots stand here")
                .hint("leave 1/16 in (1.5 mm) of room for the glue, or leave `width` out"));
  }

  private Optional<Diagnostic> size(Slot first, Slot slot) {
    SplineSize one = sized(first);
    SplineSize other = sized(slot);
    return one.equals(other)
        ? Optional.empty()
        : Optional.of(
            Diagnostic.error(
                    "made-sizes",
                    slot.cut().at(),
                    "%s is %s here, but %s in another joint"
                        .formatted(item.name(), print(other), print(one)))
                .also(first.cut().at(), "the other joint stands here")
                .hint("give the splines of each size an item of their own"));
  }

  private SplineSize sized(Slot slot) {
    return SplineSize.of(item, slot.part(), slot.cut(), description.format().unit());
  }

  private String print(SplineSize size) {
    return print(size.across()) + " x " + print(size.along());
  }

  private String print(Length length) {
    return description.format().formatWithUnit(length);
  }
}
