package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;

/** Compares folders byte by byte. */
final class Same {
  private Same() {}

  static void assertSame(Map<String, byte[]> expected, Map<String, byte[]> found) {
    assertEquals(expected.keySet(), found.keySet());
    expected.forEach((name, bytes) -> assertArrayEquals(bytes, found.get(name), name));
  }
}
