package storyrod.stock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import storyrod.description.StockEntry;
import storyrod.description.StockKind;
import storyrod.layout.LayoutJob.Blank;
import storyrod.layout.search.Neighbours.Group;
import storyrod.measure.Length;
import storyrod.piece.GrainMatch;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * What is sawn from one stock: the blanks of its parts, or of the staves and layers that a part is
 * glued up from, in the rough where it is solid wood.
 */
final class Blanks {
  private final Piece piece;
  private final StockEntry stock;
  private final List<Of> all = new ArrayList<>();

  Blanks(Piece piece, StockEntry stock, List<Part> parts) {
    this.piece = piece;
    this.stock = stock;
    for (Part part : parts) {
      int count = piece.blanks(part);
      for (int number = 1; number <= count; number++) {
        all.add(new Of(part, count == 1 ? Optional.empty() : Optional.of(number)));
      }
    }
  }

  /**
   * A blank of a part.
   *
   * @param number which of its blanks it is, where it is glued up from several
   */
  record Of(Part part, Optional<Integer> number) {}

  private boolean isSolid() {
    return stock.kind() == StockKind.SOLID;
  }

  Of get(int blank) {
    return all.get(blank);
  }

  List<Blank> blanks() {
    return all.stream()
        .map(
            each -> new Blank(each.part.name(), length(each.part), width(each.part), 1, !grained()))
        .toList();
  }

  /** Solid wood always has a grain; of a sheet the description may say that it has none. */
  boolean grained() {
    return isSolid() || stock.grained();
  }

  Length length(Part part) {
    return isSolid()
        ? part.finishedLength().plus(piece.description().shop().extraLength())
        : part.finishedLength();
  }

  Length width(Part part) {
    return isSolid()
        ? piece.staveWidth(part).plus(piece.description().shop().extraWidth(part.finishedLength()))
        : piece.blankWidth(part);
  }

  /** Which blanks stay neighbours; of parts glued up from staves, stave by stave. */
  List<Group> groups() {
    Map<String, List<Integer>> byPart = new HashMap<>();
    for (int blank = 0; blank < all.size(); blank++) {
      byPart.computeIfAbsent(all.get(blank).part.name(), name -> new ArrayList<>()).add(blank);
    }
    return GrainMatch.of(piece).stream()
        .filter(match -> match.row().isPresent())
        .flatMap(match -> groups(match, blanks(match, byPart)).stream())
        .toList();
  }

  private static List<List<Integer>> blanks(GrainMatch match, Map<String, List<Integer>> byPart) {
    return match.parts().stream()
        .map(part -> byPart.getOrDefault(part.name(), List.of()))
        .filter(blanks -> !blanks.isEmpty())
        .toList();
  }

  private static List<Group> groups(GrainMatch match, List<List<Integer>> parts) {
    int staves = parts.stream().map(List::size).min(Comparator.naturalOrder()).orElse(0);
    return parts.size() < 2
        ? List.of()
        : IntStream.range(0, staves)
            .mapToObj(
                stave ->
                    new Group(
                        parts.stream().map(blanks -> blanks.get(stave)).toList(), match.endToEnd()))
            .toList();
  }
}
