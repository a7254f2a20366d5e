package storyrod.planset;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import storyrod.drawing.Drawing;
import storyrod.piece.KeptBoard;
import storyrod.piece.Mark;

/** The drawings of blanks out of which pieces are cut, each behind the drawing of its board. */
final class BlankPages {
  private BlankPages() {}

  static String drawingName(String mark) {
    return "blank-" + mark;
  }

  /** The blank of a mark's part, if pieces are cut out of it: none or one. */
  static List<PartPages.Entry> of(PlanSet set, KeptNotes notes, Mark mark, Paper paper) {
    return notes.piece().keptBoard(mark.shown().name()).stream()
        .map(board -> entry(drawing(set, mark), notes, mark, paper))
        .toList();
  }

  /** The height that title, lead and title block take beside a blank's drawing, in mm. */
  static double besideMm(KeptNotes notes, Mark mark, Paper paper) {
    PartPages.Page page = new PartPages.Page(notes.texts(), paper);
    return PartPages.besideMm(mark, title(notes, mark), line(notes, mark), page);
  }

  private static PartPages.Entry entry(Drawing drawing, KeptNotes notes, Mark mark, Paper paper) {
    Texts texts = notes.texts();
    DrawingBox box =
        DrawingBox.beside(besideMm(notes, mark, paper), drawingName(mark.mark()), drawing, paper);
    return new PartPages.Entry(
        drawingName(mark.mark()),
        mark.mark(),
        title(notes, mark),
        line(notes, mark),
        "",
        CutList.count(mark),
        texts.stock(mark.shown().stock()),
        CutList.grain(mark.shown().stock(), texts),
        box.scale().map(Object::toString).orElse(texts.say("scale.none")),
        box);
  }

  private static Drawing drawing(PlanSet set, Mark mark) {
    return Optional.ofNullable(set.drawings().blanks().get(mark.mark()))
        .orElseThrow(() -> new IllegalStateException("bug: no drawing of blank " + mark.mark()));
  }

  private static String title(KeptNotes notes, Mark mark) {
    return notes.texts().say("part.blank-title", mark.title());
  }

  private static String line(KeptNotes notes, Mark mark) {
    KeptBoard board = notes.piece().keptBoard(mark.shown().name()).orElseThrow();
    Texts texts = notes.texts();
    String kept = notes.keptOf(mark).stream().map(Mark::mark).collect(Collectors.joining(", "));
    String kerf = texts.lengthWithUnit(board.kerf());
    return board.isSawn()
        ? texts.say(
            "part.blank-sawn",
            texts.inUnits(
                in ->
                    in.say(
                        "size.two",
                        in.length(board.blankLength()),
                        in.lengthWithUnit(board.blankWidth()))),
            kerf,
            kept,
            texts.lengthWithUnit(board.board().finishedWidth()))
        : texts.say("part.blank-whole", kerf, kept);
  }
}
