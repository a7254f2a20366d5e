package storyrod.build;

import java.util.List;
import java.util.stream.Stream;
import storyrod.geometry.Face;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * The broad faces of a part that are sanded before it is built in: of a panel both, of any other
 * part those that are hard to reach later.
 */
public final class SandedFaces {
  private final Insides insides;
  private final FramePanels panels;
  private final PreFinished early;

  public SandedFaces(Piece piece) {
    this.insides = new Insides(piece);
    this.panels = new FramePanels(piece);
    this.early = new PreFinished(piece);
  }

  /** In the frame of the piece: two at most, but of a square part; none of a part that waits. */
  public List<Face> of(Part part) {
    return isPanel(part)
        ? Stream.of(-1, 1).map(sign -> Face.of(part.thickness(), sign)).toList()
        : insides.faces(part);
  }

  /** Whether these are the two faces of a board. */
  public static boolean areBoth(List<Face> faces) {
    return faces.size() == 2 && faces.getFirst().opposite() == faces.getLast();
  }

  private boolean isPanel(Part part) {
    return early.isPanel(part.name()) || panels.has(part);
  }
}
