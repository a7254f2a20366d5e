package storyrod.description;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.geometry.Face;
import storyrod.geometry.Turn;
import storyrod.measure.Length;

/**
 * One entry as read: its kind, its place, and its values by key, each of the Java type that {@link
 * ValueType} names. A value that is asked for must be among the kind's keys.
 *
 * @param turn how the frame in which it was written lies in that of the piece; its values are
 *     placed already, and only what holds if nothing is said has to ask for it
 */
public record Entry(String kind, Span at, Map<String, Located<?>> values, Turn turn) {
  public Entry {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
  }

  /** An entry in the frame in which it was written. */
  Entry(String kind, Span at, Map<String, Located<?>> values) {
    this(kind, at, values, Turn.NONE);
  }

  /** Where the face looks in the piece that has this name where the entry was written. */
  public Face placed(Face own) {
    return turn.of(own);
  }

  Entry with(String key, Entry value) {
    Map<String, Located<?>> more = new LinkedHashMap<>(values);
    more.put(key, new Located<>(value, value.at()));
    return new Entry(kind, at, more, turn);
  }

  public boolean has(String key) {
    return values.containsKey(key);
  }

  /** Where a key's value stands, or the entry itself if it has none. */
  public Span at(String key) {
    Located<?> value = values.get(key);
    return value == null ? at : value.at();
  }

  public Length length(String key) {
    return expect(key, Length.class);
  }

  public Optional<Length> findLength(String key) {
    return find(key, Length.class);
  }

  public FaceRef face(String key) {
    return expect(key, FaceRef.class);
  }

  public String text(String key) {
    return expect(key, String.class);
  }

  public int count(String key) {
    return expect(key, Integer.class);
  }

  public boolean yes(String key, boolean otherwise) {
    return find(key, Boolean.class).orElse(otherwise);
  }

  /** The entries of a section that gives them names, in order; none if the section is missing. */
  Map<String, Entry> entries(String section) {
    Map<String, Entry> entries = new LinkedHashMap<>();
    find(section, Map.class)
        .ifPresent(
            all ->
                ((Map<?, ?>) all)
                    .forEach((name, entry) -> entries.put((String) name, (Entry) entry)));
    return entries;
  }

  /** The entries of a section that lists them; none if the section is missing. */
  public List<Entry> list(String section) {
    return find(section, List.class).stream()
        .flatMap(list -> ((List<?>) list).stream())
        .map(Entry.class::cast)
        .toList();
  }

  <T> Optional<Located<T>> findLocated(String key, Class<T> type) {
    return find(key, type).map(value -> new Located<>(value, at(key)));
  }

  <T> Located<T> located(String key, Class<T> type) {
    return new Located<>(expect(key, type), at(key));
  }

  /** The values of a key that takes one or more, in order; none if the key is missing. */
  public <T> List<Located<T>> list(String key, Class<T> type) {
    return find(key, List.class).stream()
        .flatMap(list -> ((List<?>) list).stream())
        .map(each -> (Located<?>) each)
        .map(each -> new Located<>(type.cast(each.value()), each.at()))
        .toList();
  }

  public <T> Optional<T> find(String key, Class<T> type) {
    return Optional.ofNullable(values.get(key)).map(located -> type.cast(located.value()));
  }

  public <T> T expect(String key, Class<T> type) {
    return find(key, type)
        .orElseThrow(() -> new IllegalStateException("bug: " + kind + " was read without " + key));
  }
}
