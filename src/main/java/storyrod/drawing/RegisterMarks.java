package storyrod.drawing;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Ellipse;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Tone;
import storyrod.drawing.TileGrid.Cell;

/**
 * The marks in the strips that sheets share, in the same places on both. Where a strip ends at the
 * edge of all sheets, its mark moves along it to where no outline runs through it.
 */
record RegisterMarks(TileGrid grid, List<Line> lines) {
  private static final double RADIUS = 2.5;
  private static final double ARM = RADIUS + 2;

  /** From the middle of a mark to the nearest line, in mm. */
  static final double CLEAR = ARM + 1;

  private static final double STEP = 4;
  private static final int STEPS = 12;

  static RegisterMarks of(TemplateBoard board) {
    List<Line> lines =
        board.shapes().stream()
            .flatMap(shape -> Stream.concat(shape.lines().stream(), shape.freeSides().stream()))
            .map(path -> new Line(Role.THIN, path.points()))
            .toList();
    return new RegisterMarks(board.grid(), lines);
  }

  /** The middles of the marks of a sheet, on the board; none that no other sheet has. */
  List<At> of(Cell cell) {
    List<At> marks = new ArrayList<>();
    for (int i = cell.column(); i <= cell.column() + 1; i++) {
      for (int j = cell.row(); j <= cell.row() + 1; j++) {
        boolean isInColumn = i > 0 && i < grid.columns();
        boolean isInRow = j > 0 && j < grid.rows();
        double half = TileGrid.OVERLAP / 2;
        At at = new At(i * grid.stepX() + half, j * grid.stepY() + half);
        if (isInColumn && isInRow) {
          marks.add(at);
        } else if (isInColumn) {
          marks.add(clear(at, new At(0, j == 0 ? STEP : -STEP)));
        } else if (isInRow) {
          marks.add(clear(at, new At(i == 0 ? STEP : -STEP, 0)));
        }
      }
    }
    return marks;
  }

  private At clear(At at, At step) {
    return IntStream.range(0, STEPS)
        .mapToObj(i -> at.plus(i * step.x(), i * step.y()))
        .filter(this::isClear)
        .findFirst()
        .orElse(at);
  }

  private boolean isClear(At at) {
    return lines.stream()
        .flatMap(line -> Paper.stretches(line).stream())
        .allMatch(stretch -> distance(stretch, at) >= CLEAR);
  }

  static double distance(Paper.Stretch line, At at) {
    return Line2D.ptSegDist(
        line.from().x(), line.from().y(), line.to().x(), line.to().y(), at.x(), at.y());
  }

  /** A cross in a ring, two of its quarters filled, so that nobody takes it for a hole. */
  static List<Element> drawn(At at) {
    return List.of(
        new Drawing.Area(Tone.INK, List.of(quarter(at, 0))),
        new Drawing.Area(Tone.INK, List.of(quarter(at, Math.PI))),
        new Ellipse(Role.DIMENSION, at, RADIUS, RADIUS, 0, Optional.empty()),
        new Line(Role.DIMENSION, List.of(at.plus(-ARM, 0), at.plus(ARM, 0))),
        new Line(Role.DIMENSION, List.of(at.plus(0, -ARM), at.plus(0, ARM))));
  }

  private static List<At> quarter(At at, double from) {
    List<At> ring = new ArrayList<>(List.of(at));
    for (int i = 0; i <= 6; i++) {
      double angle = from + i * Math.PI / 12;
      ring.add(at.plus(RADIUS * StrictMath.cos(angle), RADIUS * StrictMath.sin(angle)));
    }
    return ring;
  }
}
