package storyrod.drawing;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.At;

/**
 * What stands on a full-size template.
 *
 * @param facing which face looks up, and how many parts there are
 * @param sides the names of the ends and edges
 * @param grain which way the grain runs on paper; empty where it has none
 * @param notes on its holes
 * @param bevels where the face that looks up ends before the outline does
 */
public record TemplateText(
    List<String> facing,
    List<Side> sides,
    Optional<At> grain,
    List<Note> notes,
    List<Note> bevels) {
  public TemplateText {
    facing = List.copyOf(facing);
    sides = List.copyOf(sides);
    notes = List.copyOf(notes);
    bevels = List.copyOf(bevels);
  }

  /** All notes. */
  Stream<Note> all() {
    return Stream.concat(notes.stream(), bevels.stream());
  }

  TemplateText mapped(UnaryOperator<At> move) {
    return new TemplateText(
        facing,
        sides.stream().map(each -> new Side(turned(each.outward, move), each.name)).toList(),
        grain.map(along -> turned(along, move)),
        notes.stream().map(each -> each.mapped(move)).toList(),
        bevels.stream().map(each -> each.mapped(move)).toList());
  }

  private static At turned(At vector, UnaryOperator<At> move) {
    At origin = move.apply(new At(0, 0));
    return move.apply(vector).plus(-origin.x(), -origin.y());
  }

  /**
   * An end or an edge of the part.
   *
   * @param outward where it looks on paper, a vector of 1 mm
   */
  public record Side(At outward, String name) {}

  /** A note with points, any of which its leader may end on: the centres of equal holes. */
  public record Note(String words, List<At> tips) {
    public Note {
      tips = List.copyOf(tips);
    }

    private Note mapped(UnaryOperator<At> move) {
      return new Note(words, tips.stream().map(move).toList());
    }
  }
}
