package storyrod.wood;

/** How a board was sawn from the log. */
public enum Sawn {
  /** The growth rings lie along the face, which moves most. */
  FLAT("flat"),
  /** The growth rings stand on the face. */
  QUARTER("quarter");

  private final String word;

  Sawn(String word) {
    this.word = word;
  }

  /** The word for it in a description. */
  public String word() {
    return word;
  }

  /** The figure that holds across the face of such a board. */
  public double of(Species.AcrossGrain figures) {
    return this == FLAT ? figures.tangential() : figures.radial();
  }

  /** The figure that holds for the thickness of such a board. */
  public double throughThickness(Species.AcrossGrain figures) {
    return this == FLAT ? figures.radial() : figures.tangential();
  }
}
