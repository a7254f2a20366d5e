package storyrod.planset;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Iterator;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.ImageOutputStream;

/**
 * A photo with no more dots than its place on the page prints, at 300 an inch. One with little more
 * is left as it is, for packing it anew would cost more than it saves.
 */
record PrintedPhoto(Photo photo) {
  private static final double DOTS_PER_INCH = 300;
  private static final double POINTS_PER_INCH = 72;
  private static final double WORTH = 1.3;
  private static final float QUALITY = 0.85f;

  /**
   * The bytes of a JPEG or PNG for a place.
   *
   * @param width of the place in points, as the photo is seen
   * @param height of the place in points
   */
  byte[] bytes(float width, float height) throws IOException {
    double seen = photo.isTurned() ? height : width;
    int dots = (int) Math.ceil(seen * DOTS_PER_INCH / POINTS_PER_INCH);
    return photo.width() <= dots * WORTH
        ? photo.bytes()
        : photo.prints().of(dots, () -> shrunk(dots));
  }

  private byte[] shrunk(int width) throws IOException {
    int height = (int) Math.max(1, Math.round((double) photo.height() * width / photo.width()));
    BufferedImage image = read(Math.max(1, photo.width() / width / 2));
    while (image.getWidth() >= 2 * width && image.getHeight() >= 2 * height) {
      image = scaled(image, image.getWidth() / 2, image.getHeight() / 2);
    }
    return written(scaled(image, width, height));
  }

  /**
   * The picture, of which no more dots are unpacked than some times what is wanted, and at least
   * twice.
   */
  private BufferedImage read(int every) throws IOException {
    try (ImageInputStream in =
        ImageIO.createImageInputStream(new ByteArrayInputStream(photo.bytes()))) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      ImageReader reader = readers.next();
      try {
        reader.setInput(in);
        ImageReadParam param = reader.getDefaultReadParam();
        param.setSourceSubsampling(every, every, 0, 0);
        return reader.read(0, param);
      } finally {
        reader.dispose();
      }
    }
  }

  private static BufferedImage scaled(BufferedImage image, int width, int height) {
    boolean clear = image.getColorModel().hasAlpha();
    BufferedImage smaller =
        new BufferedImage(
            width, height, clear ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB);
    Graphics2D to = smaller.createGraphics();
    to.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    to.drawImage(image, 0, 0, width, height, null);
    to.dispose();
    return smaller;
  }

  private byte[] written(BufferedImage image) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    if (!JpegFile.is(photo.bytes())) {
      ImageIO.write(image, "png", bytes);
      return bytes.toByteArray();
    }
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
      write(image, writer, out);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  private static void write(BufferedImage image, ImageWriter writer, ImageOutputStream out)
      throws IOException {
    ImageWriteParam param = writer.getDefaultWriteParam();
    param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
    param.setCompressionQuality(QUALITY);
    writer.setOutput(out);
    writer.write(null, new IIOImage(image, null, null), param);
  }
}
