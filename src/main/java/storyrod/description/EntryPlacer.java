package storyrod.description;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.geometry.Axis;
import storyrod.geometry.Edge;
import storyrod.geometry.Face;
import storyrod.geometry.Range;
import storyrod.measure.Angle;
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
    turnRow(entry, placed);
    turnAngle(entry, placed);
    placeAlong(entry, placed);
    return new Entry(entry.kind(), entry.at(), placed, placement.turn());
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
      case Edge edge ->
          new Edge(placement.turn().of(edge.one()), placement.turn().of(edge.other()));
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

  private void turnRow(Entry entry, Map<String, Located<?>> placed) {
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
  }

  /** An angle about an axis that points the other way, or in a mirror, has the other sign. */
  private void turnAngle(Entry entry, Map<String, Located<?>> placed) {
    Optional<Axis> about =
        entry.find("about", Object.class).filter(Axis.class::isInstance).map(Axis.class::cast);
    if (about.isPresent() && entry.has("by")) {
      boolean isOther =
          placement.turn().of(about.get()).sign() < 0 != placement.turn().isMirrored();
      Angle by = entry.expect("by", Angle.class);
      placed.put("by", new Located<>(isOther ? by.negated() : by, entry.at("by")));
    }
  }

  /** A height, and a place along the part whose end is named. */
  private void placeAlong(Entry entry, Map<String, Located<?>> placed) {
    Optional<Axis> along =
        entry
            .find("end", Object.class)
            .filter(FaceRef.class::isInstance)
            .map(end -> ((FaceRef) end).face().axis());
    place("level", Optional.of(Axis.Z), entry, placed);
    place("from", along, entry, placed);
  }

  private void place(String key, Optional<Axis> own, Entry entry, Map<String, Located<?>> placed) {
    boolean isLength = entry.find(key, Object.class).filter(Length.class::isInstance).isPresent();
    if (isLength && own.isPresent()) {
      placed.put(key, new Located<>(placement.of(own.get(), entry.length(key)), entry.at(key)));
    }
  }
}
