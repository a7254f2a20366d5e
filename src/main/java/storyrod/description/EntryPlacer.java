package storyrod.description;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Length;

/**
 * Brings an entry that was read in a sub-assembly's own frame into the frame of the piece. Faces,
 * axes and points go with the frame; the keys {@code x}, {@code y} and {@code z} change places with
 * their axes; a row whose axis is turned about runs the other way.
 */
final class EntryPlacer {
  private final Placement placement;

  EntryPlacer(Placement placement) {
    this.placement = placement;
  }

  Entry place(Entry entry) {
    if (placement.isNone()) {
      return entry;
    }
    Map<String, Located<?>> placed = new LinkedHashMap<>();
    entry
        .values()
        .forEach(
            (key, value) ->
                placed.put(key(key, value.value()), new Located<>(value(key, value), value.at())));
    return new Entry(entry.kind(), entry.at(), turnedRow(entry, placed));
  }

  private String key(String key, Object value) {
    return onAxis(key, value) ? placement.turn().of(axis(key)).axis().word() : key;
  }

  private static boolean onAxis(String key, Object value) {
    return (value instanceof Range || value instanceof Length)
        && (key.equals("x") || key.equals("y") || key.equals("z"));
  }

  private static Axis axis(String key) {
    return Axis.valueOf(key.toUpperCase(java.util.Locale.ROOT));
  }

  private Object value(String key, Located<?> located) {
    Object value = located.value();
    if (onAxis(key, value)) {
      return value instanceof Range range
          ? placement.of(axis(key), range)
          : placement.of(axis(key), (Length) value);
    }
    return placed(value);
  }

  private Object placed(Object value) {
    return switch (value) {
      case FaceRef face -> new FaceRef(face.part(), placement.turn().of(face.face()));
      case Face face -> placement.turn().of(face);
      case Axis axis -> placement.turn().of(axis).axis();
      case PointAt point -> placement.of(point);
      case Entry inner -> place(inner);
      case List<?> list -> list.stream().map(this::each).toList();
      default -> value;
    };
  }

  private Object each(Object item) {
    return item instanceof Located<?> located
        ? new Located<>(placed(located.value()), located.at())
        : placed(item);
  }

  private Map<String, Located<?>> turnedRow(Entry entry, Map<String, Located<?>> placed) {
    boolean about =
        entry
            .find("along", Object.class)
            .filter(Axis.class::isInstance)
            .filter(along -> placement.turn().of((Axis) along).sign() < 0)
            .isPresent();
    if (about && entry.has("step")) {
      Length step = entry.length("step");
      placed.put("step", new Located<>(step.negated(), entry.at("step")));
    }
    return placed;
  }
}
