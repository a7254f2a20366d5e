package storyrod.cli;

import java.util.List;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.drawing.DrawingOffice;
import storyrod.geometry.Lazy;
import storyrod.planset.Figures;
import storyrod.planset.PageRooms;
import storyrod.planset.PlanSet;
import storyrod.planset.PlanSetWriter;
import storyrod.planset.Printing;
import storyrod.planset.StepTexts;

/**
 * The plan sets of one plan, edition after edition; what they have alike is made once. Editions for
 * a buyer are made from the plan in which all stock is bought.
 */
final class PlanSets {
  private final Diagnostics diagnostics;
  private final Pipeline.Planned own;
  private final Lazy<Shown> ofMaker;
  private final Lazy<Shown> ofBuyer;

  PlanSets(Pipeline.Planned planned, Diagnostics diagnostics) {
    this.diagnostics = diagnostics;
    this.own = planned;
    this.ofMaker = new Lazy<>(() -> new Shown(planned));
    this.ofBuyer = new Lazy<>(() -> ofBuyer(planned.asBought()));
  }

  private Shown ofBuyer(Pipeline.Planned bought) {
    return bought == own ? ofMaker.get() : new Shown(bought);
  }

  /** The plan with its drawings, for the pages on which they are to stand. */
  PlanSet of(Printing printing) {
    Shown shown = shown(printing);
    Pipeline.Planned planned = shown.planned;
    return new PlanSet(
        planned.piece(),
        findings(planned),
        planned.stock(),
        planned.build(),
        shown.office.drawings(PageRooms.of(shown.texts, printing)),
        Figures.of(planned.piece()),
        planned.kept());
  }

  PlanSetWriter writer(Printing printing) {
    return new PlanSetWriter(printing, shown(printing).texts);
  }

  private Shown shown(Printing printing) {
    return (printing.edition().isBought() ? ofBuyer : ofMaker).get();
  }

  /** What was found, with what the stock of this plan lacks and not that of the other. */
  private List<Diagnostic> findings(Pipeline.Planned planned) {
    if (planned == own) {
      return diagnostics.sorted();
    }
    Diagnostics found = new Diagnostics();
    found.addAll(
        Stream.concat(
                diagnostics.sorted().stream().filter(each -> !own.shortages().contains(each)),
                planned.shortages().stream())
            .toList());
    return found.sorted();
  }

  /** A plan with what all of its editions share. */
  private static final class Shown {
    private final Pipeline.Planned planned;
    private final StepTexts texts;
    private final DrawingOffice office;

    private Shown(Pipeline.Planned planned) {
      this.planned = planned;
      this.texts = new StepTexts(planned.piece(), planned.build());
      this.office = new DrawingOffice(planned.piece(), planned.stock(), planned.build());
    }
  }
}
