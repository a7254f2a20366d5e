package storyrod.planset;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * A JPEG file (ITU-T T.81), segment by segment. Where and when it was taken, small copies and
 * remarks are left out; of Exif only the orientation stays.
 */
final class JpegFile {
  private static final int SOI = 0xD8;
  private static final int EOI = 0xD9;
  private static final int SOS = 0xDA;
  private static final int SOF_LAST = 0xC2;
  private static final int SOF_FIRST = 0xC0;
  private static final int DHT = 0xC4;
  private static final int DQT = 0xDB;
  private static final int DRI = 0xDD;
  private static final int APP0 = 0xE0;
  private static final int APP1 = 0xE1;
  private static final int APP2 = 0xE2;
  private static final int APP14 = 0xEE;
  private static final int FIRST_RST = 0xD0;
  private static final int LAST_RST = 0xD7;
  private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.ISO_8859_1);
  private static final byte[] ICC = "ICC_PROFILE\0".getBytes(StandardCharsets.ISO_8859_1);

  private final byte[] bytes;
  private final ByteArrayOutputStream kept = new ByteArrayOutputStream();
  private int at = 2;
  private int orientation = Exif.UPRIGHT;
  private int width;
  private int height;
  private int colours;
  private boolean scanned;

  JpegFile(byte[] bytes) {
    this.bytes = bytes;
  }

  static boolean is(byte[] bytes) {
    return bytes.length > 3 && u8(bytes, 0) == 0xFF && u8(bytes, 1) == SOI && u8(bytes, 2) == 0xFF;
  }

  /** Its size, from its head; nothing if there is none of a usual kind. */
  Optional<Photo> head() {
    while (width == 0 && segment()) {
      // goes on to the frame, which has the size
    }
    return isUsual() ? Optional.of(photo(new byte[0])) : Optional.empty();
  }

  /** The whole of it, cleaned; nothing if it does not come to its end. */
  Optional<Photo> photo() {
    while (segment()) {
      // each segment takes itself in
    }
    boolean ended = at + 1 < bytes.length && u8(bytes, at) == 0xFF && u8(bytes, at + 1) == EOI;
    return ended && scanned && isUsual() ? Optional.of(photo(cleaned())) : Optional.empty();
  }

  private Photo photo(byte[] content) {
    return new Photo(content, width, height, orientation);
  }

  /** Grey or three colours: of four it cannot be told what they mean. */
  private boolean isUsual() {
    return width > 0 && height > 0 && (colours == 1 || colours == 3);
  }

  /** Takes one segment; false at the end and where there is none. */
  private boolean segment() {
    while (at + 1 < bytes.length && u8(bytes, at) == 0xFF && u8(bytes, at + 1) == 0xFF) {
      at++;
    }
    if (at + 3 >= bytes.length || u8(bytes, at) != 0xFF || u8(bytes, at + 1) == EOI) {
      return false;
    }
    int marker = u8(bytes, at + 1);
    int length = 2 + u16(at + 2);
    if (length < 4 || at + length > bytes.length) {
      return false;
    }
    take(marker, length);
    int end = marker == SOS ? endOfScan(at + length) : at + length;
    if (isKept(marker, length)) {
      kept.write(bytes, at, end - at);
    }
    at = end;
    return true;
  }

  private void take(int marker, int length) {
    if (marker >= SOF_FIRST && marker <= SOF_LAST && length > 9) {
      height = u16(at + 5);
      width = u16(at + 7);
      colours = u8(bytes, at + 9);
    } else if (marker == APP1 && starts(EXIF)) {
      orientation = Exif.orientation(ByteBuffer.wrap(bytes, at + 10, length - 10).slice());
    } else if (marker == SOS) {
      scanned = true;
    }
  }

  private boolean isKept(int marker, int length) {
    return switch (marker) {
      case SOF_FIRST, SOF_FIRST + 1, SOF_LAST, DHT, DQT, DRI, SOS, APP0, APP14 -> true;
      case APP2 -> length > ICC.length + 4 && starts(ICC);
      default -> false;
    };
  }

  private boolean starts(byte[] with) {
    return at + 4 + with.length <= bytes.length
        && java.util.Arrays.equals(bytes, at + 4, at + 4 + with.length, with, 0, with.length);
  }

  /** The next marker behind packed pixels, among which some are only pauses. */
  private int endOfScan(int from) {
    int end = from;
    while (end + 1 < bytes.length && !isMarker(end)) {
      end++;
    }
    return end;
  }

  private boolean isMarker(int place) {
    int next = u8(bytes, place + 1);
    return u8(bytes, place) == 0xFF
        && next != 0
        && next != 0xFF
        && (next < FIRST_RST || next > LAST_RST);
  }

  private byte[] cleaned() {
    ByteArrayOutputStream all = new ByteArrayOutputStream(kept.size() + 64);
    all.writeBytes(new byte[] {(byte) 0xFF, (byte) SOI});
    if (orientation != Exif.UPRIGHT) {
      all.writeBytes(exif());
    }
    all.writeBytes(kept.toByteArray());
    all.writeBytes(new byte[] {(byte) 0xFF, (byte) EOI});
    return all.toByteArray();
  }

  /** A segment with the orientation alone. */
  private byte[] exif() {
    byte[] tiff = Exif.tiff(orientation);
    ByteBuffer segment = ByteBuffer.allocate(4 + EXIF.length + tiff.length);
    segment.putShort((short) (0xFF00 | APP1)).putShort((short) (segment.capacity() - 2));
    segment.put(EXIF).put(tiff);
    return segment.array();
  }

  private int u16(int place) {
    return u8(bytes, place) << 8 | u8(bytes, place + 1);
  }

  private static int u8(byte[] bytes, int place) {
    return bytes[place] & 0xFF;
  }
}
