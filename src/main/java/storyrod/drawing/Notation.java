package storyrod.drawing;

import storyrod.measure.LengthFormat;
import storyrod.piece.Piece;
import storyrod.words.Words;

/** How a drawing writes lengths, and in which words it speaks. */
public record Notation(LengthFormat format, Words words) {
  static Notation of(Piece piece) {
    return new Notation(piece.description().printed(), piece.description().words());
  }
}
