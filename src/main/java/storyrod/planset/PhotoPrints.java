package storyrod.planset;

import java.io.IOException;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** What a photo was packed anew to, by its dots across: all editions and papers share the work. */
public final class PhotoPrints {
  private final Map<Integer, byte[]> byDots = new ConcurrentHashMap<>();

  /** Packs a photo for a number of dots. */
  interface Packing {
    byte[] bytes() throws IOException;
  }

  /** Two that ask at once may both pack it, to the same bytes. */
  byte[] of(int dots, Packing packing) throws IOException {
    byte[] known = byDots.get(dots);
    if (known != null) {
      return known;
    }
    byte[] packed = packing.bytes();
    byDots.put(dots, packed);
    return packed;
  }
}
