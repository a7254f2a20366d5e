package storyrod.planset;

import java.awt.Font;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.security.SecureRandom;
import java.util.Locale;
import java.util.function.Supplier;
import org.openpdf.text.pdf.BaseFont;
import org.openpdf.text.pdf.FontMapper;
import storyrod.drawing.Fonts;

/**
 * The fonts of a plan set, read from the jars once per process and always embedded: Roboto in three
 * weights, and DejaVu Sans for glyphs that Roboto lacks.
 */
enum PdfFonts {
  LIGHT(300, () -> Fonts.ttf(Fonts.Weight.LIGHT)),
  REGULAR(400, () -> Fonts.ttf(Fonts.Weight.REGULAR)),
  BOLD(700, () -> Fonts.ttf(Fonts.Weight.BOLD)),
  FALLBACK(400, Fonts::symbolsTtf);

  /** The family's name in the style sheet. */
  static final String FALLBACK_FAMILY = "DejaVu Sans";

  private final int weight;
  private final Supplier<byte[]> file;
  private BaseFont font;

  PdfFonts(int weight, Supplier<byte[]> file) {
    this.weight = weight;
    this.file = file;
  }

  /** The font, parsed at its first use. */
  synchronized BaseFont font() {
    if (font == null) {
      font = read();
    }
    return font;
  }

  /** The weight as CSS counts it. */
  int weight() {
    return weight;
  }

  boolean has(int codePoint) {
    return font().charExists(codePoint);
  }

  /** The font for a weight as CSS counts it. */
  static PdfFonts weighing(int weight) {
    if (weight < 400) {
      return LIGHT;
    }
    return weight < 600 ? REGULAR : BOLD;
  }

  /** Maps the painter's fonts to the same embedded ones, by name. */
  static FontMapper mapper() {
    return new FontMapper() {
      @Override
      public BaseFont awtToPdf(Font awt) {
        return named(awt.getFontName(Locale.ROOT)).font();
      }

      @Override
      public Font pdfToAwt(BaseFont font, int size) {
        throw new UnsupportedOperationException("bug: no way back from a PDF font");
      }
    };
  }

  private static PdfFonts named(String name) {
    if (name.contains("DejaVu")) {
      return FALLBACK;
    }
    if (name.contains("Light")) {
      return LIGHT;
    }
    return name.contains("Bold") ? BOLD : REGULAR;
  }

  private BaseFont read() {
    try {
      BaseFont read =
          BaseFont.createFont(
              name() + ".ttf", BaseFont.IDENTITY_H, BaseFont.EMBEDDED, false, file.get(), null);
      read.setSecureRandom(new FixedPrefix(ordinal()));
      // The library lists the glyphs asked for, not those of which they are composed.
      read.setIncludeCidSet(false);
      return read;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Gives the subset's six-letter prefix as one letter of its own, the same in every run. */
  private static final class FixedPrefix extends SecureRandom {
    private static final long serialVersionUID = 1;
    private static final double LETTERS = 26;
    private final int letter;

    FixedPrefix(int letter) {
      this.letter = letter;
    }

    @Override
    public double nextDouble() {
      return (letter + 0.5) / LETTERS;
    }
  }
}
