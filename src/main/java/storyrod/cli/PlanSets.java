package storyrod.cli;

import storyrod.description.Diagnostics;
import storyrod.drawing.DrawingOffice;
import storyrod.planset.Figures;
import storyrod.planset.PageRooms;
import storyrod.planset.PlanSet;
import storyrod.planset.PlanSetWriter;
import storyrod.planset.Printing;
import storyrod.planset.StepTexts;

/** The plan sets of one plan, edition after edition; what they have alike is made once. */
final class PlanSets {
  private final Pipeline.Planned planned;
  private final Diagnostics diagnostics;
  private final StepTexts texts;
  private final DrawingOffice office;

  PlanSets(Pipeline.Planned planned, Diagnostics diagnostics) {
    this.planned = planned;
    this.diagnostics = diagnostics;
    this.texts = new StepTexts(planned.piece(), planned.build());
    this.office = new DrawingOffice(planned.piece(), planned.stock(), planned.build());
  }

  /** The plan with its drawings, for the pages on which they are to stand. */
  PlanSet of(Printing printing) {
    return new PlanSet(
        planned.piece(),
        diagnostics.sorted(),
        planned.stock(),
        planned.build(),
        office.drawings(PageRooms.of(texts, printing)),
        Figures.of(planned.piece()),
        planned.kept());
  }

  PlanSetWriter writer(Printing printing) {
    return new PlanSetWriter(printing, texts);
  }
}
