package storyrod.drawing;

import java.awt.Font;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.Fonts.Weight;

/**
 * A text set on one line: stretches of one face and size, fractions as small raised and lowered
 * figures. Read one after the other the stretches are the text.
 *
 * @param width in mm
 */
record TextSetting(List<Stretch> stretches, double width) {
  /** How far a text reaches above and below its base line, in parts of its size. */
  static final double ASCENT = 0.78;

  static final double DESCENT = 0.21;

  /** A fraction's figures, in parts of the text's size, unless they would be too small to read. */
  private static final double SMALL = 0.75;

  /** How high a figure is, in parts of its own size. */
  private static final double FIGURE = 0.715;

  /** How much higher a fraction's upper figures stand than its lower ones. */
  private static final double STEP = 0.31;

  /** The least size of any text of a drawing, in mm, a fraction's figures too. */
  static final double LEAST_MM = 2.5;

  private static final Pattern FRACTION =
      Pattern.compile("(?<![\\p{Alnum}/.])(\\d{1,3})/(\\d{1,3})(?![\\p{Alnum}/])");

  /** Places are tried over and over with the same few texts. */
  private static final Map<Key, TextSetting> MEMORY = new ConcurrentHashMap<>();

  private static final int REMEMBERED = 4000;

  private record Key(TextStyle style, String text) {}

  TextSetting {
    stretches = List.copyOf(stretches);
  }

  /**
   * A stretch of one face.
   *
   * @param x from the start of the text, in mm
   * @param rise above the base line, in mm
   * @param size of the font, in mm
   */
  record Stretch(String text, boolean symbol, double x, double rise, double size) {
    Font font(Weight weight, double unitsPerMm) {
      double units = size * unitsPerMm;
      return symbol ? Fonts.symbols(units) : Fonts.awt(weight, units);
    }
  }

  static Weight weight(TextStyle style) {
    return switch (style) {
      case DIMENSION, NOTE, SMALL -> Weight.REGULAR;
      case MARK, TITLE -> Weight.BOLD;
    };
  }

  static TextSetting of(TextStyle style, String text) {
    if (MEMORY.size() > REMEMBERED) {
      MEMORY.clear();
    }
    return MEMORY.computeIfAbsent(new Key(style, text), TextSetting::set);
  }

  private static TextSetting set(Key key) {
    TextStyle style = key.style;
    String text = key.text;
    Setter setter = new Setter(weight(style), style.sizeMm());
    Matcher fraction = FRACTION.matcher(text);
    double small = Math.max(SMALL, LEAST_MM / style.sizeMm());
    double raised = ASCENT - small * FIGURE;
    double lowered = Math.max(raised - STEP, -DESCENT);
    int done = 0;
    while (fraction.find()) {
      setter.set(text.substring(done, fraction.start()), 1, 0);
      setter.set(fraction.group(1), small, raised);
      setter.set("/", 1, 0);
      setter.set(fraction.group(2), small, lowered);
      done = fraction.end();
    }
    setter.set(text.substring(done), 1, 0);
    return new TextSetting(setter.stretches, setter.x);
  }

  private static final class Setter {
    private final Weight weight;
    private final double size;
    private final List<Stretch> stretches = new ArrayList<>();
    private double x;

    Setter(Weight weight, double size) {
      this.weight = weight;
      this.size = size;
    }

    /** A stretch begins with no space, for what reads an SVG leaves such spaces out. */
    void set(String text, double part, double rise) {
      for (Fonts.Run run : Fonts.runs(text)) {
        double set = size * part;
        String shown = run.text().stripLeading();
        String before = run.text().substring(0, run.text().length() - shown.length());
        double start = x + Fonts.width(weight, set, before);
        if (!shown.isEmpty()) {
          stretches.add(new Stretch(shown, run.symbol(), start, rise * size, set));
        }
        x += Fonts.width(weight, set, run.text());
      }
    }
  }
}
