package storyrod.planset;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.openpdf.css.constants.IdentValue;
import org.openpdf.css.value.FontSpecification;
import org.openpdf.layout.SharedContext;
import org.openpdf.pdf.FontDescription;
import org.openpdf.pdf.FontFamily;
import org.openpdf.pdf.ITextFSFont;
import org.openpdf.pdf.ITextFontResolver;
import org.openpdf.render.FSFont;

/** Chooses among the embedded fonts; there is no other font that a page could fall back to. */
final class FontChoice extends ITextFontResolver {
  private final Map<PdfFonts, FontDescription> descriptions = new EnumMap<>(PdfFonts.class);

  @Override
  public FSFont resolveFont(SharedContext context, FontSpecification wanted) {
    return new ITextFSFont(
        descriptions.computeIfAbsent(chosen(wanted), FontChoice::described), wanted.size);
  }

  /** Says that the font has the weight asked for, or the layout would embolden it by itself. */
  private static FontDescription described(PdfFonts font) {
    return new FontDescription(font.font(), IdentValue.NORMAL, font.weight());
  }

  private static PdfFonts chosen(FontSpecification wanted) {
    boolean fallback =
        wanted.families != null
            && Arrays.stream(wanted.families).anyMatch(name -> name.contains("DejaVu"));
    return fallback ? PdfFonts.FALLBACK : PdfFonts.weighing(convertWeightToInt(wanted.fontWeight));
  }

  @Override
  protected Map<String, FontFamily> loadFonts() {
    return new LinkedHashMap<>();
  }
}
