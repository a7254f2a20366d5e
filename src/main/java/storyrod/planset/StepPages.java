package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Stage;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Verb;
import storyrod.description.Description.ItemEntry;
import storyrod.drawing.Drawing;
import storyrod.piece.Joint.ItemCount;
import storyrod.piece.Mark;
import storyrod.piece.Piece;

/** The steps, grouped by stage. */
public record StepPages(List<StageGroup> stages) {
  /** The share of a page's height that a step's picture may take. */
  private static final double PICTURE_SHARE = 0.52;

  public StepPages {
    stages = List.copyOf(stages);
  }

  /** Steps in a row of one stage; {@code number} counts the groups from 1. */
  public record StageGroup(int number, String title, List<Entry> steps) {}

  /**
   * A step.
   *
   * @param pictures none or one
   * @param working the working time in words
   * @param waiting the waiting time in words, or empty
   */
  public record Entry(
      int number,
      StepText text,
      List<DrawingBox> pictures,
      List<PartRow> parts,
      List<HardwareRow> hardware,
      String working,
      String waiting) {}

  /** A part of a step: its mark, its name, and how many come or that it stands already. */
  public record PartRow(String mark, String title, String count) {}

  /** An item used up in a step. */
  public record HardwareRow(String item, int count) {}

  static String drawingName(int step) {
    return "step-" + step;
  }

  static StepPages of(PlanSet set, Sheet sheet) {
    List<StageGroup> groups = new ArrayList<>();
    List<Entry> entries = new ArrayList<>();
    List<Step> steps = set.build().steps();
    for (int i = 0; i < steps.size(); i++) {
      Step step = steps.get(i);
      entries.add(entry(set, step, sheet));
      if (i + 1 == steps.size() || !steps.get(i + 1).stage().equals(step.stage())) {
        String title = stageTitle(step.stage(), sheet.texts());
        groups.add(new StageGroup(groups.size() + 1, title, List.copyOf(entries)));
        entries.clear();
      }
    }
    return new StepPages(groups);
  }

  /** How steps are worded and on what paper they are put. */
  record Sheet(Texts texts, Paper paper, Wording wording) {}

  static String stageTitle(Stage stage, Texts texts) {
    return stage.title().orElseGet(() -> texts.say("stage." + stage.key()));
  }

  private static Entry entry(PlanSet set, Step step, Sheet sheet) {
    Texts texts = sheet.texts();
    StepText text = sheet.wording().of(step);
    return new Entry(
        step.number(),
        text,
        pictures(set, step, sheet.paper()),
        parts(set.piece(), step, texts),
        step.hardware().stream().map(item -> hardware(set.piece(), item)).toList(),
        text.working(),
        text.waiting());
  }

  private static List<DrawingBox> pictures(PlanSet set, Step step, Paper paper) {
    Optional<Drawing> drawing =
        Optional.ofNullable(set.drawings().steps().get(step.number()));
    double height = paper.textHeightMm() * PICTURE_SHARE;
    return drawing.stream()
        .map(
            found ->
                DrawingBox.within(
                    drawingName(step.number()), found, paper.textWidthMm(), height))
        .toList();
  }

  private static List<PartRow> parts(Piece piece, Step step, Texts texts) {
    Set<String> names = partNames(step);
    Set<String> marks = new LinkedHashSet<>();
    names.forEach(name -> marks.add(piece.part(name).mark()));
    return marks.stream()
        .map(mark -> partRow(piece.mark(mark), names, step))
        .map(row -> row.count().isEmpty() ? inPlace(row, texts) : row)
        .toList();
  }

  /** The full names of all parts that a step touches, those that come in it first. */
  static Set<String> partNames(Step step) {
    Set<String> names = new LinkedHashSet<>(step.newParts());
    step.operations().forEach(operation -> names.addAll(operation.parts()));
    return names;
  }

  private static PartRow partRow(Mark mark, Set<String> names, Step step) {
    Stream<String> here = mark.parts().stream().filter(names::contains);
    long count =
        step.verb() == Verb.FIT ? here.filter(step.newParts()::contains).count() : here.count();
    return new PartRow(mark.mark(), mark.title(), count == 0 ? "" : Long.toString(count));
  }

  private static PartRow inPlace(PartRow row, Texts texts) {
    return new PartRow(row.mark(), row.title(), texts.say("step.in-place"));
  }

  private static HardwareRow hardware(Piece piece, ItemCount item) {
    String title =
        Optional.ofNullable(piece.description().items().get(item.item()))
            .map(ItemEntry::title)
            .orElse(item.item());
    return new HardwareRow(title, item.count());
  }
}
