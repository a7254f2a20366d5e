package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import storyrod.wood.Mass;

/**
 * What holds a standing piece down against what pulls it over, about the line on which its front
 * stands. Moments are in kg·mm.
 *
 * @param restoring by all masses behind the line
 * @param overturning by all masses in front of it, and by a pull at a height
 */
record Balance(double restoring, double overturning) {

  /**
   * A mass and how far it lies behind the line, in mm; negative in front of it.
   *
   * @param kg the mass
   */
  record Load(double kg, double behindMm) {
    /** The same mass, brought forward. */
    Load forward(double mm) {
      return new Load(kg, behindMm - mm);
    }
  }

  static Balance of(List<Load> loads) {
    double restoring = 0;
    double overturning = 0;
    for (Load load : loads) {
      restoring += Math.max(0, load.kg * load.behindMm);
      overturning += Math.max(0, -load.kg * load.behindMm);
    }
    return new Balance(restoring, overturning);
  }

  /** The same with one more load. */
  static Balance of(List<Load> loads, Load more) {
    List<Load> all = new ArrayList<>(loads);
    all.add(more);
    return of(all);
  }

  /** At 1 it is about to tip; infinite where nothing pulls it over. */
  double ratio() {
    return overturning == 0 ? Double.POSITIVE_INFINITY : restoring / overturning;
  }

  /** The level pull in newtons that tips it at a height in mm. */
  double pullAt(double heightMm) {
    return (restoring - overturning) * Mass.GRAVITY / heightMm;
  }

  /** The mass in kg that brings it to a ratio when it is put so far behind the line. */
  double ballast(double ratio, double behindMm) {
    return Math.max(0, (ratio * overturning - restoring) / behindMm);
  }
}
