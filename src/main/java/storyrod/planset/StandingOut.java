package storyrod.planset;

import java.util.Set;
import java.util.stream.Collectors;
import storyrod.build.PlacedHardware;
import storyrod.build.PlacedItem;
import storyrod.description.ItemKind;
import storyrod.geometry.Box;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** Hardware that stands out beyond the wood, which the overall sizes of a piece leave out. */
record StandingOut(boolean feet, boolean handles) {
  private static final Set<ItemKind> FEET = Set.of(ItemKind.FOOT, ItemKind.LEVELLING_FOOT);
  private static final Set<ItemKind> HANDLES = Set.of(ItemKind.KNOB, ItemKind.PULL);

  static StandingOut of(Piece piece) {
    Box wood = piece.parts().stream().map(Part::bounds).reduce(Box::around).orElseThrow();
    Set<ItemKind> kinds =
        PlacedHardware.of(piece).stream()
            .filter(item -> item.origin().entry().isPresent() && standsOut(item, wood))
            .map(item -> piece.kind(item.item()))
            .collect(Collectors.toSet());
    return new StandingOut(
        FEET.stream().anyMatch(kinds::contains), HANDLES.stream().anyMatch(kinds::contains));
  }

  private static boolean standsOut(PlacedItem item, Box wood) {
    return item.solid().moved(item.at()).bounds().filter(body -> !wood.contains(body)).isPresent();
  }

  /** A sentence that says so, with a blank before it; empty where nothing stands out. */
  String told(Texts texts) {
    if (!feet && !handles) {
      return "";
    }
    String which = feet && handles ? "feet-and-handles" : feet ? "feet" : "handles";
    return " " + texts.say("general.lead.without-" + which);
  }
}
