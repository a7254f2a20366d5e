package storyrod.planset;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import storyrod.drawing.GeneralSheet;
import storyrod.drawing.Packing;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.piece.Nesting;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** The general drawings, with what stands in their title blocks. */
public record GeneralPages(List<Entry> entries, List<List<Entry>> pages) {
  /** The height that title, lead of up to two lines and title block take, in mm. */
  static final double BESIDE_MM = 40;

  /** It shows no overall sizes. */
  private static final String SECTION = "general-section";

  /** So many drawings share a page at most. */
  private static final int MOST = 3;

  public GeneralPages {
    entries = List.copyOf(entries);
    pages = List.copyOf(pages);
  }

  /**
   * A drawing.
   *
   * @param anchor the name by which links find it
   * @param lead what a reader should know of it
   */
  public record Entry(String anchor, String title, String lead, String scale, DrawingBox drawing) {}

  static GeneralPages of(PlanSet set, Texts texts, Paper paper) {
    List<Entry> entries =
        set.drawings().general().stream()
            .map(sheet -> entry(set.piece(), sheet, texts, paper))
            .toList();
    List<Packing.Item> items =
        entries.stream().map(e -> Packing.Item.of(paper.takenMm(e.drawing(), BESIDE_MM))).toList();
    List<List<Entry>> pages = new ArrayList<>();
    for (Packing.Page page : Packing.pages(items, paper.roomMm(), MOST)) {
      pages.add(entries.subList(page.first(), page.first() + page.choices().size()));
    }
    return new GeneralPages(entries, pages);
  }

  private static Entry entry(Piece piece, GeneralSheet sheet, Texts texts, Paper paper) {
    String name = sheet.drawing().name();
    DrawingBox box = DrawingBox.beside(BESIDE_MM, name, sheet.drawing(), paper);
    return new Entry(
        name,
        title(piece, sheet, texts),
        lead(piece, sheet, texts),
        box.scale().map(Object::toString).orElse(texts.say("scale.none")),
        box);
  }

  private static String title(Piece piece, GeneralSheet sheet, Texts texts) {
    return sheet.units().isEmpty()
        ? texts.say("general.title." + sheet.drawing().name())
        : unitTitle(piece, sheet.units().getFirst());
  }

  static String unitTitle(Piece piece, String unit) {
    return piece.description().assemblies().get(unit).title();
  }

  private static String lead(Piece piece, GeneralSheet sheet, Texts texts) {
    List<String> units = sheet.units();
    if (units.isEmpty()) {
      String name = sheet.drawing().name();
      String without = name.equals(SECTION) ? "" : StandingOut.of(piece).told(texts);
      return texts.say("general.lead." + name) + without;
    }
    if (units.size() == 1) {
      return texts.say("general.lead.unit") + new Stack(piece).told(units.getFirst(), texts);
    }
    List<String> same = new ArrayList<>();
    List<String> mirrored = new ArrayList<>();
    for (String unit : units) {
      boolean isSame = placed(piece, unit).equals(placed(piece, units.getFirst()));
      (isSame ? same : mirrored).add(unitTitle(piece, unit));
    }
    return mirrored.isEmpty()
        ? texts.say("general.lead.units", String.join(", ", same))
        : texts.say("general.lead.mirrored", String.join(", ", same), String.join(", ", mirrored));
  }

  /** Which parts lie where; two units of equal parts differ in this if in anything. */
  private static String placed(Piece piece, String unit) {
    List<Part> parts = Nesting.of(piece).parts(unit);
    Box box = parts.stream().map(Part::bounds).reduce(Box::around).orElseThrow();
    return parts.stream()
        .map(part -> part.mark() + part.mirrored() + from(part.bounds(), box))
        .sorted()
        .collect(Collectors.joining(" "));
  }

  private static String from(Box part, Box unit) {
    return Arrays.stream(Axis.values())
        .map(axis -> part.on(axis).from().minus(unit.on(axis).from()).toString())
        .collect(Collectors.joining(","));
  }
}
