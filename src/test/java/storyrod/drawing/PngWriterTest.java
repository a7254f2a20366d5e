package storyrod.drawing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;

/** Pictures held to the PNG specification (ISO/IEC 15948): its chunks are read here by hand. */
class PngWriterTest {
  private static final double PIXELS_PER_MM = 300 / 25.4;

  private static Drawing line(double width, double height) {
    Line line = new Line(Role.VISIBLE, List.of(new At(10, 10), new At(width - 10, 10)));
    return new Drawing("line", width, height, Optional.empty(), List.of(line));
  }

  /** The chunks by their types: length, type, data and check sum, after eight bytes. */
  private static Map<String, ByteBuffer> chunks(byte[] png) {
    ByteBuffer in = ByteBuffer.wrap(png);
    in.position(8);
    Map<String, ByteBuffer> chunks = new LinkedHashMap<>();
    while (in.hasRemaining()) {
      int length = in.getInt();
      byte[] type = new byte[4];
      in.get(type);
      byte[] data = new byte[length];
      in.get(data);
      in.getInt();
      chunks.put(new String(type, StandardCharsets.US_ASCII), ByteBuffer.wrap(data));
    }
    return chunks;
  }

  private static BufferedImage read(byte[] png) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(png));
  }

  @Test
  void pictureHasThreeHundredDotsAnInchAndSaysSo() throws IOException {
    byte[] png = PngWriter.write(line(100, 50));
    BufferedImage image = read(png);
    assertEquals((int) (100 * PIXELS_PER_MM), image.getWidth());
    assertEquals((int) (50 * PIXELS_PER_MM), image.getHeight());
    ByteBuffer size = chunks(png).get("pHYs");
    // 300 dots in 25.4 mm are 11 811 on a metre; unit 1 is the metre
    assertEquals(11_811, size.getInt());
    assertEquals(11_811, size.getInt());
    assertEquals(1, size.get());
  }

  @Test
  void lineStandsWhereTheDrawingHasIt() throws IOException {
    BufferedImage image = read(PngWriter.write(line(100, 50)));
    int y = (int) (10 * PIXELS_PER_MM);
    assertTrue((image.getRGB((int) (50 * PIXELS_PER_MM), y) & 0xff) < 0x60, "ink on the line");
    assertEquals(0xffffffff, image.getRGB((int) (50 * PIXELS_PER_MM), y + 20), "paper below it");
    assertEquals(0xffffffff, image.getRGB((int) (5 * PIXELS_PER_MM), y), "paper before it");
    assertEquals(0xffffffff, image.getRGB((int) (95 * PIXELS_PER_MM), y), "paper behind it");
  }

  @Test
  void largeDrawingKeepsToTheLimitAndToItsSize() throws IOException {
    byte[] png = PngWriter.write(line(1000, 800));
    BufferedImage image = read(png);
    long pixels = (long) image.getWidth() * image.getHeight();
    assertTrue(pixels <= PngWriter.MOST_PIXELS && pixels > 0.99 * PngWriter.MOST_PIXELS);
    double perMetre = chunks(png).get("pHYs").getInt();
    assertEquals(1.0, image.getWidth() / perMetre, 0.001, "metres across");
    assertEquals(0.8, image.getHeight() / perMetre, 0.001, "metres down");
  }

  @Test
  void fileHoldsPixelsAndTheirSizeOnly() {
    byte[] png = PngWriter.write(line(100, 50));
    assertEquals(Set.of("IHDR", "pHYs", "IDAT", "IEND"), chunks(png).keySet());
    assertArrayEquals(png, PngWriter.write(line(100, 50)));
  }
}
