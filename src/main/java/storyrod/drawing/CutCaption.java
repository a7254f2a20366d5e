package storyrod.drawing;

import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Text;
import storyrod.drawing.Drawing.TextStyle;
import storyrod.geometry.Face;

/** What is said of a cut drawn enlarged: from which side its distance is measured. */
record CutCaption(Taken taken, CutPlace place, Notation notation) {
  Text at(At at) {
    return new Text(TextStyle.SMALL, at, Anchor.START, true, said());
  }

  /** In mm on the paper. */
  double width() {
    return Label.of(TextStyle.SMALL, said()).width();
  }

  private String said() {
    Face edge = taken.flat().original(place.edge());
    return notation
        .words()
        .say("step.cut.from-" + kind(), notation.words().say("edge." + edge.word()));
  }

  private String kind() {
    return switch (place.edge().axis()) {
      case X -> "end";
      case Y -> "face";
      case Z -> "edge";
    };
  }
}
