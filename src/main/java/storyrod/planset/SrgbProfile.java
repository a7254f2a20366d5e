package storyrod.planset;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The colour space of the pages, sRGB, as a profile (ICC.1:2010, version 4.3, of three primaries
 * and a curve). Figures are those of IEC 61966-2-1, the primaries adapted to D50 by the linear
 * Bradford transform (ICC.1:2010, annex E).
 */
final class SrgbProfile {
  private static final int HEAD = 128;
  private static final int ENTRY = 12;
  private static final int VERSION = 0x04300000;
  private static final double ONE = 65536;

  private static final double[] WHITE = {0.9642, 1, 0.8249};
  private static final double[] RED = {0.43607, 0.22249, 0.01392};
  private static final double[] GREEN = {0.38515, 0.71687, 0.09708};
  private static final double[] BLUE = {0.14307, 0.06061, 0.71410};

  /** From D65, the white of sRGB, to D50, row by row. */
  private static final double[] ADAPTATION = {
    1.04788, 0.02292, -0.05020, 0.02959, 0.99048, -0.01707, -0.00923, 0.01508, 0.75168
  };

  /** g, a, b, c and d of the fourth kind of curve: (ax + b)^g from d on, and cx below. */
  private static final double[] CURVE = {2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045};

  private static final int CURVE_KIND = 3;

  private SrgbProfile() {}

  /** The profile; the same bytes each time. */
  static byte[] bytes() {
    Map<String, byte[]> tags = tags();
    int size =
        HEAD + 4 + ENTRY * tags.size() + tags.values().stream().mapToInt(t -> t.length).sum();
    ByteBuffer profile = ByteBuffer.allocate(size);
    head(profile);
    profile.position(HEAD);
    directory(profile, tags);
    tags.values().forEach(profile::put);
    return profile.array();
  }

  /** A display's profile: first made in 2010, by the rules of that year. */
  private static void head(ByteBuffer profile) {
    profile.putInt(profile.capacity()).putInt(0).putInt(VERSION);
    profile.put(ascii("mntrRGB XYZ "));
    profile.putShort((short) 2010).putShort((short) 12).putShort((short) 1);
    profile.position(36).put(ascii("acsp"));
    profile.position(68).put(fixed(WHITE));
  }

  private static void directory(ByteBuffer profile, Map<String, byte[]> tags) {
    int at = HEAD + 4 + ENTRY * tags.size();
    profile.putInt(tags.size());
    for (Map.Entry<String, byte[]> each : tags.entrySet()) {
      profile.put(ascii(each.getKey())).putInt(at).putInt(each.getValue().length);
      at += each.getValue().length;
    }
  }

  private static Map<String, byte[]> tags() {
    Map<String, byte[]> tags = new LinkedHashMap<>();
    tags.put("desc", text("sRGB"));
    tags.put("cprt", text("no copyright"));
    tags.put("wtpt", tag("XYZ ", fixed(WHITE)));
    tags.put("chad", tag("sf32", fixed(ADAPTATION)));
    tags.put("rXYZ", tag("XYZ ", fixed(RED)));
    tags.put("gXYZ", tag("XYZ ", fixed(GREEN)));
    tags.put("bXYZ", tag("XYZ ", fixed(BLUE)));
    tags.put("rTRC", curve());
    tags.put("gTRC", curve());
    tags.put("bTRC", curve());
    return tags;
  }

  private static byte[] curve() {
    byte[] numbers = fixed(CURVE);
    return tag(
        "para",
        ByteBuffer.allocate(4 + numbers.length)
            .putShort((short) CURVE_KIND)
            .putShort((short) 0)
            .put(numbers)
            .array());
  }

  /** A text in one language, filled up to whole words of four bytes. */
  private static byte[] text(String text) {
    byte[] letters = text.getBytes(StandardCharsets.UTF_16BE);
    ByteBuffer record = ByteBuffer.allocate((20 + letters.length + 3) / 4 * 4);
    record.putInt(1).putInt(ENTRY).put(ascii("enUS")).putInt(letters.length).putInt(28);
    return tag("mluc", record.put(letters).array());
  }

  private static byte[] tag(String kind, byte[] content) {
    return ByteBuffer.allocate(8 + content.length).put(ascii(kind)).putInt(0).put(content).array();
  }

  /** Numbers as sixteen bits before the point and sixteen behind it. */
  private static byte[] fixed(double... numbers) {
    ByteBuffer fixed = ByteBuffer.allocate(4 * numbers.length);
    for (double each : numbers) {
      fixed.putInt((int) Math.round(each * ONE));
    }
    return fixed.array();
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }
}
