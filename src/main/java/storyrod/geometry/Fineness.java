package storyrod.geometry;

/**
 * How fine arcs are cut into flat facets.
 *
 * @param sagittaMm how far a facet may be from the true arc
 * @param most into how many facets one arc is cut at most
 */
public record Fineness(double sagittaMm, int most) {
  /** For pictures and volumes of a whole piece. */
  public static final Fineness USUAL = new Fineness(0.1, 48);

  /** For the drawing of one part, in which nobody should see a facet. */
  public static final Fineness DRAWN = new Fineness(0.01, 256);
}
