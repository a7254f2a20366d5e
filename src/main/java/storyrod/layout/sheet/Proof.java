package storyrod.layout.sheet;

/** The least that any layout can take, as far as it is proved; it may be raised on the way. */
final class Proof {
  private long least;

  Proof(long least) {
    this.least = least;
  }

  long least() {
    return least;
  }

  void raise(long proved) {
    least = Math.max(least, proved);
  }
}
