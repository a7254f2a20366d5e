package storyrod.planset;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import storyrod.build.BuildPlan;
import storyrod.piece.Piece;
import storyrod.words.Words;

/** The steps of one plan in words, each written once for all editions of like templates. */
public final class StepTexts {
  private final Piece piece;
  private final BuildPlan build;
  private final Map<By, Wording> wordings = new ConcurrentHashMap<>();

  /** Nothing is written yet. */
  public StepTexts(Piece piece, BuildPlan build) {
    this.piece = piece;
    this.build = build;
  }

  /** What the words of steps depend on; some point to other pages of the edition. */
  private record By(Templates templates, Words words, ToldPages told) {}

  Piece piece() {
    return piece;
  }

  BuildPlan build() {
    return build;
  }

  Wording in(Printing printing) {
    ToldPages told = ToldPages.in(printing.edition());
    By by = new By(printing.templates(), printing.words(), told);
    return wordings.computeIfAbsent(by, this::kept);
  }

  private Wording kept(By by) {
    StepWriter writer = new StepWriter(piece, by.words, by.templates, build).pointingTo(by.told);
    Map<Integer, StepText> texts = new ConcurrentHashMap<>();
    return step -> texts.computeIfAbsent(step.number(), number -> writer.write(step));
  }
}
