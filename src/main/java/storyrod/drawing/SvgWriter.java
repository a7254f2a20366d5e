package storyrod.drawing;

import java.awt.Font;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.jfree.svg.SVGGraphics2D;
import org.jfree.svg.SVGHints;
import org.jfree.svg.SVGUnits;
import org.jfree.svg.SVGUtils;
import org.jfree.svg.ViewBox;

/** Writes a drawing as an SVG of its true size, text as text; equal drawings give equal bytes. */
public final class SvgWriter {
  private static final int DECIMALS = 2;
  private static final int HUNDRED = 100;

  /** Below a half by far more than a double of some size is off; what is nearer is told exactly. */
  private static final double NEAR_HALF = 0.4999;

  private static final double LARGE = 1e9;

  private SvgWriter() {}

  /** The drawing as an XML document, with its name for a title. */
  public static String write(Drawing drawing) {
    return write(drawing, drawing.name());
  }

  public static String write(Drawing drawing, String title) {
    SVGGraphics2D graphics = new SVGGraphics2D(drawing.widthMm(), drawing.heightMm(), SVGUnits.MM);
    graphics.setDefsKeyPrefix("d");
    graphics.setGeomDoubleConverter(SvgWriter::number);
    graphics.setTransformDoubleConverter(SvgWriter::number);
    graphics.setFontFunction(family -> cssFamily(graphics.getFont()));
    Painter.paint(drawing, graphics, new SvgGroups(graphics));
    ViewBox paper =
        new ViewBox(
            0,
            0,
            drawing.widthMm() * Painter.UNITS_PER_MM,
            drawing.heightMm() * Painter.UNITS_PER_MM);
    return document(graphics.getSVGElement(null, true, paper, null, null), title);
  }

  private static String document(String svg, String title) {
    int inside = svg.indexOf('>') + 1;
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
        + svg.substring(0, inside)
        + "<title>"
        + SVGUtils.escapeForXML(title)
        + "</title>"
        + svg.substring(inside)
        + "\n";
  }

  /** A number as it is printed; exact halves go to the even digit. */
  static String number(double value) {
    double hundredths = value * HUNDRED;
    double nearest = Math.rint(hundredths);
    boolean isClear = Math.abs(hundredths - nearest) < NEAR_HALF;
    return isClear && Math.abs(value) < LARGE ? decimal((long) nearest) : exact(value);
  }

  private static String decimal(long hundredths) {
    long rest = Math.abs(hundredths);
    String sign = hundredths < 0 ? "-" : "";
    long last = rest % HUNDRED;
    if (last == 0) {
      return sign + rest / HUNDRED;
    }
    String digits = last % 10 == 0 ? Long.toString(last / 10) : (last < 10 ? "0" : "") + last;
    return sign + rest / HUNDRED + "." + digits;
  }

  private static String exact(double value) {
    BigDecimal rounded =
        new BigDecimal(value).setScale(DECIMALS, RoundingMode.HALF_EVEN).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }

  /** A face loaded from a file does not tell its weight by its family, so its own name does. */
  private static String cssFamily(Font font) {
    for (Fonts.Weight weight : Fonts.Weight.values()) {
      if (Fonts.awt(weight, font.getSize2D()).getPSName().equals(font.getPSName())) {
        return quoted(font) + ",Roboto,Arial,sans-serif;font-weight:" + weight.css();
      }
    }
    return quoted(font) + ",sans-serif";
  }

  private static String quoted(Font font) {
    return '"' + font.getFontName(Locale.ENGLISH) + '"';
  }

  private record SvgGroups(SVGGraphics2D graphics) implements Painter.Grouping {
    @Override
    public void begin(Drawing.Group group) {
      Map<String, String> attributes = new LinkedHashMap<>();
      attributes.put("id", group.id());
      attributes.put("aria-label", group.title());
      attributes.put("data-mark", group.mark());
      attributes.put("data-name", group.name());
      graphics.setRenderingHint(SVGHints.KEY_BEGIN_GROUP, attributes);
    }

    @Override
    public void end() {
      graphics.setRenderingHint(SVGHints.KEY_END_GROUP, "end");
    }
  }
}
