package storyrod.geometry;

import java.util.Optional;

/**
 * The edge where two faces of a part's box meet; seen along it, a corner of an outline.
 *
 * @param one the face that comes first among all faces
 */
public record Edge(Face one, Face other) {
  public Edge {
    if (one.axis() == other.axis()) {
      throw new IllegalArgumentException("bug: " + one + " and " + other + " do not meet");
    }
    if (one.ordinal() > other.ordinal()) {
      Face first = other;
      other = one;
      one = first;
    }
  }

  /** The edge that a word such as {@code front-top} names, the faces in either order. */
  public static Optional<Edge> named(String word) {
    String[] words = word.split("-", -1);
    if (words.length != 2) {
      return Optional.empty();
    }
    return Face.named(words[0])
        .flatMap(
            first ->
                Face.named(words[1])
                    .filter(second -> second.axis() != first.axis())
                    .map(second -> new Edge(first, second)));
  }

  /** The axis along which it runs. */
  public Axis axis() {
    return Axis.other(one.axis(), other.axis());
  }

  public boolean touches(Face face) {
    return face == one || face == other;
  }

  /** The face beside one of its two. */
  public Face beside(Face face) {
    return face == one ? other : one;
  }

  public String word() {
    return one.word() + "-" + other.word();
  }
}
