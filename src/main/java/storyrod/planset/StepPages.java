package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Stage;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Catches;
import storyrod.build.SecondLeaves;
import storyrod.build.Trials;
import storyrod.build.Verb;
import storyrod.description.ItemEntry;
import storyrod.drawing.Packing;
import storyrod.drawing.Strips;
import storyrod.measure.Length;
import storyrod.piece.HardwareUse;
import storyrod.piece.Joint.ItemCount;
import storyrod.piece.Mark;
import storyrod.piece.Piece;
import storyrod.planset.StepEntry.HardwareRow;
import storyrod.planset.StepEntry.PartRow;
import storyrod.planset.StepEntry.SizeRow;
import storyrod.planset.StepText.SettingText;

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
    List<StepEntry> entries = new ArrayList<>();
    List<Step> steps = set.build().steps().stream().filter(sheet.print().chosen()::has).toList();
    for (int i = 0; i < steps.size(); i++) {
      Step step = steps.get(i);
      Shown shown = new Shown(picture(set, step, sheet.paper()), slides(set, step));
      StepEntry entry = entry(set.piece(), step, shown, sheet);
      entries.add(arranged(entry, new StepHeights(sheet.print())));
      if (i + 1 == steps.size() || !steps.get(i + 1).stage().equals(step.stage())) {
        String title = stageTitle(step.stage(), sheet.texts());
        groups.add(new StageGroup(groups.size() + 1, title, List.copyOf(entries)));
        entries.clear();
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
        for (StepSlice slice : StepSlices.of(step, heights, opens ? StepHeights.STAGE_MM : 0)) {
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
        - StepHeights.SMALL_BELOW_MM;
  }

  /** The height of the stage's heading, where a step is the first of a stage. */
  static double stageMm(BuildPlan build, Step step) {
    int at = step.number() - 1;
    boolean opens = at == 0 || !build.steps().get(at - 1).stage().equals(step.stage());
    return opens ? StepHeights.STAGE_MM : 0;
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

  /**
   * The drawings of a step.
   *
   * @param picture its picture or its strip
   * @param beside what stands beside its sentences
   */
  record Shown(Optional<DrawingBox> picture, Optional<DrawingBox> beside) {
    static final Shown NOTHING = new Shown(Optional.empty(), Optional.empty());
  }

  static StepEntry entry(Piece piece, Step step, Shown shown, Sheet sheet) {
    Texts texts = sheet.texts();
    StepText text = sheet.wording().of(step);
    List<PartRow> parts = parts(piece, step, texts);
    List<SizeRow> sizes = sizes(piece, step, parts, texts);
    StepEntry named =
        new StepEntry(
            step.number(),
            withSettings(text, sizes.isEmpty() ? text.settings() : withoutSizes(text, texts)),
            shown.picture().filter(any -> !Strips.isFor(step)).stream().toList(),
            shown.picture().filter(any -> Strips.isFor(step)).stream().toList(),
            shown.beside().stream().toList(),
            parts,
            sizes,
            atHand(piece, step).stream()
                .filter(item -> piece.made(item.item()).isEmpty())
                .map(item -> hardware(piece, item))
                .toList(),
            parts.size() >= StepHeights.MANY_PARTS,
            0,
            text.working(),
            text.waiting());
    return new StepHeights(sheet.print()).fitting(named);
  }

  /** What a step uses up; on trial, what is taken off again and used up when it is put back. */
  private static List<ItemCount> atHand(Piece piece, Step step) {
    return step.verb() == Verb.TRIAL_FIT
        ? step.operations().stream()
            .flatMap(each -> Trials.hardware(piece, each.target()).stream())
            .toList()
        : step.hardware();
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

  /** Length and width of each mark that the step cuts to both. */
  private static List<SizeRow> sizes(Piece piece, Step step, List<PartRow> parts, Texts texts) {
    Map<String, Length> lengths = settings(piece, step, "length");
    Map<String, Length> widths = settings(piece, step, "width");
    return lengths.keySet().containsAll(widths.keySet()) && widths.size() == parts.size()
        ? parts.stream()
            .map(part -> new SizeRow(part.mark(), part.count(), size(part, lengths, widths, texts)))
            .toList()
        : List.of();
  }

  private static String size(
      PartRow part, Map<String, Length> lengths, Map<String, Length> widths, Texts texts) {
    return texts.inUnits(
        in ->
            in.say(
                "size.two",
                in.length(lengths.get(part.mark())),
                in.lengthWithUnit(widths.get(part.mark()))));
  }

  private static Map<String, Length> settings(Piece piece, Step step, String key) {
    Map<String, Length> values = new LinkedHashMap<>();
    for (BuildPlan.Setting setting : step.settings()) {
      if (setting.key().equals(key)) {
        setting.part().ifPresent(part -> values.put(piece.part(part).mark(), setting.value()));
      }
    }
    return values;
  }

  private static List<SettingText> withoutSizes(StepText text, Texts texts) {
    List<String> shown = List.of(texts.say("setting.length"), texts.say("setting.width"));
    return text.settings().stream().filter(each -> !shown.contains(each.name())).toList();
  }

  private static StepText withSettings(StepText text, List<SettingText> settings) {
    return new StepText(
        text.title(),
        text.sentences(),
        text.cautions(),
        text.toolTexts(),
        SettingRows.of(settings),
        text.working(),
        text.waiting());
  }

  private static List<PartRow> parts(Piece piece, Step step, Texts texts) {
    Set<String> names = new LinkedHashSet<>(partNames(step));
    names.addAll(new Catches(piece).posts(step));
    new SecondLeaves(piece).leftAlone(step).forEach(names::remove);
    Set<String> marks = new LinkedHashSet<>();
    names.forEach(name -> marks.add(piece.part(name).mark()));
    Stream<PartRow> rows =
        marks.stream()
            .map(mark -> partRow(piece.mark(mark), names, step))
            .map(row -> row.count().isEmpty() ? inPlace(row, texts) : row);
    return Stream.concat(rows, made(piece, step)).toList();
  }

  /** What a step puts into its joints that was made in the shop. */
  private static Stream<PartRow> made(Piece piece, Step step) {
    return step.hardware().stream()
        .flatMap(
            each ->
                piece.made(each.item()).stream()
                    .map(made -> piece.mark(made.mark()))
                    .map(
                        mark ->
                            new PartRow(
                                mark.mark(), mark.title(), Integer.toString(each.count()))));
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
    String title = piece.item(item.item()).map(ItemEntry::title).orElse(item.item());
    return new HardwareRow(HardwareUse.of(piece).mark(item.item()), title, item.count());
  }
}
