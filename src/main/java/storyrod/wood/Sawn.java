package storyrod.wood;

/** How a board was sawn from the log. */
public enum Sawn {
  /** The growth rings lie along the face, which moves most. */
  FLAT,
  /** The growth rings stand on the face. */
  QUARTER;

  /** The figure that holds across the face of such a board. */
  public double of(Species.AcrossGrain figures) {
    return this == FLAT ? figures.tangential() : figures.radial();
  }
}
