package storyrod.build;

import java.util.regex.Pattern;
import storyrod.description.FinishEntry;
import storyrod.description.ItemEntry;
import storyrod.piece.Piece;

/** Hardware that holds by glue of its own, and what it is stuck to. */
public final class Sticking {
  /** What its name says, in the languages of the templates. */
  private static final Pattern NAMED =
      Pattern.compile(
          "\\b(?:self-adhesive|adhesive|stick-on)\\b|selbstkleb",
          Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

  private Sticking() {}

  /** Whether an item sticks by itself; hardware of a kind with words of its own is screwed on. */
  public static boolean is(ItemEntry item) {
    return switch (item.kind()) {
      case SLIDE, UNDER_SLIDE, CONCEALED_HINGE, BUTT_HINGE, PULL, KNOB, CATCH -> false;
      case ANTI_TIP_STRAP, SHELF_PIN, FOOT, LEVELLING_FOOT -> false;
      case OTHER, WOOD_SCREW, POCKET_SCREW, BRAD, TOP_FASTENER, ROTATING_FASTENER, BUTTON, DOWEL ->
          NAMED.matcher(item.title()).find();
      case BISCUIT, LOOSE_TENON, PLUG, WASHER -> NAMED.matcher(item.title()).find();
    };
  }

  /** Whether it is stuck where wax lies uppermost, which is wiped off with spirits first. */
  public static boolean isOverWax(Piece piece, ItemEntry item) {
    return is(item) && piece.description().finish().filter(Sticking::isWaxed).isPresent();
  }

  private static boolean isWaxed(FinishEntry finish) {
    return finish.last().orElse(finish).kind().filter("wax"::equals).isPresent();
  }
}
