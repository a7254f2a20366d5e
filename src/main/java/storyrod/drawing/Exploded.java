package storyrod.drawing;

import java.util.List;

/**
 * The exploded views.
 *
 * @param whole the piece
 * @param opened its sub-assemblies, where they are closed in the view of the piece
 */
public record Exploded(Drawing whole, List<GeneralSheet> opened) {
  public Exploded {
    opened = List.copyOf(opened);
  }
}
