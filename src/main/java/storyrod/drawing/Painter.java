package storyrod.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.Arrow;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Balloon;
import storyrod.drawing.Drawing.Dimension;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Ellipse;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Note;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.RunningDimension;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.Tone;

/**
 * The one painter: puts a drawing on any Graphics2D in units of 1/100 mm, from the paper's top left
 * corner. Whoever calls it scales the Graphics2D.
 */
public final class Painter {
  /** Units of the Graphics2D in a millimetre of paper. */
  public static final int UNITS_PER_MM = 100;

  private static final Color INK = new Color(0x1a1d21);

  private final Graphics2D graphics;
  private final Grouping grouping;

  private Painter(Graphics2D graphics, Grouping grouping) {
    this.graphics = graphics;
    this.grouping = grouping;
  }

  /** What is told where a group begins and ends. */
  interface Grouping {
    void begin(Group group);

    void end();

    Grouping NONE =
        new Grouping() {
          @Override
          public void begin(Group group) {}

          @Override
          public void end() {}
        };
  }

  public static void paint(Drawing drawing, Graphics2D graphics) {
    paint(drawing, graphics, Grouping.NONE);
  }

  static void paint(Drawing drawing, Graphics2D graphics, Grouping grouping) {
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    graphics.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    Painter painter = new Painter(graphics, grouping);
    painter.paint(drawing.elements());
  }

  /** Every text of a drawing with the room it takes. */
  public static List<PlacedText> texts(Drawing drawing) {
    return drawing.elements().stream().flatMap(Lowering::texts).map(PlacedText::of).toList();
  }

  /** In order; lines of one role in a row are one path, which keeps an SVG small. */
  private void paint(List<Element> elements) {
    List<Line> row = new ArrayList<>();
    for (Element element : elements) {
      if (!row.isEmpty()
          && !(element instanceof Line line && line.role() == row.getLast().role())) {
        strokes(row);
        row.clear();
      }
      if (element instanceof Line line) {
        row.add(line);
      } else {
        paint(element);
      }
    }
    if (!row.isEmpty()) {
      strokes(row);
    }
  }

  private void strokes(List<Line> row) {
    Path2D all = new Path2D.Double();
    row.forEach(line -> all.append(path(line.points(), false), false));
    stroke(row.getFirst().role(), all);
  }

  private void paint(Element element) {
    switch (element) {
      case Line line -> stroke(line.role(), path(line.points(), false));
      case Area area -> fill(area);
      case Ellipse ellipse -> ellipse(ellipse);
      case Text text -> text(text);
      case Group group -> {
        grouping.begin(group);
        paint(group.elements());
        grouping.end();
      }
      case Dimension dimension -> Lowering.simple(dimension).forEach(this::paint);
      case RunningDimension running -> Lowering.simple(running).forEach(this::paint);
      case Balloon balloon -> Lowering.simple(balloon).forEach(this::paint);
      case Note note -> Lowering.simple(note).forEach(this::paint);
      case Arrow arrow -> Lowering.simple(arrow).forEach(this::paint);
    }
  }

  private void stroke(Role role, Shape shape) {
    graphics.setColor(INK);
    graphics.setStroke(stroke(role));
    graphics.draw(shape);
  }

  private void fill(Area area) {
    if (area.tone() == Tone.HATCH) {
      Hatching.lines(area.rings()).forEach(line -> stroke(Role.DIMENSION, path(line, false)));
      return;
    }
    Path2D shape = new Path2D.Double(Path2D.WIND_EVEN_ODD);
    area.rings().forEach(ring -> shape.append(path(ring, true), false));
    graphics.setColor(color(area.tone()));
    graphics.fill(shape);
  }

  private void ellipse(Ellipse ellipse) {
    double x = units(ellipse.centre().x());
    double y = units(ellipse.centre().y());
    double rx = units(ellipse.rx());
    double ry = units(ellipse.ry());
    Shape round = new Ellipse2D.Double(x - rx, y - ry, 2 * rx, 2 * ry);
    Shape shape =
        ellipse.turned() == 0
            ? round
            : AffineTransform.getRotateInstance(ellipse.turned(), x, y)
                .createTransformedShape(round);
    ellipse.fill().filter(tone -> tone != Tone.HATCH).ifPresent(tone -> fill(tone, shape));
    stroke(ellipse.role(), shape);
  }

  private void fill(Tone tone, Shape shape) {
    graphics.setColor(color(tone));
    graphics.fill(shape);
  }

  private void text(Text text) {
    TextSetting setting = TextSetting.of(text.style(), text.text());
    AffineTransform before = graphics.getTransform();
    graphics.translate(units(text.at().x()), units(text.at().y()));
    if (!text.upright()) {
      graphics.transform(AffineTransform.getQuadrantRotateInstance(-1));
    }
    graphics.setColor(INK);
    double start = -PlacedText.startOf(text.anchor()) * setting.width();
    for (TextSetting.Stretch stretch : setting.stretches()) {
      graphics.setFont(stretch.font(TextSetting.weight(text.style()), UNITS_PER_MM));
      graphics.drawString(
          stretch.text(), (float) units(start + stretch.x()), (float) -units(stretch.rise()));
    }
    graphics.setTransform(before);
  }

  private static Path2D path(List<At> points, boolean closed) {
    Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
    path.moveTo(units(points.getFirst().x()), units(points.getFirst().y()));
    points.stream().skip(1).forEach(at -> path.lineTo(units(at.x()), units(at.y())));
    if (closed) {
      path.closePath();
    }
    return path;
  }

  private static double units(double mm) {
    return mm * UNITS_PER_MM;
  }

  private static Stroke stroke(Role role) {
    float width = (float) units(role.widthMm());
    float[] dashes = dashes(role, width);
    return dashes.length == 0
        ? new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 4)
        : new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 4, dashes, 0);
  }

  /** Dashes and gaps in line widths (ISO 128-2, from memory; hidden dashes a third shorter). */
  private static float[] dashes(Role role, float width) {
    return switch (role) {
      case VISIBLE, THIN, DIMENSION, CUT -> new float[0];
      case HIDDEN -> new float[] {8 * width, 3 * width};
      case CENTRE -> new float[] {24 * width, 3 * width, width, 3 * width};
      case PHANTOM -> new float[] {24 * width, 3 * width, width, 3 * width, width, 3 * width};
      case TRAIL -> new float[] {12 * width, 4 * width, width, 4 * width};
    };
  }

  private static Color color(Tone tone) {
    return switch (tone) {
      case WHITE -> Color.WHITE;
      case TOP -> new Color(0xfaf8f2);
      case FRONT -> new Color(0xf0ebe1);
      case SIDE -> new Color(0xdfd8ca);
      case PALE -> new Color(0xf6f3ec);
      case INK -> INK;
      case HATCH -> throw new IllegalStateException("bug: a hatch has no colour");
    };
  }
}
