package storyrod.planset;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.zip.CRC32;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * A PNG file (ISO/IEC 15948), chunk by chunk. Texts and times are left out; of Exif only the
 * orientation stays.
 */
final class PngFile {
  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
  private static final int AROUND = 12;
  private static final String EXIF = "eXIf";
  private static final Set<String> KEPT =
      Set.of("IHDR", "PLTE", "IDAT", "IEND", "tRNS", "gAMA", "cHRM", "sRGB");

  /** An interlaced picture has rows of seven sizes, in all less than twice as many bytes. */
  private static final int INTERLACED = 2;

  private final ByteBuffer file;
  private final ByteArrayOutputStream kept = new ByteArrayOutputStream();
  private final ByteArrayOutputStream packed = new ByteArrayOutputStream();
  private String last = "";
  private int orientation = Exif.UPRIGHT;

  PngFile(byte[] bytes) {
    this.file = ByteBuffer.wrap(bytes);
  }

  static boolean is(byte[] bytes) {
    return bytes.length > SIGNATURE.length
        && Arrays.equals(bytes, 0, SIGNATURE.length, SIGNATURE, 0, SIGNATURE.length);
  }

  /** Its size, from its first chunk. */
  Optional<Photo> head() {
    boolean whole = file.capacity() >= 33 && name(SIGNATURE.length).equals("IHDR");
    return whole && file.getInt(16) > 0 && file.getInt(20) > 0
        ? Optional.of(photo(new byte[0]))
        : Optional.empty();
  }

  /** The whole of it, cleaned; nothing if it is damaged or does not come to its end. */
  Optional<Photo> photo() {
    kept.writeBytes(SIGNATURE);
    int at = SIGNATURE.length;
    while (!last.equals("IEND") && isSound(at)) {
      take(at);
      at += AROUND + file.getInt(at);
    }
    return last.equals("IEND") && isFull()
        ? Optional.of(photo(kept.toByteArray()))
        : Optional.empty();
  }

  private Photo photo(byte[] content) {
    return new Photo(content, file.getInt(16), file.getInt(20), orientation);
  }

  private String name(int at) {
    return new String(file.array(), at + 4, 4, StandardCharsets.ISO_8859_1);
  }

  /** Whether a chunk is there as a whole and its check sum holds. */
  private boolean isSound(int at) {
    if (at + AROUND > file.capacity()) {
      return false;
    }
    int length = file.getInt(at);
    if (length < 0 || length > file.capacity() - at - AROUND) {
      return false;
    }
    CRC32 sum = new CRC32();
    sum.update(file.array(), at + 4, length + 4);
    return (int) sum.getValue() == file.getInt(at + 8 + length);
  }

  private void take(int at) {
    last = name(at);
    if (last.equals("IDAT")) {
      packed.write(file.array(), at + 8, file.getInt(at));
    } else if (last.equals(EXIF)) {
      orientation = Exif.orientation(file.slice(at + 8, file.getInt(at)));
    } else if (last.equals("IEND") && orientation != Exif.UPRIGHT) {
      kept.writeBytes(exif());
    }
    if (KEPT.contains(last)) {
      kept.write(file.array(), at, AROUND + file.getInt(at));
    }
  }

  /** A chunk with the orientation alone. */
  private byte[] exif() {
    byte[] tiff = Exif.tiff(orientation);
    ByteBuffer chunk = ByteBuffer.allocate(AROUND + tiff.length);
    chunk.putInt(tiff.length).put(EXIF.getBytes(StandardCharsets.ISO_8859_1)).put(tiff);
    CRC32 sum = new CRC32();
    sum.update(chunk.array(), 4, tiff.length + 4);
    return chunk.putInt((int) sum.getValue()).array();
  }

  /** Whether its packed pixels are as many as its head says; no more than these are unpacked. */
  private boolean isFull() {
    long rows = Integer.toUnsignedLong(file.getInt(20));
    long bits = (long) file.getInt(16) * file.get(24) * samples(file.get(25));
    long wanted = rows * (1 + (bits + 7) / 8);
    boolean interlaced = file.get(28) != 0;
    long found = unpacked(interlaced ? INTERLACED * wanted + 64 : wanted);
    return bits > 0 && (interlaced ? found > 0 : found == wanted);
  }

  private static int samples(int colourType) {
    return switch (colourType) {
      case 0, 3 -> 1;
      case 2 -> 3;
      case 4 -> 2;
      case 6 -> 4;
      default -> 0;
    };
  }

  /** How many bytes the pixels come to; zero if they are damaged, or are more than wanted. */
  private long unpacked(long most) {
    Inflater inflater = new Inflater();
    try {
      inflater.setInput(packed.toByteArray());
      byte[] part = new byte[1 << 16];
      while (!inflater.finished() && inflater.getBytesWritten() <= most) {
        if (inflater.inflate(part) == 0) {
          return 0;
        }
      }
      return inflater.getBytesWritten() <= most ? inflater.getBytesWritten() : 0;
    } catch (DataFormatException e) {
      return 0;
    } finally {
      inflater.end();
    }
  }
}
