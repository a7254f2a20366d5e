package storyrod.planset;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import storyrod.build.BuildPlan;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Catches;
import storyrod.build.SecondLeaves;
import storyrod.build.Trials;
import storyrod.build.TriedLids;
import storyrod.build.Verb;
import storyrod.description.ItemEntry;
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

/**
 * Gathers what the pages show of a step: its words and drawings, and the lists of its parts, sizes,
 * settings and hardware.
 */
record StepEntries(Piece piece, Print print, Wording wording, TriedLids lids) {
  StepEntries(Piece piece, BuildPlan build, StepPages.Sheet sheet) {
    this(piece, sheet.print(), sheet.wording(), new TriedLids(piece, build.steps()));
  }

  /** From this many parts on they stand in a row of marks, without names. */
  private static final int MANY_PARTS = 9;

  /**
   * The drawings of a step.
   *
   * @param picture its picture or its strip
   * @param beside what stands beside its sentences
   */
  record Shown(Optional<DrawingBox> picture, Optional<DrawingBox> beside) {
    static final Shown NOTHING = new Shown(Optional.empty(), Optional.empty());
  }

  StepEntry of(Step step, Shown shown) {
    StepText text = wording.of(step);
    List<PartRow> parts = parts(step);
    List<SizeRow> sizes = sizes(step, parts);
    StepEntry named =
        new StepEntry(
            step.number(),
            withSettings(text, sizes.isEmpty() ? text.settings() : withoutSizes(text)),
            shown.picture().filter(any -> !Strips.isFor(step)).stream().toList(),
            shown.picture().filter(any -> Strips.isFor(step)).stream().toList(),
            shown.beside().stream().toList(),
            parts,
            sizes,
            atHand(step).stream()
                .filter(item -> piece.made(item.item()).isEmpty())
                .map(this::hardware)
                .toList(),
            parts.size() >= MANY_PARTS,
            0,
            text.working(),
            text.waiting());
    return new StepHeights(print).fitting(named);
  }

  private Texts texts() {
    return print.texts();
  }

  /** What a step uses up; on trial, what is taken off again and used up when it is put back. */
  private List<ItemCount> atHand(Step step) {
    return step.verb() == Verb.TRIAL_FIT
        ? step.operations().stream()
            .flatMap(each -> Trials.onTrial(piece, each.target()).stream())
            .toList()
        : step.hardware();
  }

  /** Length and width of each mark that the step cuts to both. */
  private List<SizeRow> sizes(Step step, List<PartRow> parts) {
    Map<String, Length> lengths = settings(step, "length");
    Map<String, Length> widths = settings(step, "width");
    return lengths.keySet().containsAll(widths.keySet()) && widths.size() == parts.size()
        ? parts.stream()
            .map(part -> new SizeRow(part.mark(), part.count(), size(part, lengths, widths)))
            .toList()
        : List.of();
  }

  private String size(PartRow part, Map<String, Length> lengths, Map<String, Length> widths) {
    return texts()
        .inUnits(
            in ->
                in.say(
                    "size.two",
                    in.length(lengths.get(part.mark())),
                    in.lengthWithUnit(widths.get(part.mark()))));
  }

  private Map<String, Length> settings(Step step, String key) {
    Map<String, Length> values = new LinkedHashMap<>();
    for (BuildPlan.Setting setting : step.settings()) {
      if (setting.key().equals(key)) {
        setting.part().ifPresent(part -> values.put(piece.part(part).mark(), setting.value()));
      }
    }
    return values;
  }

  private List<SettingText> withoutSizes(StepText text) {
    List<String> shown = List.of(texts().say("setting.length"), texts().say("setting.width"));
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

  private List<PartRow> parts(Step step) {
    Set<String> names = new LinkedHashSet<>(partNames(step));
    names.addAll(new Catches(piece).posts(step));
    names.addAll(lids.in(step));
    new SecondLeaves(piece).leftAlone(step).forEach(names::remove);
    Set<String> marks = new LinkedHashSet<>();
    names.forEach(name -> marks.add(piece.part(name).mark()));
    Stream<PartRow> rows =
        marks.stream()
            .map(mark -> partRow(piece.mark(mark), names, step))
            .map(row -> row.count().isEmpty() ? inPlace(row) : row);
    return Stream.concat(rows, made(step)).toList();
  }

  /** What a step puts into its joints that was made in the shop. */
  private Stream<PartRow> made(Step step) {
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

  private PartRow inPlace(PartRow row) {
    return new PartRow(row.mark(), row.title(), texts().say("step.in-place"));
  }

  private HardwareRow hardware(ItemCount item) {
    String title = piece.item(item.item()).map(ItemEntry::title).orElse(item.item());
    return new HardwareRow(HardwareUse.of(piece).mark(item.item()), title, item.count());
  }
}
