package storyrod.geometry;

import java.util.Locale;

/** An axis of the piece: x runs left to right, y front to back, z up. */
public enum Axis {
  X,
  Y,
  Z;

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The axis that is neither of two different ones. */
  public static Axis other(Axis one, Axis two) {
    if (one == two) {
      throw new IllegalArgumentException("bug: one axis given twice");
    }
    return values()[3 - one.ordinal() - two.ordinal()];
  }
}
