package storyrod.drawing;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jfree.svg.SVGUtils;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.TruePath.Round;
import storyrod.drawing.TruePath.Straight;

/**
 * A template as SVG for a router, a plotter or a laser: one unit is one millimetre, arcs are true
 * arcs, and layers hold nothing but lines to cut, edges to lay it against and the centres of holes.
 */
public final class CutSvg {
  private static final double AROUND = 5;
  private static final double ARM = 2;

  private final FullSize shape;
  private final Bounds bounds;

  private CutSvg(FullSize shape) {
    this.shape = shape;
    this.bounds = shape.bounds();
  }

  /** The drawing as an XML document; equal templates give equal bytes. */
  public static String write(FullSize shape) {
    return new CutSvg(shape).document();
  }

  private String document() {
    String width = number(bounds.width() + 2 * AROUND);
    String height = number(bounds.height() + 2 * AROUND);
    String title = SVGUtils.escapeForXML(shape.name() + " " + shape.mark().title());
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
        + "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%smm\" height=\"%smm\""
            .formatted(width, height)
        + " viewBox=\"0 0 %s %s\">\n<title>%s</title>\n".formatted(width, height, title)
        + "<desc>%s</desc>\n".formatted(SVGUtils.escapeForXML(said()))
        + layer("cut", shape.cuts().stream().map(this::path).toList())
        + layer("edge", shape.edges().stream().map(this::path).toList())
        + layer("holes", shape.holes().stream().map(this::circle).toList())
        + layer("centres", shape.holes().stream().map(this::cross).toList())
        + "</svg>\n";
  }

  /** What the sheets say of it in words, which no machine draws. */
  private String said() {
    return Stream.concat(
            shape.text().facing().stream(), shape.text().all().map(TemplateText.Note::words))
        .collect(Collectors.joining("; "));
  }

  private static String layer(String id, List<String> shapes) {
    return shapes.isEmpty()
        ? ""
        : "<g id=\"%s\" fill=\"none\" stroke=\"#000\" stroke-width=\"0.1\">\n".formatted(id)
            + shapes.stream().map(each -> each + "\n").collect(Collectors.joining())
            + "</g>\n";
  }

  private String path(TruePath path) {
    StringBuilder data = new StringBuilder("M" + point(path.stretches().getFirst().from()));
    for (TruePath.Stretch stretch : path.stretches()) {
      switch (stretch) {
        case Straight s -> data.append(" L").append(point(s.to()));
        case Round r ->
            data.append(" A")
                .append(number(r.radius()))
                .append(' ')
                .append(number(r.radius()))
                .append(" 0 ")
                .append(r.sweep() > Math.PI ? 1 : 0)
                .append(' ')
                .append(r.clockwise() ? 1 : 0)
                .append(' ')
                .append(point(r.to()));
      }
    }
    return "<path d=\"" + data + (path.closed() ? " Z" : "") + "\"/>";
  }

  private String circle(FullSize.Hole hole) {
    At at = moved(hole.centre());
    return "<circle cx=\"%s\" cy=\"%s\" r=\"%s\"/>"
        .formatted(number(at.x()), number(at.y()), number(hole.diameterMm() / 2));
  }

  private String cross(FullSize.Hole hole) {
    At c = hole.centre();
    return "<path d=\"M%s L%s M%s L%s\"/>"
        .formatted(
            point(c.plus(-ARM, 0)),
            point(c.plus(ARM, 0)),
            point(c.plus(0, -ARM)),
            point(c.plus(0, ARM)));
  }

  private At moved(At at) {
    return at.plus(AROUND - bounds.left(), AROUND - bounds.top());
  }

  private String point(At at) {
    At moved = moved(at);
    return number(moved.x()) + " " + number(moved.y());
  }

  private static String number(double mm) {
    return String.format(Locale.ROOT, "%.4f", mm).replaceFirst("\\.?0+$", "");
  }
}
