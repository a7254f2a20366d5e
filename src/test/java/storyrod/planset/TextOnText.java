package storyrod.planset;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import storyrod.planset.PdfText.Glyph;

/** No text of a page lies on another or comes too near to it. */
final class TextOnText {
  /** Kerning and slanted strokes count for nothing. */
  private static final double OVER_MM = 0.4;

  /** The sizes of a step's text and of the lists beside it, in whole points as they are read. */
  private static final double TEXT_PT = 9;

  private static final double LIST_PT = 8;
  private static final double GUTTER_MM = 5;

  private TextOnText() {}

  static List<String> overlaps(FinishedPdf pdf) {
    List<String> faults = new ArrayList<>();
    pdf.pages().values().forEach(glyphs -> addOverlaps(glyphs, faults));
    return faults;
  }

  /** From left to right, each glyph against those that begin before it ends. */
  private static void addOverlaps(List<Glyph> glyphs, List<String> faults) {
    List<Glyph> sorted = glyphs.stream().sorted(Comparator.comparing(Glyph::left)).toList();
    for (int i = 0; i < sorted.size(); i++) {
      Glyph a = sorted.get(i);
      for (int j = i + 1; j < sorted.size() && sorted.get(j).left() < a.right() - OVER_MM; j++) {
        if (overlap(a, sorted.get(j))) {
          faults.add(a + " on " + sorted.get(j));
        }
      }
    }
  }

  private static boolean overlap(Glyph a, Glyph b) {
    return Math.min(a.right(), b.right()) - Math.max(a.left(), b.left()) > OVER_MM
        && Math.min(a.bottom(), b.bottom()) - Math.max(a.top(), b.top()) > OVER_MM;
  }

  static List<String> tooNear(FinishedPdf pdf) {
    List<String> faults = new ArrayList<>();
    pdf.pages().values().forEach(glyphs -> addTooNear(glyphs, faults));
    return faults;
  }

  private static void addTooNear(List<Glyph> glyphs, List<String> faults) {
    List<Glyph> lists = sized(glyphs, LIST_PT);
    for (Glyph text : sized(glyphs, TEXT_PT)) {
      lists.stream()
          .filter(each -> Math.abs(each.bottom() - text.bottom()) < 2)
          .filter(each -> each.left() > text.left())
          .filter(each -> each.left() - text.right() < GUTTER_MM)
          .forEach(each -> faults.add(text + " too near to " + each));
    }
  }

  private static List<Glyph> sized(List<Glyph> glyphs, double points) {
    return glyphs.stream().filter(each -> Math.abs(each.size() - points) < 0.5).toList();
  }
}
