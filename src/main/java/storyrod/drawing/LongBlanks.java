package storyrod.drawing;

import java.util.List;
import java.util.stream.Collectors;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Verb;
import storyrod.piece.Part;
import storyrod.piece.Piece;
import storyrod.stock.GluedPanel;

/**
 * What a step that cuts to size says below a part that comes to it in one length with others: it is
 * drawn apart, as it leaves the saw.
 */
record LongBlanks(Piece piece, Step step) {
  /** What a line takes at most: a third of the narrowest paper, less what is between. */
  private static final double CAPTION_MM = 50;

  /** The lines below some parts of one size; none where each has a blank of its own. */
  List<String> captions(List<Part> same) {
    return step.verb() == Verb.SIZE
        ? GluedPanel.of(piece, step.targets().stream().map(piece::part).toList()).stream()
            .filter(blank -> blank.isShared() && same.stream().anyMatch(blank.parts()::contains))
            .flatMap(blank -> caption(blank).stream())
            .toList()
        : List.of();
  }

  private List<String> caption(GluedPanel blank) {
    Notation notation = Notation.of(piece);
    String marks =
        blank.parts().stream().map(Part::mark).distinct().collect(Collectors.joining(", "));
    String length = notation.format().format(blank.length());
    String said = notation.words().say("step.size.together", marks, blank.parts().size(), length);
    return SmallLines.within(CAPTION_MM, List.of(said));
  }
}
