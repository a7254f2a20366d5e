package storyrod.planset;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * From what a plan set was made, as far as it lies in files.
 *
 * @param texts the description and the files that it uses, by their paths from its folder; the
 *     description first
 * @param photos by their paths as the description writes them
 */
public record Kept(Map<String, String> texts, Map<String, Photo> photos) {
  /** Nothing that came from a file. */
  public static final Kept NOTHING = new Kept(Map.of(), Map.of());

  public Kept {
    texts = Collections.unmodifiableMap(new LinkedHashMap<>(texts));
    photos = Collections.unmodifiableMap(new LinkedHashMap<>(photos));
  }

  Photo photo(String file) {
    Photo photo = photos.get(file);
    if (photo == null) {
      throw new IllegalStateException("bug: a photo that was not read: " + file);
    }
    return photo;
  }
}
