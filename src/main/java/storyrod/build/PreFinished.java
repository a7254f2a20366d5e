package storyrod.build;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.piece.FloatingPanel;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * Which faces take their finish before they are built in: those of a floating panel, of which a
 * bare strip would show when it shrinks, and inside faces that no brush reaches later (common
 * practice). None if the piece gets no finish.
 */
public final class PreFinished {
  private final Piece piece;
  private final Set<String> panels = new TreeSet<>();
  private final Map<String, List<Face>> faces = new LinkedHashMap<>();

  public PreFinished(Piece piece) {
    this(piece, new Insides(piece));
  }

  PreFinished(Piece piece, Insides insides) {
    this.piece = piece;
    if (piece.description().finish().isPresent()) {
      FloatingPanel.of(piece).forEach(each -> panels.add(each.panel().name()));
      List<Gap> gaps =
          piece.parts().stream().flatMap(part -> gaps(part, insides).stream()).toList();
      piece.parts().forEach(part -> enter(part, gaps));
    }
  }

  /** A gap that is too deep for a brush, and what stands round it. */
  private record Gap(Box box, List<Part> around) {}

  private static List<Gap> gaps(Part part, Insides insides) {
    List<Gap> gaps = new ArrayList<>();
    for (Face face : insides.faces(part)) {
      List<Part> around = new ArrayList<>(insides.others(part));
      Optional<Box> box = new BrushReach(part, face, around).gap();
      around.add(part);
      box.ifPresent(each -> gaps.add(new Gap(each, around)));
    }
    return gaps;
  }

  private void enter(Part part, List<Gap> gaps) {
    List<Face> early =
        Stream.of(-1, 1)
            .map(sign -> Face.of(part.thickness(), sign))
            .filter(face -> isPanel(part.name()) || isWall(part, face, gaps))
            .toList();
    if (!early.isEmpty()) {
      faces.put(part.name(), early);
    }
  }

  private static boolean isWall(Part part, Face face, List<Gap> gaps) {
    return gaps.stream()
        .filter(gap -> gap.around().contains(part))
        .anyMatch(gap -> BrushReach.isWall(part, face, gap.box()));
  }

  boolean has(Part part) {
    return faces.containsKey(part.name());
  }

  /** The broad faces of a part that are finished early; of a panel its edges too. */
  public List<Face> faces(String part) {
    return faces.getOrDefault(part, List.of());
  }

  /** The full names of all parts with such faces. */
  public List<String> parts() {
    return List.copyOf(faces.keySet());
  }

  public boolean isPanel(String part) {
    return panels.contains(part);
  }

  /** The joints whose glue needs bare wood on these faces of a part; their contact is masked. */
  public List<Joint> masked(String part) {
    return piece.joints().stream()
        .filter(Joint::glued)
        .filter(joint -> meets(joint, part).stream().anyMatch(faces(part)::contains))
        .toList();
  }

  /** The faces of a part with which a joint meets another. */
  private static List<Face> meets(Joint joint, String part) {
    return Arrays.stream(Face.values())
        .filter(
            face ->
                joint.first().equals(part) && joint.firstFace() == face
                    || joint.second().equals(part) && joint.firstFace() == face.opposite())
        .toList();
  }
}
