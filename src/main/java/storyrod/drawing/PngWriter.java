package storyrod.drawing;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOInvalidTreeException;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * Writes a drawing as a PNG on white, which says how many pixels stand on a metre, so that it
 * prints at its true size. A large drawing gets fewer of them, never more than {@link #MOST_PIXELS}
 * in all.
 */
public final class PngWriter {
  /** What a printer can show of hairlines (common practice). */
  public static final int DOTS_PER_INCH = 300;

  /** So that a picture takes no more than some 100 MB while it is made. */
  public static final int MOST_PIXELS = 24_000_000;

  private static final double MM_PER_INCH = 25.4;
  private static final String FORMAT = "javax_imageio_png_1.0";

  private final Drawing drawing;
  private final double pixelsPerMm;

  private PngWriter(Drawing drawing) {
    this.drawing = drawing;
    double areaMm2 = drawing.widthMm() * drawing.heightMm();
    this.pixelsPerMm = Math.min(DOTS_PER_INCH / MM_PER_INCH, Math.sqrt(MOST_PIXELS / areaMm2));
  }

  /** The bytes of the file; they hold no time and no name. */
  public static byte[] write(Drawing drawing) {
    PngWriter writer = new PngWriter(drawing);
    return writer.encoded(writer.painted());
  }

  private BufferedImage painted() {
    BufferedImage image =
        new BufferedImage(
            pixels(drawing.widthMm()), pixels(drawing.heightMm()), BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
    graphics.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    graphics.scale(pixelsPerMm / Painter.UNITS_PER_MM, pixelsPerMm / Painter.UNITS_PER_MM);
    Painter.paint(drawing, graphics);
    graphics.dispose();
    return image;
  }

  /** Rounded down, so that the limit holds. */
  private int pixels(double mm) {
    return Math.max(1, (int) Math.floor(mm * pixelsPerMm));
  }

  private byte[] encoded(BufferedImage image) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      writer.setOutput(out);
      writer.write(new IIOImage(image, null, resolution(writer, image)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  private IIOMetadata resolution(ImageWriter writer, BufferedImage image)
      throws IIOInvalidTreeException {
    String perMetre = Long.toString(Math.round(pixelsPerMm * 1000));
    IIOMetadataNode size = new IIOMetadataNode("pHYs");
    size.setAttribute("pixelsPerUnitXAxis", perMetre);
    size.setAttribute("pixelsPerUnitYAxis", perMetre);
    size.setAttribute("unitSpecifier", "meter");
    IIOMetadataNode root = new IIOMetadataNode(FORMAT);
    root.appendChild(size);
    IIOMetadata metadata =
        writer.getDefaultImageMetadata(
            ImageTypeSpecifier.createFromRenderedImage(image), writer.getDefaultWriteParam());
    metadata.mergeTree(FORMAT, root);
    return metadata;
  }
}
