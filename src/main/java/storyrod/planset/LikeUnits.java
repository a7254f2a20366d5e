package storyrod.planset;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * The titles of units that share a drawing: those that are as it shows them, the first of them
 * first, and those with left and right changed.
 */
record LikeUnits(List<String> same, List<String> mirrored) {
  static LikeUnits of(Piece piece, List<String> units) {
    List<String> same = new ArrayList<>();
    List<String> mirrored = new ArrayList<>();
    for (String unit : units) {
      boolean isSame = placed(piece, unit).equals(placed(piece, units.getFirst()));
      (isSame ? same : mirrored).add(GeneralPages.unitTitle(piece, unit));
    }
    return new LikeUnits(same, mirrored);
  }

  String sameTold() {
    return String.join(", ", same);
  }

  String mirroredTold() {
    return String.join(", ", mirrored);
  }

  /** Which parts lie where; two units of equal parts differ in this if in anything. */
  private static String placed(Piece piece, String unit) {
    List<Part> parts = Nesting.of(piece).parts(unit);
    Box box = parts.stream().map(Part::bounds).reduce(Box::around).orElseThrow();
    return parts.stream()
        .map(part -> part.mark() + part.mirrored() + from(part.bounds(), box))
        .sorted()
        .collect(Collectors.joining(" "));
  }

  private static String from(Box part, Box unit) {
    return Arrays.stream(Axis.values())
        .map(axis -> part.on(axis).from().minus(unit.on(axis).from()).toString())
        .collect(Collectors.joining(","));
  }
}
