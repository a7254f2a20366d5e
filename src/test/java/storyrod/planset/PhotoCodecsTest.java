package storyrod.planset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import javax.imageio.IIOImage;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.plugins.jpeg.JPEGImageWriteParam;
import javax.imageio.spi.IIORegistry;
import javax.imageio.spi.ImageReaderSpi;
import javax.imageio.spi.ImageWriterSpi;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.ImageOutputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;

/** The platform's readers and writers hold memory of their own until they are disposed of. */
@Isolated("It puts readers and writers before the platform's.")
class PhotoCodecsTest {
  private static final IIORegistry REGISTRY = IIORegistry.getDefaultInstance();
  private static final byte[] JPEG = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, 0};
  private static final int SIZE = 400;

  private final List<String> log = new ArrayList<>();
  private final ReaderSpi readers = new ReaderSpi();
  private final WriterSpi writers = new WriterSpi();

  @BeforeEach
  void takeTheirPlace() {
    first(ImageReaderSpi.class, readers);
    first(ImageWriterSpi.class, writers);
  }

  private static <T> void first(Class<T> sort, T own) {
    REGISTRY.registerServiceProvider(own, sort);
    REGISTRY
        .getServiceProviders(sort, other -> other != own, false)
        .forEachRemaining(other -> REGISTRY.setOrdering(sort, own, other));
  }

  @AfterEach
  void giveItBack() {
    REGISTRY.deregisterServiceProvider(readers, ImageReaderSpi.class);
    REGISTRY.deregisterServiceProvider(writers, ImageWriterSpi.class);
  }

  private static byte[] shrunk(byte[] bytes) throws IOException {
    return new PrintedPhoto(new Photo(bytes, SIZE, SIZE, 1)).bytes(24, 24);
  }

  @Test
  void bothAreDisposedOfThoughTheWriterFails() {
    assertThrows(IOException.class, () -> shrunk(JPEG));
    assertEquals(List.of("read", "reader disposed", "write", "writer disposed"), log);
  }

  @Test
  void aReaderThatFailsIsDisposedOf() {
    readers.fails = true;
    assertThrows(IOException.class, () -> shrunk(JPEG));
    assertEquals(List.of("read", "reader disposed"), log);
  }

  private final class ReaderSpi extends ImageReaderSpi {
    private boolean fails;

    ReaderSpi() {
      inputTypes = new Class<?>[] {ImageInputStream.class};
    }

    @Override
    public boolean canDecodeInput(Object source) {
      return true;
    }

    @Override
    public ImageReader createReaderInstance(Object extension) {
      return new Reader(this);
    }

    @Override
    public String getDescription(Locale locale) {
      return "watched";
    }
  }

  private final class Reader extends ImageReader {
    private final ReaderSpi spi;

    Reader(ReaderSpi spi) {
      super(spi);
      this.spi = spi;
    }

    @Override
    public BufferedImage read(int index, ImageReadParam param) throws IOException {
      log.add("read");
      if (spi.fails) {
        throw new IOException("unreadable");
      }
      return new BufferedImage(SIZE, SIZE, BufferedImage.TYPE_INT_RGB);
    }

    @Override
    public void dispose() {
      log.add("reader disposed");
    }

    @Override
    public int getNumImages(boolean search) {
      return 1;
    }

    @Override
    public int getWidth(int index) {
      return SIZE;
    }

    @Override
    public int getHeight(int index) {
      return SIZE;
    }

    @Override
    public Iterator<ImageTypeSpecifier> getImageTypes(int index) {
      throw new UnsupportedOperationException();
    }

    @Override
    public IIOMetadata getStreamMetadata() {
      throw new UnsupportedOperationException();
    }

    @Override
    public IIOMetadata getImageMetadata(int index) {
      throw new UnsupportedOperationException();
    }
  }

  private final class WriterSpi extends ImageWriterSpi {
    WriterSpi() {
      names = new String[] {"jpeg"};
      outputTypes = new Class<?>[] {ImageOutputStream.class};
    }

    @Override
    public boolean canEncodeImage(ImageTypeSpecifier type) {
      return true;
    }

    @Override
    public ImageWriter createWriterInstance(Object extension) {
      return new Writer(this);
    }

    @Override
    public String getDescription(Locale locale) {
      return "watched";
    }
  }

  private final class Writer extends ImageWriter {
    Writer(WriterSpi spi) {
      super(spi);
    }

    @Override
    public ImageWriteParam getDefaultWriteParam() {
      return new JPEGImageWriteParam(Locale.ROOT);
    }

    @Override
    public void write(IIOMetadata metadata, IIOImage image, ImageWriteParam param)
        throws IOException {
      log.add("write");
      throw new IOException("full");
    }

    @Override
    public void dispose() {
      log.add("writer disposed");
    }

    @Override
    public IIOMetadata getDefaultStreamMetadata(ImageWriteParam param) {
      throw new UnsupportedOperationException();
    }

    @Override
    public IIOMetadata getDefaultImageMetadata(ImageTypeSpecifier type, ImageWriteParam param) {
      throw new UnsupportedOperationException();
    }

    @Override
    public IIOMetadata convertStreamMetadata(IIOMetadata data, ImageWriteParam param) {
      throw new UnsupportedOperationException();
    }

    @Override
    public IIOMetadata convertImageMetadata(
        IIOMetadata data, ImageTypeSpecifier type, ImageWriteParam param) {
      throw new UnsupportedOperationException();
    }
  }
}
