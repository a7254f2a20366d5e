package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.Located;
import storyrod.description.SourceText;
import storyrod.description.Span;

/** Photos against the platform's own reader and writer of JPEG and PNG. */
class PhotoReaderTest {
  private static final String SECRET = "taken in the garden";
  private final Diagnostics diagnostics = new Diagnostics();

  private static BufferedImage image() {
    BufferedImage image = new BufferedImage(40, 24, BufferedImage.TYPE_INT_RGB);
    for (int x = 0; x < 40; x++) {
      for (int y = 0; y < 24; y++) {
        image.setRGB(x, y, x * 6 << 16 | y * 10 << 8 | 60);
      }
    }
    return image;
  }

  private static byte[] file(String format) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    assertTrue(ImageIO.write(image(), format, out));
    return out.toByteArray();
  }

  private Optional<Photo> read(byte[] bytes) {
    Span at = Span.startOf(new SourceText("project.yaml", "file"));
    return new PhotoReader(diagnostics).read(new Located<>("photo", at), bytes);
  }

  private String codes() {
    return String.join(" ", diagnostics.sorted().stream().map(Diagnostic::code).toList());
  }

  /** Puts bytes behind the first so many of a file. */
  private static byte[] with(byte[] file, int at, byte[] more) {
    return ByteBuffer.allocate(file.length + more.length)
        .put(file, 0, at)
        .put(more)
        .put(file, at, file.length - at)
        .array();
  }

  /** A segment of JPEG, its marker and length before what it holds. */
  private static byte[] segment(int marker, byte[] content) {
    return ByteBuffer.allocate(content.length + 4)
        .put((byte) 0xFF)
        .put((byte) marker)
        .putShort((short) (content.length + 2))
        .put(content)
        .array();
  }

  /** A directory of TIFF with a remark and an orientation, in the order of bytes of most phones. */
  private static byte[] exif(int orientation) {
    ByteBuffer exif = ByteBuffer.allocate(14 + 2 + 24 + SECRET.length());
    exif.put("Exif\0\0II".getBytes(StandardCharsets.ISO_8859_1));
    exif.order(java.nio.ByteOrder.LITTLE_ENDIAN).putShort((short) 42).putInt(8);
    exif.putShort((short) 2);
    exif.putShort((short) 0x010E).putShort((short) 2).putInt(SECRET.length()).putInt(34);
    exif.putShort((short) 0x0112).putShort((short) 3).putInt(1).putInt(orientation);
    return exif.put(SECRET.getBytes(StandardCharsets.ISO_8859_1)).array();
  }

  private static boolean isTold(byte[] file) {
    return new String(file, StandardCharsets.ISO_8859_1).contains(SECRET);
  }

  @ParameterizedTest
  @ValueSource(strings = {"jpg", "png"})
  void sizeIsThatOfThePictureAndThePixelsStayAsTheyAre(String format) throws IOException {
    byte[] file = file(format);
    Photo photo = read(file).orElseThrow();
    assertEquals("40 x 24", photo.width() + " x " + photo.height());
    BufferedImage before = ImageIO.read(new ByteArrayInputStream(file));
    BufferedImage after = ImageIO.read(new ByteArrayInputStream(photo.bytes()));
    for (int y = 0; y < 24; y++) {
      assertArrayEquals(
          before.getRGB(0, y, 40, 1, null, 0, 40), after.getRGB(0, y, 40, 1, null, 0, 40));
    }
  }

  @Test
  void onlyTheOrientationStaysOfWhatACameraWrites() throws IOException {
    byte[] taken = with(file("jpg"), 2, segment(0xE1, exif(6)));
    taken = with(taken, 2, segment(0xFE, SECRET.getBytes(StandardCharsets.ISO_8859_1)));
    assertTrue(isTold(taken));
    Photo photo = read(taken).orElseThrow();
    assertFalse(isTold(photo.bytes()));
    assertEquals(6, photo.orientation());
    assertEquals(24.0 / 40, photo.ratio(), 1e-9);
    assertEquals(6, read(photo.bytes()).orElseThrow().orientation());
  }

  @Test
  void whatFollowsTheEndIsLeftOut() throws IOException {
    byte[] file = file("jpg");
    byte[] more = with(file, file.length, SECRET.getBytes(StandardCharsets.ISO_8859_1));
    assertFalse(isTold(read(more).orElseThrow().bytes()));
  }

  /** A chunk of PNG, its length and name before what it holds, its check sum behind it. */
  private static byte[] chunk(String name, byte[] content) {
    ByteBuffer chunk = ByteBuffer.allocate(content.length + 12);
    chunk.putInt(content.length).put(name.getBytes(StandardCharsets.ISO_8859_1)).put(content);
    CRC32 sum = new CRC32();
    sum.update(chunk.array(), 4, content.length + 4);
    return chunk.putInt((int) sum.getValue()).array();
  }

  @Test
  void textsOfAPngAreLeftOut() throws IOException {
    byte[] text = ("Comment\0" + SECRET).getBytes(StandardCharsets.ISO_8859_1);
    byte[] more = with(file("png"), 33, chunk("tEXt", text));
    assertTrue(isTold(more));
    assertFalse(isTold(read(more).orElseThrow().bytes()));
  }

  /** Of its Exif too (PNG, third edition, 11.3.4.5), the orientation stays alone. */
  @Test
  void aPngIsTurnedAsItsExifSays() throws IOException {
    byte[] tiff = exif(8);
    byte[] more = with(file("png"), 33, chunk("eXIf", Arrays.copyOfRange(tiff, 6, tiff.length)));
    assertTrue(isTold(more));
    Photo photo = read(more).orElseThrow();
    assertFalse(isTold(photo.bytes()));
    assertEquals(8, photo.orientation());
    assertEquals(8, read(photo.bytes()).orElseThrow().orientation());
    assertEquals(40, ImageIO.read(new ByteArrayInputStream(photo.bytes())).getWidth());
  }

  /** Wherever a file is cut off it is refused, and nothing worse happens. */
  @ParameterizedTest
  @ValueSource(strings = {"jpg", "png"})
  void aFileThatIsCutOffIsRefused(String format) throws IOException {
    byte[] file = file(format);
    for (int length = 0; length < file.length; length++) {
      assertTrue(read(Arrays.copyOf(file, length)).isEmpty(), "cut to " + length);
    }
    assertTrue(codes().matches("(photo-kind |photo-broken ?)+"), codes());
  }

  @Test
  void aPngWithAChangedBitIsRefused() throws IOException {
    byte[] file = file("png");
    for (int at = 8; at < file.length; at++) {
      byte[] changed = file.clone();
      changed[at] ^= 1;
      assertTrue(read(changed).isEmpty(), "changed at " + at);
    }
  }

  @Test
  void tooManyPixelsAreRefusedBeforeAnyIsUnpacked() throws IOException {
    byte[] jpeg = file("jpg");
    int frame = 0;
    while (!(jpeg[frame] == (byte) 0xFF && jpeg[frame + 1] == (byte) 0xC0)) {
      frame++;
    }
    ByteBuffer.wrap(jpeg).putShort(frame + 5, (short) 9000).putShort(frame + 7, (short) 9000);
    assertTrue(read(jpeg).isEmpty());
    assertEquals("photo-too-large", codes());
  }

  /** Where Exif 2.32 says that row 0 and column 0 of what is stored are seen. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "1 top left", "2 top right", "3 bottom right", "4 bottom left",
        "5 left top", "6 right top", "7 right bottom", "8 left bottom"
      })
  void theFirstRowAndColumnStandWhereTheOrientationSays(String told) {
    String[] words = told.split(" ");
    Photo photo = new Photo(new byte[0], 4, 3, Integer.parseInt(words[0]));
    float[] m = photo.matrix(0, 0, 2, 2);
    assertEquals(words[1], side(at(m, 0, 1), at(m, 1, 1)));
    assertEquals(words[2], side(at(m, 0, 0), at(m, 0, 1)));
  }

  /** A point of the stored picture, whose lower left corner is 0, 0 and whose upper right 1, 1. */
  private static float[] at(float[] m, int x, int y) {
    return new float[] {m[0] * x + m[2] * y + m[4], m[1] * x + m[3] * y + m[5]};
  }

  /** The side of the box from 0 to 2 on which both points lie. */
  private static String side(float[] one, float[] other) {
    if (one[0] == other[0]) {
      return one[0] == 0 ? "left" : "right";
    }
    return one[1] == 0 ? "bottom" : "top";
  }
}
