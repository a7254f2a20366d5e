package storyrod.drawing;

import storyrod.measure.LengthFormat;
import storyrod.piece.Cut;
import storyrod.piece.PocketHoles;
import storyrod.piece.Slanted;
import storyrod.words.Words;

/** The trade's words for cuts, as notes and lists of figures have them. */
record CutTerms(Words words) {
  /** Of so many cuts. */
  String of(Cut cut, int count) {
    return of(cut.term(), count);
  }

  /** A haunched tenon has its own. */
  String tenon(Cut.Tenon tenon, int count) {
    return of(tenon.haunch().isPresent() ? "haunched-" + tenon.term() : tenon.term(), count);
  }

  private String of(String term, int count) {
    String key = "cut." + term.replace(' ', '-');
    String many = key + ".many";
    String wanted = count > 1 && words.has(many) ? many : key;
    return words.has(wanted) ? words.say(wanted) : term;
  }

  /** What is said of a slot, with how far its walls lean. */
  String leaning(String said, Slanted.Housing housing) {
    return words.say("part.leaning", said, words.figures(housing.lean().toString()));
  }

  /** What is said of pocket holes, with their size and their slant. */
  String slanted(String said, PocketHoles pockets, LengthFormat bits) {
    return words.say("part.slanted", said, bits.format(pockets.diameter()), pockets.angleDegrees());
  }
}
