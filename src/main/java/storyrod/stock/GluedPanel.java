package storyrod.stock;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import storyrod.measure.Length;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * What is glued up as one, edge to edge or face to face: one part, or all parts of one stock and
 * one width that are too short for the machines and stay in one length until they are cut to size.
 */
public record GluedPanel(Piece piece, List<Part> parts) {
  public GluedPanel {
    parts = List.copyOf(parts);
  }

  /** What parts are glued up as, in the order of the first of each. */
  public static List<GluedPanel> of(Piece piece, List<Part> parts) {
    return parts.stream()
        .collect(
            Collectors.groupingBy(
                part -> key(piece, part), LinkedHashMap::new, Collectors.toList()))
        .values()
        .stream()
        .map(together -> new GluedPanel(piece, together))
        .toList();
  }

  private static List<Object> key(Piece piece, Part part) {
    return isShort(piece, part)
        ? List.of(
            part.stock().name(),
            piece.gluedWidth(part),
            piece.layers(part),
            part.finishedThickness())
        : List.of(part.name());
  }

  /** Whether a part is too short for jointer and planer, so that it is cut to length last. */
  public static boolean isShort(Piece piece, Part part) {
    return part.finishedLength().isShorterThan(piece.description().shop().machines().shortest());
  }

  public Part first() {
    return parts.getFirst();
  }

  /** Whether more than one part is sawn from it. */
  public boolean isShared() {
    return parts.size() > 1;
  }

  /** In the rough: that of its parts end to end. */
  public Length length() {
    Length extra = piece.description().shop().extraLength();
    return parts.stream()
        .map(part -> part.finishedLength().plus(extra))
        .reduce(Length.ZERO, Length::plus);
  }

  /** The full names of its parts. */
  public List<String> names() {
    return parts.stream().map(Part::name).toList();
  }

  /** The names of all parts in some panels. */
  public static List<String> names(Collection<GluedPanel> panels) {
    return panels.stream().flatMap(panel -> panel.names().stream()).toList();
  }
}
