package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Ellipse;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.Drawing.Tone;
import storyrod.words.Words;

/**
 * Lays a template over as few sheets as hold something of it. Neighbouring sheets share a strip, in
 * which the same register marks stand on both; columns have letters, rows have numbers.
 */
final class TemplateTiles {
  /** The strip that two sheets share. */
  static final double OVERLAP = 16;

  private static final double EDGE = 5;
  private static final double FOOT = 25;
  private static final double INSIDE = 4;
  private static final double MARK_RADIUS = 2.5;
  private static final double CELL = 4;
  private static final double BESIDE_BARS = 12;

  private final FullSize shape;
  private final Size page;
  private final Words words;
  private final double wide;
  private final double high;
  private final int columns;
  private final int rows;

  private TemplateTiles(FullSize shape, Size page, Words words) {
    this.shape = shape;
    this.page = page;
    this.words = words;
    this.wide = page.widthMm() - 2 * EDGE;
    this.high = page.heightMm() - 2 * EDGE - FOOT;
    Bounds bounds = shape.bounds();
    this.columns = count(bounds.width() + 2 * INSIDE, wide);
    this.rows = count(bounds.height() + 2 * INSIDE, high);
  }

  private static int count(double size, double window) {
    return Math.max(1, (int) Math.ceil((size - OVERLAP) / (window - OVERLAP)));
  }

  /** A template on its sheets, upright or lying, whichever needs fewer. */
  static TemplateSheets of(FullSize shape, Size page, Words words) {
    TemplateSheets level = laid(shape, page, words).sheets();
    TemplateSheets upright =
        laid(shape.mapped(at -> new At(at.y(), -at.x())), page, words).sheets();
    return upright.tiles().size() <= level.tiles().size() ? upright : level;
  }

  /** Moved so that it begins a little inside the first sheet. */
  private static TemplateTiles laid(FullSize shape, Size page, Words words) {
    Bounds bounds = shape.bounds();
    UnaryOperator<At> move = at -> at.plus(INSIDE - bounds.left(), INSIDE - bounds.top());
    return new TemplateTiles(shape.mapped(move), page, words);
  }

  private TemplateSheets sheets() {
    List<int[]> held = new ArrayList<>();
    for (int column = 0; column < columns; column++) {
      for (int row = 0; row < rows; row++) {
        if (holds(own(column, row))) {
          held.add(new int[] {column, row});
        }
      }
    }
    return new TemplateSheets(shape, held.stream().map(at -> tile(at[0], at[1], held)).toList());
  }

  private double stepX() {
    return wide - OVERLAP;
  }

  private double stepY() {
    return high - OVERLAP;
  }

  /** What a sheet shows. */
  private Bounds window(int column, int row) {
    double left = column * stepX();
    double top = row * stepY();
    return new Bounds(left, top, left + wide, top + high);
  }

  /** What a sheet shows that no other need show: up to the middle of what it shares. */
  private Bounds own(int column, int row) {
    Bounds all = window(column, row);
    double half = OVERLAP / 2;
    return new Bounds(
        column == 0 ? all.left() : all.left() + half,
        row == 0 ? all.top() : all.top() + half,
        column == columns - 1 ? all.right() : all.right() - half,
        row == rows - 1 ? all.bottom() : all.bottom() - half);
  }

  private boolean holds(Bounds window) {
    return shape.lines().stream().anyMatch(path -> !clipped(path, window).isEmpty());
  }

  /** The parts of a line inside a window, as chains of points. */
  private static List<List<At>> clipped(TruePath path, Bounds window) {
    List<List<At>> chains = new ArrayList<>();
    List<At> points = path.points();
    for (int i = 0; i + 1 < points.size(); i++) {
      Optional<Seen.Stroke> inside = clipped(points.get(i), points.get(i + 1), window);
      if (inside.isPresent()) {
        At from = inside.get().from();
        boolean runsOn = !chains.isEmpty() && chains.getLast().getLast().distance(from) < 1e-9;
        if (!runsOn) {
          chains.add(new ArrayList<>(List.of(from)));
        }
        chains.getLast().add(inside.get().to());
      }
    }
    return chains;
  }

  private static Optional<Seen.Stroke> clipped(At from, At to, Bounds window) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    double[] share = {0, 1};
    boolean inside =
        clip(share, -dx, from.x() - window.left())
            && clip(share, dx, window.right() - from.x())
            && clip(share, -dy, from.y() - window.top())
            && clip(share, dy, window.bottom() - from.y());
    return inside && share[1] > share[0]
        ? Optional.of(new Seen.Stroke(from, to).between(share[0], share[1]))
        : Optional.empty();
  }

  /** Narrows the shares of a stretch to where {@code towards * share <= room}. */
  private static boolean clip(double[] share, double towards, double room) {
    if (towards == 0) {
      return room >= 0;
    }
    double at = room / towards;
    if (towards > 0) {
      share[1] = Math.min(share[1], at);
    } else {
      share[0] = Math.max(share[0], at);
    }
    return share[0] <= share[1];
  }

  private TemplateTile tile(int column, int row, List<int[]> held) {
    Bounds window = window(column, row);
    double dx = EDGE - window.left();
    double dy = EDGE - window.top();
    List<Element> elements = new ArrayList<>();
    elements.add(frame());
    for (int i = 0; i <= columns; i++) {
      for (int j = 0; j <= rows; j++) {
        At at = new At(i * stepX() + OVERLAP / 2, j * stepY() + OVERLAP / 2);
        if (isIn(window, at, MARK_RADIUS + 1)) {
          elements.addAll(register(at.plus(dx, dy)));
        }
      }
    }
    elements.add(
        new Group(
            "template-" + shape.name(),
            shape.mark().mark(),
            shape.mark().title(),
            lines(window, dx, dy)));
    elements.addAll(foot(column, row, held));
    String letter = letter(column, row);
    Drawing drawing =
        new Drawing(
            "template-" + shape.name() + "-" + letter,
            page.widthMm(),
            page.heightMm(),
            Optional.of(new Scale(1, 1)),
            elements);
    return new TemplateTile(letter, drawing, new At(-dx, -dy));
  }

  private static boolean isIn(Bounds window, At at, double margin) {
    return at.x() > window.left() + margin
        && at.x() < window.right() - margin
        && at.y() > window.top() + margin
        && at.y() < window.bottom() - margin;
  }

  static String letter(int column, int row) {
    return (char) ('A' + column % 26) + (column < 26 ? "" : "'") + (row + 1);
  }

  private Element frame() {
    At corner = new At(EDGE, EDGE);
    return new Line(
        Role.DIMENSION,
        List.of(
            corner, corner.plus(wide, 0), corner.plus(wide, high), corner.plus(0, high), corner));
  }

  private List<Element> lines(Bounds window, double dx, double dy) {
    List<Element> lines = new ArrayList<>();
    for (TruePath path : shape.lines()) {
      for (List<At> chain : clipped(path, window)) {
        lines.add(new Line(Role.THIN, chain.stream().map(at -> at.plus(dx, dy)).toList()));
      }
    }
    for (FullSize.Hole hole : shape.holes()) {
      if (isIn(window, hole.centre(), 0)) {
        Bores.addCentre(hole.centre().plus(dx, dy), hole.diameterMm() / 2 + 1, lines);
      }
    }
    return lines;
  }

  /** A cross in a ring, two of its quarters filled, so that nobody takes it for a hole. */
  private static List<Element> register(At at) {
    double arm = MARK_RADIUS + 2;
    return List.of(
        new Drawing.Area(Tone.INK, List.of(quarter(at, 0))),
        new Drawing.Area(Tone.INK, List.of(quarter(at, Math.PI))),
        new Ellipse(Role.DIMENSION, at, MARK_RADIUS, MARK_RADIUS, 0, Optional.empty()),
        new Line(Role.DIMENSION, List.of(at.plus(-arm, 0), at.plus(arm, 0))),
        new Line(Role.DIMENSION, List.of(at.plus(0, -arm), at.plus(0, arm))));
  }

  private static List<At> quarter(At at, double from) {
    List<At> ring = new ArrayList<>(List.of(at));
    for (int i = 0; i <= 6; i++) {
      double angle = from + i * Math.PI / 12;
      ring.add(at.plus(MARK_RADIUS * StrictMath.cos(angle), MARK_RADIUS * StrictMath.sin(angle)));
    }
    return ring;
  }

  /** The sheet's letter, the bars, and a map of all sheets with this one filled. */
  private List<Element> foot(int column, int row, List<int[]> held) {
    double top = EDGE + high + 3;
    List<Element> foot = new ArrayList<>(CheckBars.at(new At(EDGE + BESIDE_BARS, top), words));
    foot.add(
        new Text(TextStyle.TITLE, new At(EDGE, top + 8), Anchor.START, true, letter(column, row)));
    double right = EDGE + wide;
    double cell = Math.min(CELL, Math.min(20.0 / rows, 45.0 / columns));
    for (int[] each : held) {
      At corner = new At(right - (columns - each[0]) * cell, top + 1 + each[1] * cell);
      List<At> ring =
          List.of(corner, corner.plus(cell, 0), corner.plus(cell, cell), corner.plus(0, cell));
      boolean here = each[0] == column && each[1] == row;
      foot.add(new Drawing.Area(here ? Tone.INK : Tone.WHITE, List.of(ring)));
      List<At> closed = new ArrayList<>(ring);
      closed.add(corner);
      foot.add(new Line(Role.DIMENSION, closed));
    }
    return foot;
  }
}
