package storyrod.build;

import java.util.List;
import java.util.Optional;
import storyrod.geometry.Face;
import storyrod.piece.Cut;
import storyrod.piece.Part;

/**
 * Which face of a part gets the face mark: the one that is seen, or else the broad one from which
 * its joints are set out (common practice).
 */
public record FaceMarks(ShowFaces shows) {
  /** Empty where either face will do. */
  public Optional<Face> of(Part part) {
    return shows.of(part).or(() -> setOut(part));
  }

  /** Whether joints are set out from the face that is marked. */
  public boolean areSetOutFromIt(Part part) {
    return setOut(part).isPresent() && setOut(part).equals(of(part));
  }

  /** The broad face from which joints are set out; empty if there is none, or both are. */
  public static Optional<Face> setOut(Part part) {
    List<Face> broad =
        edges(part).stream().filter(face -> face.axis() == part.thickness()).toList();
    return broad.size() == 1 && !isSquare(part) ? Optional.of(broad.getFirst()) : Optional.empty();
  }

  /** The sides from which the trenches of a part are set out. */
  public static List<Face> edges(Part part) {
    return part.cuts(Cut.Trench.class).stream()
        .filter(trench -> !List.of("notch", "cutout").contains(trench.term()))
        .map(trench -> CutKind.edge(part, trench))
        .distinct()
        .toList();
  }

  private static boolean isSquare(Part part) {
    return part.box().size(part.width()).equals(part.box().size(part.thickness()));
  }
}
