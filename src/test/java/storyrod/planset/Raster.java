package storyrod.planset;

import java.awt.image.BufferedImage;

/** A picture in shades of grey, from 0 for black to 255 for white. */
record Raster(int width, int height, int[] greys) {
  private static final int DARK = 100;

  /** Lighter than a thin line that an area half covers, darker than any tone. */
  private static final int GREY = 210;

  private static final int NEAR = 2;
  private static final int APART = 4;

  /** The top left corner of an image. */
  static Raster of(BufferedImage image, int width, int height) {
    int[] greys = image.getRaster().getSamples(0, 0, width, height, 0, new int[width * height]);
    return new Raster(width, height, greys);
  }

  private int grey(int x, int y) {
    return greys[y * width + x];
  }

  /** How many dark pixels have nothing dark near them in another picture. */
  int strays(Raster other) {
    int strays = 0;
    for (int y = NEAR; y < height - NEAR; y++) {
      for (int x = NEAR; x < width - NEAR; x++) {
        strays += grey(x, y) < DARK && other.darkest(x, y) > GREY ? 1 : 0;
      }
    }
    return strays;
  }

  /**
   * How many pixels in the midst of plain areas of both pictures have another tone. The seam of two
   * areas, a pixel wide, does not count.
   */
  int tonesApart(Raster other) {
    int apart = 0;
    for (int y = 2 * NEAR; y < height - 2 * NEAR; y++) {
      for (int x = 2 * NEAR; x < width - 2 * NEAR; x++) {
        boolean differs =
            isApart(other, x, y)
                && isApart(other, x - NEAR, y - NEAR)
                && isApart(other, x + NEAR, y + NEAR);
        apart += differs && isPlain(x, y) && other.isPlain(x, y) ? 1 : 0;
      }
    }
    return apart;
  }

  private boolean isApart(Raster other, int x, int y) {
    return Math.abs(grey(x, y) - other.grey(x, y)) > APART;
  }

  private boolean isPlain(int x, int y) {
    return lightest(x, y) - darkest(x, y) <= APART;
  }

  private int darkest(int x, int y) {
    int darkest = 255;
    for (int i = y - NEAR; i <= y + NEAR; i++) {
      for (int j = x - NEAR; j <= x + NEAR; j++) {
        darkest = Math.min(darkest, grey(j, i));
      }
    }
    return darkest;
  }

  private int lightest(int x, int y) {
    int lightest = 0;
    for (int i = y - NEAR; i <= y + NEAR; i++) {
      for (int j = x - NEAR; j <= x + NEAR; j++) {
        lightest = Math.max(lightest, grey(j, i));
      }
    }
    return lightest;
  }
}
