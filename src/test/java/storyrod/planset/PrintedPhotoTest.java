package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Photos on the page, read with the platform's own reader. */
class PrintedPhotoTest {
  private static final int WIDTH = 1800;
  private static final int HEIGHT = 1200;

  /** Three inches. */
  private static final float PLACE = 216;

  /** Red at the left, blue at the right. */
  private static Photo photo(String format, int type, int orientation) throws IOException {
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, type);
    Graphics2D to = image.createGraphics();
    to.setColor(Color.RED);
    to.fillRect(0, 0, WIDTH / 2, HEIGHT);
    to.setColor(Color.BLUE);
    to.fillRect(WIDTH / 2, 0, WIDTH / 2, HEIGHT);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    assertTrue(ImageIO.write(image, format, out));
    return new Photo(out.toByteArray(), WIDTH, HEIGHT, orientation);
  }

  private static Photo photo(String format) throws IOException {
    return photo(format, BufferedImage.TYPE_INT_RGB, 1);
  }

  private static BufferedImage printed(Photo photo, float width, float height) throws IOException {
    byte[] bytes = new PrintedPhoto(photo).bytes(width, height);
    assertTrue(bytes.length < photo.bytes().length);
    return ImageIO.read(new ByteArrayInputStream(bytes));
  }

  @ParameterizedTest
  @ValueSource(strings = {"jpg", "png"})
  void itHasTheDotsThatItsPlacePrints(String format) throws IOException {
    BufferedImage image = printed(photo(format), PLACE, PLACE * 2 / 3);
    assertEquals("900 x 600", image.getWidth() + " x " + image.getHeight());
    assertEquals(254, image.getRGB(200, 300) >> 16 & 0xFF, 2);
    assertEquals(254, image.getRGB(700, 300) & 0xFF, 2);
  }

  @Test
  void aPhotoOnItsSideIsAsWideAsItsPlaceIsHigh() throws IOException {
    Photo photo = photo("jpg", BufferedImage.TYPE_INT_RGB, 6);
    assertEquals(900, printed(photo, PLACE * 2 / 3, PLACE).getWidth());
  }

  @Test
  void whatIsClearStaysClear() throws IOException {
    Photo photo = photo("png", BufferedImage.TYPE_INT_ARGB, 1);
    assertTrue(printed(photo, PLACE / 4, PLACE / 6).getColorModel().hasAlpha());
  }

  @Test
  void aPhotoWithNoMoreDotsThanPrintStaysAsItIs() throws IOException {
    Photo photo = photo("jpg");
    assertArrayEquals(photo.bytes(), new PrintedPhoto(photo).bytes(PLACE * 2, PLACE * 4 / 3));
  }

  /** Each edition and paper asks again, on pages of its own. */
  @Test
  void aPhotoIsPackedOnceForOneSize() throws IOException {
    Photo photo = photo("jpg");
    byte[] first = new PrintedPhoto(photo).bytes(PLACE, PLACE * 2 / 3);
    assertSame(first, new PrintedPhoto(photo).bytes(PLACE, PLACE * 2 / 3));
    assertNotSame(first, new PrintedPhoto(photo).bytes(PLACE / 2, PLACE / 3));
  }
}
