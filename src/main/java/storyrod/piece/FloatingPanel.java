package storyrod.piece;

import java.util.List;
import java.util.stream.Stream;
import storyrod.description.StockKind;
import storyrod.geometry.Face;

/**
 * A panel of solid wood with both its long edges in grooves. It swells and shrinks across its
 * grain, so it has to be free in all its grooves (common practice).
 *
 * @param grooved the joints by which it lies in grooves, its ends included
 */
public record FloatingPanel(Part panel, List<Joint> grooved) {
  public FloatingPanel {
    grooved = List.copyOf(grooved);
  }

  public static List<FloatingPanel> of(Piece piece) {
    return piece.parts().stream()
        .filter(part -> part.stock().kind() == StockKind.SOLID)
        .map(part -> new FloatingPanel(part, grooved(piece, part)))
        .filter(panel -> panel.lies(-1) && panel.lies(1))
        .toList();
  }

  private static List<Joint> grooved(Piece piece, Part part) {
    return piece.joints().stream()
        .filter(joint -> joint.first().equals(part.name()) && !joint.slides())
        .filter(
            joint ->
                piece.part(joint.second()).cuts(Cut.Trench.class).stream()
                    .anyMatch(cut -> isGroove(cut) && cut.isFor(part.name())))
        .toList();
  }

  private static boolean isGroove(Cut.Trench cut) {
    return cut.role() == TrenchRole.GROOVE || cut.role() == TrenchRole.STOPPED_GROOVE;
  }

  private boolean lies(int sign) {
    return grooved.stream().anyMatch(joint -> joint.firstFace() == edge(sign));
  }

  private Face edge(int sign) {
    return Face.of(panel.width(), sign);
  }

  /**
   * The glued joints that keep it from moving: those of both its edges, or of an end. Glue along
   * one edge alone lets it move to the other.
   */
  public List<Joint> heldBy() {
    List<Joint> glued = grooved.stream().filter(Joint::glued).toList();
    boolean bothEdges =
        Stream.of(-1, 1)
            .allMatch(sign -> glued.stream().anyMatch(j -> j.firstFace() == edge(sign)));
    return glued.stream()
        .filter(joint -> bothEdges || joint.firstFace().axis() == panel.length())
        .toList();
  }
}
