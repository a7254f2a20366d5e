package storyrod.planset;

import storyrod.build.BuildPlan;
import storyrod.piece.Piece;

/** The words of a piece's pages, the paper that they stand on, and which of them there are. */
record Print(Texts texts, Paper paper, Edition edition, Chosen chosen) {
  static Print of(Piece piece, BuildPlan build, Printing printing) {
    Texts texts = new Texts(piece.description().format(), printing.words());
    Paper usual = Paper.usualFor(texts.format().unit());
    return new Print(
        texts,
        printing.paper().orElse(usual),
        printing.edition(),
        printing.choice().in(piece, build, texts));
  }

  /** The unit of length in words, for all sizes. */
  String units() {
    return texts.say("units." + texts.format().unit().word());
  }
}
