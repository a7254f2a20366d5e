package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.drawing.Drawing.Arrow;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.drawing.SawnPiece.Laid;
import storyrod.layout.LayoutJob.Area;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.words.Words;

/**
 * Writes on parts in a layout what there is room for: mark, title and size, or less.
 *
 * @param lengthsOnly whether a size is a length alone, and labels stand level first
 */
record LaidLabels(boolean lengthsOnly, LengthFormat format, Words words) {
  /** What may be written on a part, the fullest that fits. */
  List<Element> place(Laid part, Bounds room, Optional<Boolean> grain) {
    Label mark = Label.of(TextStyle.TITLE, part.mark());
    String size = size(part);
    Label sized = mark.and(TextStyle.SMALL, size);
    if (lengthsOnly) {
      Label named = mark.and(TextStyle.SMALL, (part.title() + " " + size).strip());
      return Label.placeRow(withMarks(part, List.of(named, sized)), room, true, grain);
    }
    Label named = mark.and(TextStyle.NOTE, part.title()).and(TextStyle.SMALL, size);
    List<Element> block = Label.place(List.of(named, sized), room, grain);
    List<Label> row =
        List.of(
            mark.beside(TextStyle.SMALL, size),
            Label.of(TextStyle.SMALL, part.mark()).beside(TextStyle.SMALL, size));
    boolean isBroad = room.width() >= room.height();
    if (tells(block, grain)) {
      return block;
    }
    List<Element> rows = Label.placeRow(withMarks(part, row), room, isBroad, grain);
    return block.isEmpty() || tells(rows, grain) ? rows : block;
  }

  /** Whether a label says all that it must: how the grain runs, where there is any. */
  private static boolean tells(List<Element> label, Optional<Boolean> grain) {
    return label.stream().anyMatch(each -> grain.isEmpty() || each instanceof Arrow);
  }

  private String size(Laid part) {
    Area area = part.area();
    Length length = part.turned() ? area.width() : area.length();
    Length width = part.turned() ? area.length() : area.width();
    return lengthsOnly
        ? format.format(length)
        : words.say("layout.size", format.format(length), format.format(width));
  }

  private static List<Label> withMarks(Laid part, List<Label> labels) {
    List<Label> all = new ArrayList<>(labels);
    for (TextStyle style : List.of(TextStyle.TITLE, TextStyle.MARK, TextStyle.SMALL)) {
      all.add(Label.of(style, part.mark()));
    }
    return all;
  }
}
