package storyrod.cli;

import java.awt.image.BufferedImage;

/**
 * A computed picture of a flat-sawn board: rings round a pith that lies askew below its face, with
 * half of it darkened as a finish would.
 */
final class GrainPicture {
  static final int WIDTH = 480;
  static final int HEIGHT = 300;
  private static final double RING = 9;
  private static final int SHADES = 24;

  private GrainPicture() {}

  static BufferedImage drawn() {
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        image.setRGB(x, y, colour(shade(x, y), x > WIDTH / 2));
      }
    }
    return image;
  }

  /** From 0, late in the year, to 1: how far out of its ring a point of the face lies. */
  private static double shade(int x, int y) {
    double depth = 18 + x * 0.11;
    double across = y - HEIGHT / 2.0 - 14 * StrictMath.sin(x / 130.0);
    double radius = StrictMath.sqrt(depth * depth + across * across) + StrictMath.sin(x / 41.0);
    double ring = radius / RING;
    return StrictMath.floor((1 - (ring - StrictMath.floor(ring))) * SHADES) / SHADES;
  }

  private static int colour(double shade, boolean finished) {
    int red = (int) (196 + 34 * shade) - (finished ? 34 : 0);
    int green = (int) (160 + 46 * shade) - (finished ? 48 : 0);
    int blue = (int) (112 + 58 * shade) - (finished ? 62 : 0);
    return red << 16 | green << 8 | blue;
  }
}
