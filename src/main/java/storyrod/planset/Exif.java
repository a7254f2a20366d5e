package storyrod.planset;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** What is taken of a camera's Exif (2.32): the way round that a picture is seen. */
final class Exif {
  static final int UPRIGHT = 1;
  private static final int LAST = 8;
  private static final short TAG = 0x0112;

  private Exif() {}

  /** The orientation in the first directory of a TIFF; upright where there is none. */
  static int orientation(ByteBuffer tiff) {
    try {
      tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
      int directory = tiff.getInt(4);
      int count = tiff.getShort(directory) & 0xFFFF;
      for (int i = 0; i < count; i++) {
        int entry = directory + 2 + 12 * i;
        int found = tiff.getShort(entry + 8);
        if (tiff.getShort(entry) == TAG && found >= UPRIGHT && found <= LAST) {
          return found;
        }
      }
      return UPRIGHT;
    } catch (IndexOutOfBoundsException e) {
      return UPRIGHT;
    }
  }

  /** A TIFF with an orientation alone. */
  static byte[] tiff(int orientation) {
    ByteBuffer tiff = ByteBuffer.allocate(26);
    tiff.put((byte) 'M').put((byte) 'M').putShort((short) 42).putInt(8);
    tiff.putShort((short) 1).putShort(TAG).putShort((short) 3).putInt(1);
    tiff.putShort((short) orientation).putShort((short) 0).putInt(0);
    return tiff.array();
  }
}
