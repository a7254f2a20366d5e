package storyrod.description;

import java.util.LinkedHashMap;
import java.util.Optional;
import storyrod.measure.Length;
import storyrod.measure.Unit;

/** What a shop is taken to be where its description says nothing; all common practice. */
record ShopDefaults(Unit unit) {
  private static final Length KERF = Length.inch(1, 8);
  private static final Length EXTRA_LENGTH = Length.inches(1);
  private static final Length EXTRA_WIDTH = Length.inch(1, 4);
  private static final Length PLANER_WIDTH = Length.inches(13);
  private static final int WASTE_PERCENT = 20;
  private static final int CLAMPS = 6;

  ShopEntry shop(Optional<Entry> described) {
    Entry shop =
        described.orElseGet(
            () -> new Entry("shop", Span.startOf(new SourceText("", "")), new LinkedHashMap<>()));
    return new ShopEntry(
        shop.findLength("kerf").orElse(KERF),
        shop.findLength("edge-trim").orElseGet(this::edgeTrim),
        shop.findLength("extra-length").orElse(EXTRA_LENGTH),
        shop.findLength("extra-width").orElse(EXTRA_WIDTH),
        shop.findLength("planer-width").orElse(PLANER_WIDTH),
        shop.find("waste-percent", Integer.class).orElse(WASTE_PERCENT),
        shop.find("clamps", Integer.class).orElse(CLAMPS),
        shop.findLength("widest-fixed").orElse(ShopEntry.WIDEST_FIXED),
        machines(shop));
  }

  private ShopMachines machines(Entry shop) {
    return new ShopMachines(
        shop.findLength("jointer-width"),
        shop.findLength("drum-sander-width"),
        shop.findLength("crosscut"),
        shop.findLength("shortest").orElseGet(this::shortest),
        shop.list("without", String.class));
  }

  private Length shortest() {
    return switch (unit) {
      case INCH -> ShopMachines.USUAL.shortest();
      case MM -> Length.mm(300);
    };
  }

  private Length edgeTrim() {
    return switch (unit) {
      case INCH -> Length.inch(1, 4);
      case MM -> Length.mm(6);
    };
  }
}
