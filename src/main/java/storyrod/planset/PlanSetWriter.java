package storyrod.planset;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.w3c.dom.Document;
import storyrod.drawing.Drawing;
import storyrod.geometry.Lazy;
import storyrod.words.Words;

/**
 * Writes a plan set's files: bytes by file name, in a fixed order. The same plan set gives the same
 * bytes. It touches no file and opens no address. Under a default locale with digits other than 0
 * to 9, as Arabic has, it sets the default for formatting to {@link java.util.Locale#ROOT} while it
 * lays out the PDF; a program that formats in other threads then should not have such a default.
 */
public final class PlanSetWriter {
  private final Function<PlanSet, Wording> wording;
  private final Printing printing;

  /** A writer of the usual edition in one language. */
  public PlanSetWriter(Words words) {
    this(Printing.usual(words));
  }

  /** A writer of one edition. */
  public PlanSetWriter(Printing printing) {
    this.printing = printing;
    this.wording = set -> new StepTexts(set.piece(), set.build()).in(printing);
  }

  /** A writer of one edition of a plan of which steps may have been put into words already. */
  public PlanSetWriter(Printing printing, StepTexts texts) {
    this.printing = printing;
    this.wording = set -> texts.in(printing);
  }

  PlanSetWriter(Wording wording, Words words) {
    this.printing = Printing.usual(words);
    this.wording = set -> wording;
  }

  /**
   * Loads what the first plan set needs, fonts and layout, by writing one empty page. A program
   * that has other work to do first may call it in a thread of its own.
   */
  public static void getReady() {
    String page = "<html><head><title></title></head><body><p><b>1</b></p></body></html>";
    PdfPages.write(page, Map.of(), new PdfPages.About("", "", "", Optional.empty()));
  }

  /**
   * The files of a plan set by name: the PDF, the drawings, the lists and {@code plan.json}; of a
   * preview the PDF and the cover's picture alone, as all others tell sizes.
   *
   * @throws UnprintableTextException if a text holds a character that no font has
   */
  public Map<String, byte[]> write(PlanSet set) {
    Print print = Print.of(set.piece(), set.build(), printing);
    Pages pages = Pages.of(set, print, wording.apply(set));
    Supplier<byte[]> writer = pdf(set, pages);
    Lazy<byte[]> pdf = new Lazy<>(writer);
    Lazy<Map<String, byte[]>> beside = new Lazy<>(() -> beside(set, pages));
    Stream.of(pdf, beside).parallel().forEach(Lazy::get);
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("plan-set.pdf", pdf.get());
    files.putAll(beside.get());
    return files;
  }

  private Map<String, byte[]> beside(PlanSet set, Pages pages) {
    if (printing.edition().isPreview()) {
      return DrawingFiles.coverSvg(set);
    }
    Map<String, byte[]> files = new LinkedHashMap<>(DrawingFiles.svg(set));
    files.putAll(lists(set, pages.chosen().whole() ? pages : whole(set)));
    return files;
  }

  /** The pages of all steps, for the lists, which always tell of the whole piece. */
  private Pages whole(PlanSet set) {
    Print print = Print.of(set.piece(), set.build(), printing.whole());
    return Pages.of(set, print, wording.apply(set));
  }

  private static Map<String, byte[]> lists(PlanSet set, Pages pages) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    Texts texts = pages.texts().inOneUnit();
    Shopping shopping = Shopping.of(set, texts).with(pages.shopping().besides());
    files.put("cut-list.csv", Lists.cutList(CutList.of(set, texts), texts.unit()));
    files.put("hardware.csv", Lists.hardware(shopping, HardwareList.whole(set, texts)));
    files.put("shopping.csv", ShoppingCsv.write(shopping, texts));
    files.put("steps.csv", Lists.steps(set, pages.steps()));
    files.put("labels.csv", Lists.labels(Labels.of(set, texts), texts.unit()));
    files.put("plan.json", planJson(set, pages));
    return files;
  }

  /** The drawings beside the PDF as PNG, by file name; {@link #write} leaves these out. */
  public Map<String, byte[]> pictures(PlanSet set) {
    return printing.edition().isPreview() ? DrawingFiles.coverPng(set) : DrawingFiles.png(set);
  }

  /** The PDF alone. */
  public byte[] pdf(PlanSet set) {
    Print print = Print.of(set.piece(), set.build(), printing);
    return pdf(set, Pages.of(set, print, wording.apply(set))).get();
  }

  /** What writes the PDF; a text that no font has is told before. */
  private Supplier<byte[]> pdf(PlanSet set, Pages pages) {
    Cover cover = pages.cover();
    PdfPages.About about =
        new PdfPages.About(
            cover.name(),
            cover.maker(),
            printing.words().language(),
            set.piece().description().about().date(),
            attachments(set, pages));
    String xhtml =
        printing.templates().render("frame/document.ftl", printing.words(), pages.data());
    Document document = printing.templates().tree(xhtml);
    Supplier<byte[]> writer =
        PdfPages.writer(document, new Pictures(drawings(set, pages), set.kept().photos()), about);
    return () -> PlainDigits.with(writer);
  }

  private List<Attachment> attachments(PlanSet set, Pages pages) {
    if (!printing.edition().is(Edition.ATTACHMENTS)) {
      return List.of();
    }
    Pages whole = pages.chosen().whole() ? pages : whole(set);
    return new Attachments(set.kept(), pages.texts()).with(planJson(set, whole));
  }

  private static byte[] planJson(PlanSet set, Pages pages) {
    return PlanJson.write(set, pages.steps(), pages.texts().inOneUnit());
  }

  /** Every drawing that a page shows, by the name that the pages use for it. */
  static Map<String, Drawing> drawings(PlanSet set, Pages pages) {
    Map<String, Drawing> drawings = new LinkedHashMap<>();
    drawings.put(Cover.DRAWING, set.drawings().cover());
    set.drawings()
        .general()
        .forEach(sheet -> drawings.put(sheet.drawing().name(), sheet.drawing()));
    set.drawings().exploded().all().forEach(each -> drawings.put(each.name(), each));
    drawings.put(CheckBar.NAME, CheckBar.drawing(pages.texts()));
    set.drawings()
        .parts()
        .forEach((mark, drawing) -> drawings.put(PartPages.drawingName(mark), drawing));
    set.drawings()
        .blanks()
        .forEach((mark, drawing) -> drawings.put(BlankPages.drawingName(mark), drawing));
    set.drawings().joints().forEach(sheet -> drawings.put(sheet.drawing().name(), sheet.drawing()));
    set.drawings()
        .steps()
        .forEach((step, drawing) -> drawings.put(StepPages.drawingName(step), drawing));
    set.drawings()
        .slides()
        .forEach((step, drawing) -> drawings.put(StepPages.slidesName(step), drawing));
    set.drawings().templates().stream()
        .flatMap(sheets -> sheets.tiles().stream())
        .forEach(tile -> drawings.put(tile.drawing().name(), tile.drawing()));
    TimelinePages.drawings(set, pages.print())
        .forEach(drawing -> drawings.put(drawing.name(), drawing));
    drawings.putAll(Layouts.drawings(set));
    return drawings;
  }
}
