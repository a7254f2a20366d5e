package storyrod.drawing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The exploded views.
 *
 * @param whole the piece
 * @param hardware the piece again with balloons for its hardware, where those of its parts leave no
 *     room for them
 * @param opened its sub-assemblies, where they are closed in the view of the piece
 */
public record Exploded(Drawing whole, Optional<Drawing> hardware, List<GeneralSheet> opened) {
  public Exploded {
    opened = List.copyOf(opened);
  }

  /** All drawings, by their names in the order of their pages. */
  public List<Drawing> all() {
    return Stream.of(
            Stream.of(whole), hardware.stream(), opened.stream().map(GeneralSheet::drawing))
        .flatMap(each -> each)
        .toList();
  }
}
