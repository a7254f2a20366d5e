package storyrod.description;

import storyrod.geometry.Face;

/** A face of a part, by the part's full name: {@code drawer.front} and {@code left}. */
public record FaceRef(String part, Face face) {
  @Override
  public String toString() {
    return part + "." + face.word();
  }
}
