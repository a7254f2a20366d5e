package storyrod.description;

import java.util.LinkedHashMap;
import java.util.Optional;
import storyrod.measure.Length;
import storyrod.measure.Unit;

/** What a shop is taken to be where its description says nothing; all common practice. */
record ShopDefaults(Unit unit) {
  private static final Length KERF = Length.inch(1, 8);
  private static final Length PLANER_WIDTH = Length.inches(13);
  private static final int WASTE_PERCENT = 20;
  private static final int CLAMPS = 6;

  ShopEntry shop(Optional<Entry> described) {
    Entry shop =
        described.orElseGet(
            () -> new Entry("shop", Span.startOf(new SourceText("", "")), new LinkedHashMap<>()));
    return new ShopEntry(
        shop.findLength("kerf").orElse(KERF),
        shop.findLength("edge-trim").orElseGet(() -> in(Length.inch(1, 4), 6)),
        shop.findLength("extra-length").orElseGet(() -> in(Length.inches(1), 25)),
        shop.findLength("extra-width").orElseGet(() -> in(Length.inch(1, 4), 6)),
        shop.findLength("planer-width").orElse(PLANER_WIDTH),
        shop.find("waste-percent", Integer.class).orElse(WASTE_PERCENT),
        shop.find("clamps", Integer.class).orElse(CLAMPS),
        shop.findLength("widest-fixed").orElse(ShopEntry.WIDEST_FIXED),
        machines(shop),
        shop.find("hours-per-day", Integer.class).orElse(ShopEntry.HOURS_PER_DAY));
  }

  private ShopMachines machines(Entry shop) {
    return new ShopMachines(
        shop.findLength("jointer-width"),
        shop.findLength("drum-sander-width"),
        shop.findLength("crosscut"),
        shop.findLength("shortest").orElseGet(() -> in(ShopMachines.USUAL.shortest(), 300)),
        shop.list("without", String.class),
        shop.findLength("clamp-opening"));
  }

  private Length in(Length inches, int millimetres) {
    return switch (unit) {
      case INCH -> inches;
      case MM -> Length.mm(millimetres);
    };
  }
}
