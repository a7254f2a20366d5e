package storyrod.drawing;

import java.util.List;

/**
 * A general drawing: of the whole piece or of sub-assemblies that are alike.
 *
 * @param units the full names of the sub-assemblies, the one that is shown first; empty for the
 *     piece
 */
public record GeneralSheet(Drawing drawing, List<String> units) {
  public GeneralSheet {
    units = List.copyOf(units);
  }
}
