package storyrod.planset;

import java.util.Comparator;
import java.util.List;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * Which of several units a unit is that lie above each other: drawers, whatever they are called,
 * and others of one name.
 */
record Stack(Piece piece) {
  private static final String NUMBER = " \\d+";

  /** Its place in a stack, with a space before it; empty if there is none. */
  String told(String unit, Texts texts) {
    List<String> stack =
        piece.description().assemblies().keySet().stream()
            .filter(other -> other.equals(unit) || lie(unit, other))
            .sorted(Comparator.comparing(other -> box(other).z().from()))
            .toList();
    int from = stack.indexOf(unit) + 1;
    int all = stack.size();
    if (all == 1) {
      return "";
    }
    String key = from == 1 ? "lowest" : from == all ? "uppermost" : "between";
    return " " + texts.say("general.stack." + key, all, from);
  }

  private boolean lie(String unit, String other) {
    return (isOfOneName(unit, other) || onSlides(unit) && onSlides(other))
        && box(unit).on(Axis.X).overlaps(box(other).on(Axis.X))
        && box(unit).on(Axis.Y).overlaps(box(other).on(Axis.Y));
  }

  private boolean isOfOneName(String unit, String other) {
    return isNumbered(unit) && isNumbered(other) && name(unit).equals(name(other));
  }

  /** Whether it is a drawer. */
  private boolean onSlides(String unit) {
    return piece.description().hardware().stream()
        .filter(entry -> piece.kind(entry.item().value()).isSlide())
        .flatMap(entry -> entry.parts().stream())
        .anyMatch(part -> Nesting.of(piece).isIn(part.value(), unit));
  }

  private boolean isNumbered(String unit) {
    return !name(unit).equals(GeneralPages.unitTitle(piece, unit));
  }

  private String name(String unit) {
    return GeneralPages.unitTitle(piece, unit).replaceAll(NUMBER + "$", "");
  }

  private Box box(String unit) {
    return Nesting.of(piece).parts(unit).stream()
        .map(Part::bounds)
        .reduce(Box::around)
        .orElseThrow();
  }
}
