package storyrod.planset;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import storyrod.piece.KeptBoard;
import storyrod.piece.KeptCutout;
import storyrod.piece.Mark;
import storyrod.piece.Piece;

/** What lists say of parts that come out of one blank. */
record KeptNotes(Piece piece, Texts texts) {
  /** The mark of the part out of whose blank a mark's parts are cut. */
  Optional<Mark> blankOf(Mark mark) {
    return piece.keptAs(mark.shown().name()).map(KeptCutout::board).map(this::mark);
  }

  /** The marks that are cut out of the blanks of a mark's parts, each once. */
  List<Mark> keptOf(Mark mark) {
    return mark.parts().stream()
        .flatMap(part -> piece.keptBoard(part).stream())
        .flatMap(board -> board.kept().stream())
        .map(this::mark)
        .distinct()
        .toList();
  }

  /** Which parts belong together, in a line for the cut list; empty where none do. */
  String note(Mark mark) {
    Optional<Mark> board = blankOf(mark);
    if (board.isPresent()) {
      return texts.say("cutlist.out-of", board.get().mark());
    }
    return piece.keptBoard(mark.shown().name()).map(kept -> blank(mark, kept)).orElse("");
  }

  private String blank(Mark mark, KeptBoard board) {
    String key = board.isSawn() ? "cutlist.blank-sawn" : "cutlist.blank-whole";
    return texts.say(key, marks(mark), size(board));
  }

  private String size(KeptBoard board) {
    return texts.inUnits(
        in -> in.say("size.two", in.length(board.blankLength()), in.length(board.blankWidth())));
  }

  private String marks(Mark mark) {
    return keptOf(mark).stream().map(Mark::mark).collect(Collectors.joining(", "));
  }

  private Mark mark(String part) {
    return piece.mark(piece.part(part).mark());
  }
}
