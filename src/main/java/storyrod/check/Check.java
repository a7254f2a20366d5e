package storyrod.check;

import java.util.List;
import storyrod.description.Diagnostic;
import storyrod.piece.Piece;

/** A check of the piece: one file, one line in {@link Checks}. */
public interface Check {
  /** The stable name that its findings carry. */
  String code();

  /** What it checks, from what source, and what it does not see. */
  Explanation explanation();

  /** What it finds; nothing where all is well. */
  List<Diagnostic> findings(Piece piece);
}
