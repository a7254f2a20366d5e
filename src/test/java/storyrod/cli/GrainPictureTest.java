package storyrod.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** The photos of the projects are computed here; {@code -Dgolden.update} writes them. */
class GrainPictureTest {
  private static final boolean UPDATE = !System.getProperty("golden.update", "no").equals("no");
  private static final Path FOLDER = Path.of("projects");

  /** What JPEG may change of a colour's share. */
  private static final int LOSS = 60;

  @Test
  void theTestPieceOfTheStoolIsAsComputed() throws IOException {
    assertEquals(0, farthest("step-stool/pictures/test-piece.png", "png"));
  }

  @Test
  void theTestPieceOfTheNightstandIsAsComputed() throws IOException {
    int farthest = farthest("nightstand/pictures/test-piece.jpg", "jpg");
    assertEquals(true, farthest > 0 && farthest < LOSS, () -> "off by " + farthest);
  }

  private static int farthest(String file, String format) throws IOException {
    BufferedImage drawn = GrainPicture.drawn();
    Path path = FOLDER.resolve(file);
    if (UPDATE) {
      ImageIO.write(drawn, format, path.toFile());
    }
    BufferedImage found = ImageIO.read(path.toFile());
    int farthest = 0;
    for (int y = 0; y < GrainPicture.HEIGHT; y++) {
      for (int x = 0; x < GrainPicture.WIDTH; x++) {
        farthest = Math.max(farthest, apart(drawn.getRGB(x, y), found.getRGB(x, y)));
      }
    }
    return farthest;
  }

  private static int apart(int one, int other) {
    int farthest = 0;
    for (int shift = 0; shift < 24; shift += 8) {
      farthest = Math.max(farthest, Math.abs((one >> shift & 0xFF) - (other >> shift & 0xFF)));
    }
    return farthest;
  }
}
