package storyrod.planset;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** What a file's content is known by: sixteen bytes of its SHA-256 digest (FIPS 180-4). */
final class Identity {
  private static final int BYTES = 16;

  private Identity() {}

  /** Hexadecimal figures that stand for all of the arrays, one after the other. */
  static String hex(byte[]... content) {
    MessageDigest digest = digest();
    for (byte[] each : content) {
      digest.update(each);
    }
    return HexFormat.of().formatHex(digest.digest(), 0, BYTES);
  }

  private static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("bug: no SHA-256", e);
    }
  }
}
