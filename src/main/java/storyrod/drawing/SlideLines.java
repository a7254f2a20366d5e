package storyrod.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Slides;
import storyrod.build.Slides.Row;
import storyrod.measure.Length;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * Where a step sets out the slides of drawers, as a drawing for the column beside its sentences:
 * walls of the case from inside, each line with its height and each front end with its set-back.
 * Walls with the same figures are drawn once, and of two that face each other the left one.
 */
final class SlideLines {
  private static final double BETWEEN_MM = 5;

  /** The height of one wall at most, and for each of its lines, if that is more. */
  private static final double MOST_MM = 105;

  private static final double MOST_EACH_MM = 40;

  private final Piece piece;
  private final List<Hardware> hardware;
  private final Size area;

  private SlideLines(Piece piece, List<Hardware> hardware, Size area) {
    this.piece = piece;
    this.hardware = hardware;
    this.area = area;
  }

  /** A drawing for each step that sets slides out and has room for them, by the steps' numbers. */
  static Map<Integer, Drawing> of(
      Piece piece, List<Step> steps, List<Hardware> hardware, Size area) {
    SlideLines lines = new SlideLines(piece, hardware, area);
    Map<Integer, Drawing> drawn = new LinkedHashMap<>();
    steps.forEach(
        step -> lines.drawn(step).ifPresent(drawing -> drawn.put(step.number(), drawing)));
    return drawn;
  }

  /** What tells one wall from another that is set out otherwise. */
  private record Figures(Length up, Part floor, Part front, Length behind) {
    static List<Figures> of(List<Row> rows) {
      return rows.stream()
          .map(
              row ->
                  new Figures(
                      row.onWall(), row.floor().orElse(row.wall()), row.front(), row.behind()))
          .toList();
    }
  }

  private Optional<Drawing> drawn(Step step) {
    List<List<Row>> walls = walls(Slides.setOutIn(piece, step));
    List<SlideWall.Laid> laid = new ArrayList<>();
    double share = (area.heightMm() + BETWEEN_MM) / Math.max(1, walls.size()) - BETWEEN_MM;
    for (List<Row> rows : walls) {
      double most = Math.max(MOST_MM, MOST_EACH_MM * rows.size());
      Size room = new Size(area.widthMm(), Math.min(share, most));
      SlideWall wall = new SlideWall(piece, rows, on(rows.getFirst().wall()));
      Optional<SlideWall.Laid> found = wall.laid(room);
      if (found.isEmpty()) {
        return Optional.empty();
      }
      laid.add(found.get());
    }
    return laid.isEmpty() ? Optional.empty() : Optional.of(stacked(step, laid));
  }

  /** The rows of each wall that is drawn, from below. */
  private static List<List<Row>> walls(List<Row> rows) {
    Map<List<Figures>, List<Row>> walls = new LinkedHashMap<>();
    rows.stream()
        .filter(SlideWall::isFacingRight)
        .sorted(Comparator.comparing(Row::onWall))
        .collect(Collectors.groupingBy(Row::wall, LinkedHashMap::new, Collectors.toList()))
        .values()
        .forEach(each -> walls.putIfAbsent(Figures.of(each), each));
    return List.copyOf(walls.values());
  }

  private List<Hardware> on(Part wall) {
    return hardware.stream()
        .filter(each -> each.isMounted() && each.placed().host().equals(wall.name()))
        .filter(each -> piece.kind(each.placed().item()).isSlide())
        .toList();
  }

  private Drawing stacked(Step step, List<SlideWall.Laid> walls) {
    List<Drawing.Element> elements = new ArrayList<>();
    double top = 0;
    for (SlideWall.Laid wall : walls) {
      double down = top;
      wall.elements().forEach(each -> elements.add(Moved.by(each, 0, down)));
      top += wall.heightMm() + BETWEEN_MM;
    }
    Optional<Scale> scale =
        Stream.of(walls.getFirst().scale())
            .filter(each -> walls.stream().allMatch(wall -> wall.scale().equals(each)))
            .findFirst();
    return new Drawing(
        "slides-" + step.number(), area.widthMm(), top - BETWEEN_MM, scale, elements);
  }
}
