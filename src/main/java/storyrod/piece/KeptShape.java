package storyrod.piece;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * Tells parts that are cut out of others, and those they are cut out of, from parts of the same
 * shape that are not: they are made another way and from another blank.
 */
final class KeptShape {
  private KeptShape() {}

  /** A word for each part's origin by its full name; the same for left- and right-hand parts. */
  static UnaryOperator<String> of(List<Part> parts, List<KeptCutout> kept) {
    Map<String, PartShape> shapes = new LinkedHashMap<>();
    parts.forEach(part -> shapes.put(part.name(), new PartShape(part)));
    Map<String, String> origins = new LinkedHashMap<>();
    for (KeptCutout each : kept) {
      String how =
          " " + each.method().word() + " " + each.kerf().ticks() + " " + each.gap().ticks();
      origins.merge(each.board(), " opened" + how, String::concat);
      origins.put(each.kept(), " out of" + how + eitherHand(shapes.get(each.board())));
    }
    return part -> origins.getOrDefault(part, "");
  }

  private static String eitherHand(PartShape shape) {
    String key = shape.key();
    String mirrored = shape.mirrorKey();
    return " " + (key.compareTo(mirrored) < 0 ? key : mirrored);
  }
}
