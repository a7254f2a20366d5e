package storyrod.stock;

/**
 * How hard to look for a layout with fewer sheets, in steps and not in time, so that the same parts
 * always give the same layout.
 *
 * @param steps rounds of taking parts out and putting them back for each sheet to be saved
 * @param polish such rounds for a larger offcut once the number of sheets is settled
 * @param seed where chance begins
 */
record Effort(int steps, int polish, long seed) {
  static final Effort USUAL = new Effort(10_000, 40, 1);
}
