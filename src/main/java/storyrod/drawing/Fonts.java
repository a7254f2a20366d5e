package storyrod.drawing;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The one family of a plan set in three weights, and the face that stands in for signs it lacks.
 * All come from the class path, never from the machine.
 */
public final class Fonts {
  private static final String ROBOTO = "/com/formdev/flatlaf/fonts/roboto/Roboto-";
  private static final String SYMBOLS = "/net/sf/jasperreports/fonts/dejavu/DejaVuSans.ttf";
  private static final FontRenderContext UNHINTED = new FontRenderContext(null, true, true);
  private static final float MEASURED_AT = 1000;
  private static final int USUAL_SIGNS = 256;

  private Fonts() {}

  /** A weight of the family. */
  public enum Weight {
    LIGHT("Light", 300),
    REGULAR("Regular", 400),
    BOLD("Bold", 700);

    private final String word;
    private final int css;

    Weight(String word, int css) {
      this.word = word;
      this.css = css;
    }

    /** The weight as CSS counts it. */
    public int css() {
      return css;
    }
  }

  /** A stretch of text in one face; {@code symbol} if the stand-in has to set it. */
  public record Run(String text, boolean symbol) {}

  /** The font file of a weight. */
  public static byte[] ttf(Weight weight) {
    return bytes(ROBOTO + weight.word + ".ttf");
  }

  /** The font file of the face that stands in. */
  public static byte[] symbolsTtf() {
    return bytes(SYMBOLS);
  }

  public static Font awt(Weight weight, double size) {
    return Faces.ROBOTO_BY_WEIGHT.get(weight.ordinal()).deriveFont((float) size);
  }

  /** The face that stands in for signs that the family lacks. */
  public static Font symbols(double size) {
    return Faces.STAND_IN.deriveFont((float) size);
  }

  /** The width of a text on one line, in the unit of the size; the only way texts are measured. */
  public static double width(Weight weight, double size, String text) {
    double width = 0;
    for (Run run : runs(text)) {
      width += run.symbol() ? advance(Faces.STAND_IN, run.text()) : plain(weight, run.text());
    }
    return width * size;
  }

  private static double plain(Weight weight, String text) {
    double[] advances = Faces.ADVANCES.get(weight.ordinal());
    double width = 0;
    for (int sign : text.codePoints().toArray()) {
      width +=
          sign < advances.length
              ? advances[sign]
              : advance(Faces.ROBOTO_BY_WEIGHT.get(weight.ordinal()), Character.toString(sign));
    }
    return width;
  }

  private static double advance(Font face, String text) {
    var glyphs = face.deriveFont(MEASURED_AT).createGlyphVector(UNHINTED, text);
    return glyphs.getGlyphPosition(glyphs.getNumGlyphs()).getX() / MEASURED_AT;
  }

  /** Whether the family itself has every sign of a text; a sign that no face has is a bug. */
  public static boolean covers(String text) {
    return runs(text).stream().noneMatch(Run::symbol);
  }

  /** The text cut where the face changes; a sign that no face has is a bug. */
  public static List<Run> runs(String text) {
    List<Run> runs = new ArrayList<>();
    StringBuilder open = new StringBuilder();
    boolean symbol = false;
    for (int sign : text.codePoints().toArray()) {
      boolean standIn = needsStandIn(sign, text);
      if (standIn != symbol && !open.isEmpty()) {
        runs.add(new Run(open.toString(), symbol));
        open.setLength(0);
      }
      symbol = standIn;
      open.appendCodePoint(sign);
    }
    if (!open.isEmpty()) {
      runs.add(new Run(open.toString(), symbol));
    }
    return List.copyOf(runs);
  }

  /** Whether a sign has a glyph in the family or in the face that stands in. */
  public static boolean has(int sign) {
    return Faces.ROBOTO_BY_WEIGHT.stream().allMatch(face -> face.canDisplay(sign))
        || Faces.STAND_IN.canDisplay(sign);
  }

  private static boolean needsStandIn(int sign, String text) {
    boolean plain = sign >= ' ' && sign <= '~';
    if (plain || Faces.ROBOTO_BY_WEIGHT.stream().allMatch(face -> face.canDisplay(sign))) {
      return false;
    }
    if (!Faces.STAND_IN.canDisplay(sign)) {
      throw new IllegalStateException(
          "bug: no face has " + Character.getName(sign) + " of '" + text + "'");
    }
    return true;
  }

  private static byte[] bytes(String path) {
    try (InputStream in = Fonts.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException("bug: no font " + path + " on the class path");
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The faces as AWT knows them, loaded once. */
  private static final class Faces {
    static final List<Font> ROBOTO_BY_WEIGHT;
    static final Font STAND_IN;

    /** The widths of the usual signs at size 1, because texts are measured over and over. */
    static final List<double[]> ADVANCES;

    static {
      List<Path> waste = FontSetup.withoutTheMachinesFonts();
      ROBOTO_BY_WEIGHT =
          List.of(load(ttf(Weight.LIGHT)), load(ttf(Weight.REGULAR)), load(ttf(Weight.BOLD)));
      STAND_IN = load(symbolsTtf());
      waste.forEach(FontSetup::remove);
      ADVANCES = ROBOTO_BY_WEIGHT.stream().map(Faces::advances).toList();
    }

    private static double[] advances(Font face) {
      return java.util.stream.IntStream.range(0, USUAL_SIGNS)
          .mapToDouble(sign -> advance(face, Character.toString(sign)))
          .toArray();
    }

    private static Font load(byte[] ttf) {
      try {
        return Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(ttf));
      } catch (FontFormatException e) {
        throw new IllegalStateException("bug: " + e.getMessage(), e);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /**
   * On Unix AWT asks a library of the system for its fonts before it loads any, and gives up where
   * that library or its fonts are missing. A list of its own, however short, spares it that.
   */
  private static final class FontSetup {
    private static final String PROPERTY = "sun.awt.fontconfig";

    static List<Path> withoutTheMachinesFonts() {
      boolean needed =
          java.io.File.separatorChar == '/'
              && !System.getProperty("os.name", "").startsWith("Mac")
              && System.getProperty(PROPERTY) == null;
      return needed ? List.of(setUp()) : List.of();
    }

    private static Path setUp() {
      try {
        Path list = Files.createTempFile("storyrod", ".properties");
        Files.writeString(list, "version=1\nsequence.allfonts=default\n");
        System.setProperty(PROPERTY, list.toString());
        return list;
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    static void remove(Path list) {
      try {
        Files.deleteIfExists(list);
      } catch (IOException e) {
        list.toFile().deleteOnExit();
      }
    }
  }
}
