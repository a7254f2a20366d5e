package storyrod.planset;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Stage;
import storyrod.build.BuildPlan.Step;
import storyrod.drawing.Packing;
import storyrod.planset.StepEntries.Shown;

/** The steps, grouped by stage, and the same steps set on pages. */
public record StepPages(List<StageGroup> stages, List<Page> pages) {
  /** The share of a page's height that a step's picture may take. */
  private static final double PICTURE_SHARE = 0.64;

  /** So many steps share a page at most. */
  static final int MOST = 4;

  public StepPages {
    stages = List.copyOf(stages);
    pages = List.copyOf(pages);
  }

  /** A page of steps; {@code stage} is that of the first of them. */
  public record Page(StageGroup stage, List<Placed> steps) {}

  /**
   * A step on its page.
   *
   * @param opens the stage that begins with this step, none or one
   * @param slice what of the step stands there
   */
  public record Placed(StepEntry step, List<StageGroup> opens, StepSlice slice) {
    private double heightMm() {
      return slice.heightMm();
    }

    private boolean isWhole() {
      return slice.begins() && slice.ends();
    }

    private Placed withBesides(double moreMm) {
      return new Placed(step, opens, slice.withBesides(moreMm));
    }
  }

  /** Steps in a row of one stage; {@code number} counts the groups from 1. */
  public record StageGroup(int number, String title, List<StepEntry> steps) {}

  /** All steps, stage after stage. */
  List<StepEntry> all() {
    return stages.stream().flatMap(stage -> stage.steps().stream()).toList();
  }

  static String slidesName(int step) {
    return "slides-" + step;
  }

  static String drawingName(int step) {
    return "step-" + step;
  }

  static StepPages of(PlanSet set, Sheet sheet) {
    List<StageGroup> groups = new ArrayList<>();
    List<StepEntry> ofStage = new ArrayList<>();
    StepEntries entries = new StepEntries(set.piece(), set.build(), sheet);
    List<Step> steps = set.build().steps().stream().filter(sheet.print().chosen()::has).toList();
    for (int i = 0; i < steps.size(); i++) {
      Step step = steps.get(i);
      Shown shown = new Shown(picture(set, step, sheet.paper()), slides(set, step));
      ofStage.add(arranged(entries.of(step, shown), new StepHeights(sheet.print())));
      if (i + 1 == steps.size() || !steps.get(i + 1).stage().equals(step.stage())) {
        String title = stageTitle(step.stage(), sheet.texts());
        groups.add(new StageGroup(groups.size() + 1, title, List.copyOf(ofStage)));
        ofStage.clear();
      }
    }
    return new StepPages(groups, pages(groups, sheet.print()));
  }

  /** A step whose picture was drawn for a place beside the lists gets its sentences in columns. */
  private static StepEntry arranged(StepEntry step, StepHeights heights) {
    return step.pictures().stream().anyMatch(each -> each.widthMm() <= heights.besideListsMm())
        ? step.inColumns(heights.firstColumn(step))
        : step;
  }

  private static List<Page> pages(List<StageGroup> stages, Print print) {
    List<Placed> placed = new ArrayList<>();
    List<StageGroup> stageOf = new ArrayList<>();
    StepHeights heights = new StepHeights(print);
    for (StageGroup stage : stages) {
      for (StepEntry step : stage.steps()) {
        boolean opens = step == stage.steps().getFirst();
        for (StepSlice slice : StepSlices.of(step, heights, opens ? StepMeasures.STAGE_MM : 0)) {
          placed.add(new Placed(step, opens && slice.begins() ? List.of(stage) : List.of(), slice));
          stageOf.add(stage);
        }
      }
    }
    List<Packing.Item> items =
        placed.stream().map(each -> Packing.Item.of(each.slice().heightMm())).toList();
    return Packing.pages(items, StepHeights.roomMm(print.paper()), MOST).stream()
        .map(
            page ->
                new Page(
                    stageOf.get(page.first()),
                    withBesides(
                        placed.subList(page.first(), page.first() + page.choices().size()),
                        heights)))
        .toList();
  }

  /** Where a page leaves room, a step on it also shows what stands beside its sentences. */
  private static List<Placed> withBesides(List<Placed> page, StepHeights heights) {
    double white = heights.roomMm() - page.stream().mapToDouble(Placed::heightMm).sum();
    List<Placed> shown = new ArrayList<>();
    for (Placed placed : page) {
      double more = heights.moreBesideMm(placed.step());
      boolean isLeftOut = placed.isWhole() && !placed.slice().besides();
      boolean hasRoom = isLeftOut && more <= white;
      shown.add(hasRoom ? placed.withBesides(more) : placed);
      white -= hasRoom ? more : 0;
    }
    return shown;
  }

  /** How far down the last page is filled, in mm. */
  double lastPageMm(Print print) {
    return pages.isEmpty() ? print.paper().roomMm() : filledMm(pages.getLast());
  }

  /** How far down a page is filled, in mm. */
  static double filledMm(Page page) {
    return page.steps().stream().mapToDouble(each -> each.slice().heightMm()).sum()
        - StepMeasures.SMALL_BELOW_MM;
  }

  /** The height of the stage's heading, where a step is the first of a stage. */
  static double stageMm(BuildPlan build, Step step) {
    int at = step.number() - 1;
    boolean opens = at == 0 || !build.steps().get(at - 1).stage().equals(step.stage());
    return opens ? StepMeasures.STAGE_MM : 0;
  }

  /** How steps are worded and on what paper they are put. */
  record Sheet(Print print, Wording wording) {
    Texts texts() {
      return print.texts();
    }

    Paper paper() {
      return print.paper();
    }
  }

  static String stageTitle(Stage stage, Texts texts) {
    return stage.title().orElseGet(() -> texts.say("stage." + stage.key()));
  }

  private static Optional<DrawingBox> picture(PlanSet set, Step step, Paper paper) {
    double height = paper.textHeightMm() * PICTURE_SHARE;
    return Optional.ofNullable(set.drawings().steps().get(step.number()))
        .map(
            found ->
                DrawingBox.within(drawingName(step.number()), found, paper.textWidthMm(), height));
  }

  private static Optional<DrawingBox> slides(PlanSet set, Step step) {
    return Optional.ofNullable(set.drawings().slides().get(step.number()))
        .map(
            found ->
                new DrawingBox(
                    slidesName(step.number()), found.widthMm(), found.heightMm(), found.scale()));
  }
}
