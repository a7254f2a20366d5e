package storyrod.drawing;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import storyrod.drawing.Drawing.At;

/**
 * What stands on a full-size template.
 *
 * @param facing which face looks up, and how many parts there are
 * @param sides the names of the ends and edges
 * @param grain which way the grain runs on paper; empty where it has none
 * @param notes on its holes
 */
public record TemplateText(
    List<String> facing, List<Side> sides, Optional<At> grain, List<HoleNote> notes) {
  public TemplateText {
    facing = List.copyOf(facing);
    sides = List.copyOf(sides);
    notes = List.copyOf(notes);
  }

  TemplateText mapped(UnaryOperator<At> move) {
    return new TemplateText(
        facing,
        sides.stream().map(each -> new Side(turned(each.outward, move), each.name)).toList(),
        grain.map(along -> turned(along, move)),
        notes.stream().map(each -> each.mapped(move)).toList());
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

  /** A note on equal holes, at their centres. */
  public record HoleNote(String words, List<At> centres) {
    public HoleNote {
      centres = List.copyOf(centres);
    }

    private HoleNote mapped(UnaryOperator<At> move) {
      return new HoleNote(words, centres.stream().map(move).toList());
    }
  }
}
