package storyrod.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import storyrod.piece.Mark;
import storyrod.piece.Piece;

/** Draws every part as large as it can be where parts share pages. */
final class PartSheets {
  /** So many parts share a page at most. */
  static final int MOST = 3;

  /** Shares of a page that a part may take beside all of it, found by looking at the pages. */
  private static final double[] SMALLER = {0.62, 0.5, 1.0 / MOST};

  private final Piece piece;
  private final Rooms rooms;

  private PartSheets(Piece piece, Rooms rooms) {
    this.piece = piece;
    this.rooms = rooms;
  }

  static Map<String, Drawing> draw(Piece piece, Rooms rooms) {
    return new PartSheets(piece, rooms).drawn();
  }

  private Map<String, Drawing> drawn() {
    List<Mark> marks = piece.marks();
    List<List<Drawing>> choices = marks.parallelStream().map(this::choices).toList();
    List<Packing.Item> items = new ArrayList<>();
    for (int i = 0; i < marks.size(); i++) {
      double beside = rooms.besidePartMm(marks.get(i));
      items.add(
          new Packing.Item(choices.get(i).stream().map(each -> each.heightMm() + beside).toList()));
    }
    Map<String, Drawing> drawings = new LinkedHashMap<>();
    for (Packing.Page page : Packing.pages(items, rooms.page().heightMm(), MOST)) {
      for (int i = 0; i < page.choices().size(); i++) {
        int at = page.first() + i;
        drawings.put(marks.get(at).mark(), choices.get(at).get(page.choices().get(i)));
      }
    }
    return drawings;
  }

  /** The drawings of a part for a page of its own and for shares of a page, the largest first. */
  private List<Drawing> choices(Mark mark) {
    List<Drawing> choices = new ArrayList<>();
    choices.add(PartDrawing.draw(mark, piece, room(mark, 1)));
    for (double share : SMALLER) {
      Size room = room(mark, share);
      if (choices.getLast().heightMm() > room.heightMm()) {
        Optional<Drawing> smaller = PartDrawing.fitting(mark, piece, room);
        if (smaller.isEmpty()) {
          break;
        }
        choices.add(smaller.get());
      }
    }
    return choices;
  }

  private Size room(Mark mark, double share) {
    double height = rooms.page().heightMm() * share - rooms.besidePartMm(mark);
    return new Size(rooms.page().widthMm(), Math.max(height, 20));
  }
}
