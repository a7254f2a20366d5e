package storyrod.planset;

import java.util.Map;
import storyrod.build.BuildPlan.Step;
import storyrod.build.FirstMove;
import storyrod.piece.Piece;

/** From where the new parts of a step come in: with one straight move, or with two. */
record MoveData(Piece piece) {
  /** The last move, and the first of two; that is empty where one is enough. */
  Map<String, Object> of(Step step) {
    return Map.of(
        "from", step.enters().map(face -> face.opposite().word()).orElse("top"),
        "firstFrom", step.firstMove().map(first -> first.enters().opposite().word()).orElse(""),
        "beside", step.firstMove().map(this::beside).orElse(""));
  }

  private String beside(FirstMove first) {
    return piece.description().format().formatWithUnit(first.beside());
  }
}
