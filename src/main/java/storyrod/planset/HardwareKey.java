package storyrod.planset;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.build.PlacedHardware;
import storyrod.build.PlacedItem;
import storyrod.description.ItemEntry;
import storyrod.drawing.Drawing;
import storyrod.drawing.Drawing.Balloon;
import storyrod.drawing.GeneralSheet;
import storyrod.piece.HardwareUse;
import storyrod.piece.Nesting;
import storyrod.piece.Piece;

/** What the marks of hardware mean, below the exploded views that have them in their balloons. */
final class HardwareKey {
  /**
   * More rows than these would take the drawing's room; then the hardware has a view of its own.
   */
  private static final int MOST = 8;

  private HardwareKey() {}

  /** The rows of the schedule whose marks stand in balloons of some drawings. */
  static List<HardwareList.Row> of(Stream<Drawing> drawings, HardwareList all) {
    Set<String> marks = balloons(drawings).map(Balloon::mark).collect(Collectors.toSet());
    return all.rows().stream().filter(row -> marks.contains(row.mark())).toList();
  }

  /** Those of hardware. */
  private static Stream<Balloon> balloons(Stream<Drawing> drawings) {
    return drawings
        .flatMap(drawing -> drawing.elements().stream())
        .filter(Balloon.class::isInstance)
        .map(Balloon.class::cast)
        .filter(balloon -> balloon.count() > 0);
  }

  /**
   * The same of views of sub-assemblies, with the number that goes into these: each balloon counts
   * its own, in as many sub-assemblies as its view stands for.
   */
  static List<HardwareList.Row> ofSheets(List<GeneralSheet> sheets, HardwareList all) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (GeneralSheet sheet : sheets) {
      balloons(Stream.of(sheet.drawing()))
          .forEach(
              each -> counts.merge(each.mark(), each.count() * sheet.units().size(), Integer::sum));
    }
    return of(sheets.stream().map(GeneralSheet::drawing), all).stream()
        .map(row -> row.counting(counts.get(row.mark())))
        .toList();
  }

  /** The names of what may stand below the view of the piece, as far as there is room for it. */
  static List<String> below(Piece piece) {
    List<String> items = List.copyOf(HardwareUse.of(piece).counts().keySet());
    return titles(piece, items.size() > MOST ? List.of() : items);
  }

  /** The names of what is put in when sub-assemblies are put together. */
  static List<String> belowOpened(Piece piece) {
    Nesting nesting = Nesting.of(piece);
    return titles(
        piece,
        PlacedHardware.of(piece).stream()
            .filter(placed -> isInside(placed, nesting))
            .map(PlacedItem::item)
            .distinct()
            .toList());
  }

  private static boolean isInside(PlacedItem placed, Nesting nesting) {
    List<String> parts = placed.origin().parts();
    return nesting.around(parts.getFirst()).stream()
        .filter(unit -> !unit.equals(Nesting.PIECE))
        .anyMatch(unit -> parts.stream().allMatch(part -> nesting.isIn(part, unit)));
  }

  private static List<String> titles(Piece piece, List<String> items) {
    return items.stream().flatMap(item -> piece.item(item).stream()).map(ItemEntry::title).toList();
  }
}
