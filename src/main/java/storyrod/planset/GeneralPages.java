package storyrod.planset;

import java.util.ArrayList;
import java.util.List;
import storyrod.drawing.GeneralSheet;
import storyrod.drawing.Packing;
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
    LikeUnits like = LikeUnits.of(piece, units);
    return like.mirrored().isEmpty()
        ? texts.say("general.lead.units", like.sameTold())
        : texts.say("general.lead.mirrored", like.sameTold(), like.mirroredTold());
  }
}
