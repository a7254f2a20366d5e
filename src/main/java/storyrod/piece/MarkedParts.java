package storyrod.piece;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/** Parts and their marks, each knowing of the other. */
record MarkedParts(List<Part> parts, List<Mark> marks) {
  /**
   * Gives parts their marks.
   *
   * @param origin what keeps parts of one shape apart all the same
   */
  static MarkedParts of(List<Part> parts, UnaryOperator<String> origin) {
    List<Mark> marks = Marker.mark(parts, origin);
    Map<String, Mark> markOf = new LinkedHashMap<>();
    marks.forEach(mark -> mark.parts().forEach(name -> markOf.put(name, mark)));
    return new MarkedParts(
        parts.stream().map(part -> marked(part, markOf.get(part.name()))).toList(),
        marks.stream().map(MarkedParts::shown).toList());
  }

  /** The same item with its pieces as they are marked. */
  MadeItem made(MadeItem item) {
    List<String> names = item.names();
    return new MadeItem(
        item.item(), parts.stream().filter(part -> names.contains(part.name())).toList());
  }

  private static Mark shown(Mark mark) {
    return new Mark(
        mark.mark(),
        mark.title(),
        marked(mark.shown(), mark),
        mark.same(),
        mark.mirrored(),
        mark.parts());
  }

  private static Part marked(Part part, Mark mark) {
    return part.marked(mark.mark(), mark.parts().indexOf(part.name()) >= mark.same());
  }
}
