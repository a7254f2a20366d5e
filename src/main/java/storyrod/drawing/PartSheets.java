package storyrod.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Stream;
import storyrod.geometry.Parallel;
import storyrod.piece.Mark;
import storyrod.piece.Piece;

/**
 * Draws every part, and every blank out of which pieces are cut, as large as it can be where parts
 * share pages.
 */
final class PartSheets {
  /** So many parts share a page at most. */
  static final int MOST = 3;

  /** Shares of a page that a part may take beside all of it, found by looking at the pages. */
  private static final double[] SMALLER = {0.62, 0.5, 1.0 / MOST};

  private final Piece piece;
  private final Rooms rooms;
  private final Map<String, Drawer> drawers;

  private PartSheets(Piece piece, Rooms rooms, Map<String, Drawer> drawers) {
    this.piece = piece;
    this.rooms = rooms;
    this.drawers = drawers;
  }

  /** The drawings of parts, and of the blanks out of which pieces are cut, by their marks. */
  record Sheets(Map<String, Drawing> parts, Map<String, Drawing> blanks) {}

  /** What draws those of a piece for some rooms; what does not depend on these is found once. */
  static Function<Rooms, Sheets> of(Piece piece) {
    Map<String, Drawer> drawers = new ConcurrentHashMap<>();
    return rooms -> new PartSheets(piece, rooms, drawers).drawn();
  }

  /** A drawing to be made: of a part, or of its blank. */
  private record Sheet(Mark mark, boolean isBlank) {
    String name() {
      return (isBlank ? "blank-" : "part-") + mark.mark();
    }
  }

  private Sheets drawn() {
    List<Sheet> sheets = piece.marks().stream().flatMap(this::sheets).toList();
    List<List<Drawing>> choices = Parallel.map(sheets, this::choices);
    List<Packing.Item> items = new ArrayList<>();
    for (int i = 0; i < sheets.size(); i++) {
      double beside = beside(sheets.get(i));
      items.add(
          new Packing.Item(choices.get(i).stream().map(each -> each.heightMm() + beside).toList()));
    }
    Sheets drawings = new Sheets(new LinkedHashMap<>(), new LinkedHashMap<>());
    for (Packing.Page page : Packing.evenPages(items, rooms.page().heightMm(), MOST)) {
      for (int i = 0; i < page.choices().size(); i++) {
        int at = page.first() + i;
        Sheet sheet = sheets.get(at);
        Drawing upright = choices.get(at).get(page.choices().get(i));
        (sheet.isBlank ? drawings.blanks : drawings.parts)
            .put(sheet.mark.mark(), page.choices().size() == 1 ? alone(sheet, upright) : upright);
      }
    }
    return drawings;
  }

  private Stream<Sheet> sheets(Mark mark) {
    boolean hasBlank = piece.keptBoard(mark.shown().name()).isPresent();
    Stream<Sheet> blank = hasBlank ? Stream.of(new Sheet(mark, true)) : Stream.empty();
    return Stream.concat(Stream.of(new Sheet(mark, false)), blank);
  }

  private double beside(Sheet sheet) {
    return sheet.isBlank ? rooms.besideBlankMm(sheet.mark) : rooms.besidePartMm(sheet.mark);
  }

  /** Draws one sheet as large as rooms hold it, in any room or only where that can be read. */
  private record Drawer(
      Function<Size, Drawing> anyhow, Function<Size, Optional<Drawing>> fitting) {}

  private Drawer drawer(Sheet sheet) {
    if (sheet.isBlank) {
      return new Drawer(
          room -> BlankDrawing.draw(sheet.mark, piece, room),
          room -> BlankDrawing.fitting(sheet.mark, piece, room));
    }
    PartDrawing part = PartDrawing.of(sheet.mark, piece);
    return new Drawer(part::draw, part::fitting);
  }

  /** The drawings of a part for a page of its own and for shares of a page, the largest first. */
  private List<Drawing> choices(Sheet sheet) {
    List<Drawing> choices = new ArrayList<>();
    Drawer drawer = drawers.computeIfAbsent(sheet.name(), any -> drawer(sheet));
    choices.add(drawer.anyhow.apply(room(sheet, 1)));
    for (double share : SMALLER) {
      Size room = room(sheet, share);
      if (choices.getLast().heightMm() > room.heightMm()) {
        Optional<Drawing> smaller = drawer.fitting.apply(room);
        if (smaller.isEmpty()) {
          break;
        }
        choices.add(smaller.get());
      }
    }
    return choices;
  }

  /** The drawing of what has a page to itself, which lies turned where that shows it larger. */
  private Drawing alone(Sheet sheet, Drawing upright) {
    Size room = room(rooms.turnedPage(), sheet, 1);
    return TurnedPage.larger(drawers.get(sheet.name()).fitting.apply(room), upright);
  }

  private Size room(Sheet sheet, double share) {
    return room(rooms.page(), sheet, share);
  }

  private Size room(Size page, Sheet sheet, double share) {
    double height = page.heightMm() * share - beside(sheet);
    return new Size(page.widthMm(), Math.max(height, 20));
  }
}
