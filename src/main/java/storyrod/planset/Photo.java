package storyrod.planset;

import java.util.List;

/**
 * A photo as it goes into a plan set, without what its camera wrote beside the picture.
 *
 * @param bytes of a JPEG or PNG file
 * @param width in pixels, as stored
 * @param height in pixels, as stored
 * @param orientation from 1 to 8, as Exif 2.32 numbers them (tag 0x0112); 1 is upright
 * @param prints what it was packed anew to so far
 */
public record Photo(byte[] bytes, int width, int height, int orientation, PhotoPrints prints) {
  private static final int FIRST_TURNED = 5;

  /** Where the stored axes lead, and from where: a, b, c, d of the picture, e and f of its box. */
  private static final List<int[]> WAYS =
      List.of(
          new int[] {1, 0, 0, 1, 0, 0},
          new int[] {-1, 0, 0, 1, 1, 0},
          new int[] {-1, 0, 0, -1, 1, 1},
          new int[] {1, 0, 0, -1, 0, 1},
          new int[] {0, -1, -1, 0, 1, 1},
          new int[] {0, -1, 1, 0, 0, 1},
          new int[] {0, 1, 1, 0, 0, 0},
          new int[] {0, 1, -1, 0, 1, 0});

  public Photo(byte[] bytes, int width, int height, int orientation) {
    this(bytes, width, height, orientation, new PhotoPrints());
  }

  /** Whether it is shown a quarter turn from how it is stored. */
  boolean isTurned() {
    return orientation >= FIRST_TURNED;
  }

  /** Its width as it is seen, divided by its height. */
  double ratio() {
    double stored = (double) width / height;
    return isTurned() ? 1 / stored : stored;
  }

  /**
   * The matrix of PDF (ISO 32000-1, 8.3.4) that puts it upright into a box.
   *
   * @return a, b, c, d, e and f, in the unit of the box
   */
  float[] matrix(float x, float y, float boxWidth, float boxHeight) {
    int[] way = WAYS.get(orientation - 1);
    return new float[] {
      way[0] * boxWidth,
      way[1] * boxHeight,
      way[2] * boxWidth,
      way[3] * boxHeight,
      x + way[4] * boxWidth,
      y + way[5] * boxHeight
    };
  }
}
