package storyrod.piece;

import java.util.List;
import storyrod.description.Description;

/**
 * The piece of furniture: parts in the order of the description, marks in the order A, B, C.
 *
 * @param description what it was made from
 */
public record Piece(
    Description description, List<Part> parts, List<Mark> marks, List<Joint> joints) {
  public Piece {
    parts = List.copyOf(parts);
    marks = List.copyOf(marks);
    joints = List.copyOf(joints);
  }

  public Part part(String name) {
    return parts.stream()
        .filter(part -> part.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("bug: no part " + name));
  }

  public Mark mark(String mark) {
    return marks.stream()
        .filter(each -> each.mark().equals(mark))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("bug: no mark " + mark));
  }
}
