package storyrod.description;

/** One line of a maker's own order: an operation's verb and the part or assembly it is done to. */
public record OrderEntry(Span at, String verb, String target) {
  @Override
  public String toString() {
    return verb + " " + target;
  }
}
