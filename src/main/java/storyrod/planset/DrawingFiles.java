package storyrod.planset;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import storyrod.description.About;
import storyrod.drawing.CutSvg;
import storyrod.drawing.Drawing;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.Drawings;
import storyrod.drawing.GeneralSheet;
import storyrod.drawing.PngWriter;
import storyrod.drawing.SvgWriter;
import storyrod.geometry.Parallel;
import storyrod.piece.Mark;

/** The drawings of a plan set as files of their own, by name, in a fixed order. */
final class DrawingFiles {
  private static final String FOLDER = "drawings/";

  private static final double TITLE_MM = 12;

  private DrawingFiles() {}

  /** Every drawing as SVG, and what a router or a laser cuts. */
  static Map<String, byte[]> svg(PlanSet set) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    drawings(set).forEach((name, drawing) -> files.put(FOLDER + name + ".svg", svg(drawing)));
    set.drawings().templates().stream()
        .flatMap(sheets -> sheets.shapes().stream())
        .forEach(
            shape ->
                files.put(
                    FOLDER + "template-" + shape.name() + ".svg",
                    CutSvg.write(shape).getBytes(StandardCharsets.UTF_8)));
    return files;
  }

  private static byte[] svg(Drawing drawing) {
    return SvgWriter.write(drawing).getBytes(StandardCharsets.UTF_8);
  }

  /** The cover's picture alone as SVG: it has a name and no size. */
  static Map<String, byte[]> coverSvg(PlanSet set) {
    return Map.of(FOLDER + Cover.DRAWING + ".svg", svg(cover(set)));
  }

  /** The cover's picture alone as PNG. */
  static Map<String, byte[]> coverPng(PlanSet set) {
    return png(Map.of(Cover.DRAWING, cover(set)));
  }

  /** The same drawings as PNG, without what only machines read. */
  static Map<String, byte[]> png(PlanSet set) {
    return png(drawings(set));
  }

  private static Map<String, byte[]> png(Map<String, Drawing> drawings) {
    List<byte[]> written = Parallel.map(List.copyOf(drawings.values()), PngWriter::write);
    Map<String, byte[]> files = new LinkedHashMap<>();
    drawings.keySet().forEach(name -> files.put(FOLDER + name + ".png", written.get(files.size())));
    return files;
  }

  private static Map<String, Drawing> drawings(PlanSet set) {
    Drawings all = set.drawings();
    Map<String, Drawing> files = new LinkedHashMap<>();
    files.put(Cover.DRAWING, cover(set));
    all.general().forEach(sheet -> put(files, sheet));
    files.put("exploded", all.exploded().whole());
    all.exploded().hardware().ifPresent(each -> files.put(each.name(), each));
    all.exploded().opened().forEach(sheet -> put(files, sheet));
    set.piece().marks().forEach(mark -> files.put(name(mark), all.parts().get(mark.mark())));
    all.blanks().forEach((mark, drawing) -> files.put(BlankPages.drawingName(mark), drawing));
    return files;
  }

  /** The cover's picture with the piece's name below it, for where the plan is shown. */
  private static Drawing cover(PlanSet set) {
    Drawing cover = set.drawings().cover();
    About about = set.piece().description().about();
    At below = new At(cover.widthMm() / 2, cover.heightMm() + TITLE_MM * 0.6);
    Text name = new Text(TextStyle.TITLE, below, Anchor.MIDDLE, true, about.project().value());
    List<Drawing.Element> elements = new ArrayList<>(cover.elements());
    elements.add(name);
    return new Drawing(
        Cover.DRAWING, cover.widthMm(), cover.heightMm() + TITLE_MM, cover.scale(), elements);
  }

  private static void put(Map<String, Drawing> files, GeneralSheet sheet) {
    files.put(sheet.drawing().name(), sheet.drawing());
  }

  private static String name(Mark mark) {
    if (!mark.mark().matches("[A-Z]+")) {
      throw new IllegalStateException("bug: no mark to name a file by: " + mark.mark());
    }
    return "part-" + mark.mark();
  }
}
