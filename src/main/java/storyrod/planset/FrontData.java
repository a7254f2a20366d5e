package storyrod.planset;

import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.FrontHoles;
import storyrod.piece.Cut;
import storyrod.piece.Piece;
import storyrod.words.Words;

/** What a drawer's front is pulled by, for the words about its holes. */
record FrontData(Piece piece) {
  private static final String USUAL = "pull";

  /** The kind of what the parts of a step are bored for. */
  String handle(Step step) {
    FrontHoles holes = new FrontHoles(piece);
    return step.newParts().stream()
        .flatMap(part -> piece.part(part).cuts().stream())
        .filter(holes::isForHandle)
        .map(this::kind)
        .findFirst()
        .orElse(USUAL);
  }

  /** Whether its gaps are equal all round, two and two, or each as listed. */
  static String gaps(Step step) {
    boolean isEachItsOwn =
        Stream.of("left", "right", "bottom", "top").anyMatch(face -> hasAlone(step, face));
    return isEachItsOwn
        ? "listed"
        : step.isSet("gap-left-right") || step.isSet("gap-bottom-top") ? "pairs" : "all";
  }

  private static boolean hasAlone(Step step, String face) {
    return step.settings().stream().anyMatch(setting -> setting.key().equals("gap-" + face));
  }

  /** The word for the kind of item that a hole is for. */
  String kind(Cut hole) {
    return hole.forWhat().map(piece::kind).map(Words::hyphenated).orElse(USUAL);
  }
}
