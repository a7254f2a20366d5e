package storyrod.build;

import java.util.List;
import storyrod.piece.Nesting;
import storyrod.piece.Part;

/**
 * What is put in place in one go: a part, or a sub-assembly that is already together.
 *
 * @param name the part's or the sub-assembly's name
 * @param level the sub-assembly it is put into, or {@link #PIECE}
 */
public record Unit(String name, String level, List<Part> parts) {
  /** The level of what is put together into the piece itself. */
  public static final String PIECE = Nesting.PIECE;

  public Unit {
    parts = List.copyOf(parts);
  }

  public List<String> partNames() {
    return parts.stream().map(Part::name).toList();
  }

  public List<String> marks() {
    return parts.stream().map(Part::mark).sorted().toList();
  }

  /** The name of the operation that puts it in its place. */
  String fitName() {
    return Verb.FIT.word() + " " + name;
  }

  boolean has(String part) {
    for (Part each : parts) {
      if (each.name().equals(part)) {
        return true;
      }
    }
    return false;
  }

  /** Whether a part of it leans. */
  boolean isTurned() {
    return parts.stream().anyMatch(part -> part.pose().isTurned());
  }

  double volumeMm3() {
    return parts.stream().mapToDouble(part -> part.box().volumeMm3()).sum();
  }
}
