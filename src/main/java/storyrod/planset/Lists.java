package storyrod.planset;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Schedule;
import storyrod.build.Schedule.Row;
import storyrod.piece.Piece;

/** The lists that come as CSV, from the same rows as the pages. */
final class Lists {
  private Lists() {}

  /** With the unit of its sizes in each row, for a list may be sorted or taken apart. */
  static byte[] cutList(CutList list, String unit) {
    Csv csv =
        new Csv(
            "mark",
            "part",
            "count",
            "handed",
            "stock",
            "length",
            "width",
            "thickness",
            "rough_length",
            "rough_width",
            "rough_thickness",
            "grain",
            "blank_of",
            "note",
            "unit");
    list.rows().forEach(row -> csv.row(cells(row, unit)));
    return csv.spreadsheet();
  }

  private static List<Object> cells(CutList.Row row, String unit) {
    return List.of(
        row.mark(),
        row.part(),
        row.all(),
        row.handed(),
        row.stock(),
        Csv.size(row.finished().length()),
        Csv.size(row.finished().width()),
        Csv.size(row.finished().thickness()),
        Csv.size(row.rough().length()),
        Csv.size(row.rough().width()),
        Csv.size(row.rough().thickness()),
        row.grain(),
        row.blankOf(),
        row.note(),
        unit);
  }

  /** Each item with what to buy of it, and where it goes: marks and steps as in the schedule. */
  static byte[] hardware(Shopping shopping, HardwareList schedule) {
    Csv csv = new Csv("mark", "item", "count", "packs", "pack_size", "parts", "steps");
    for (int i = 0; i < shopping.items().size(); i++) {
      Shopping.Item item = shopping.items().get(i);
      HardwareList.Row row = schedule.rows().get(i);
      csv.row(
          List.of(
              row.mark(),
              item.item(),
              item.count(),
              item.packs(),
              item.packSize(),
              row.parts(),
              row.steps()));
    }
    return csv.spreadsheet();
  }

  static byte[] labels(Labels labels, String unit) {
    Csv csv =
        new Csv(
            "mark",
            "number",
            "of",
            "name",
            "hand",
            "length",
            "width",
            "thickness",
            "stock",
            "grain",
            "show_face",
            "first_step",
            "unit");
    labels.all().forEach(label -> csv.row(cells(label, unit)));
    return csv.spreadsheet();
  }

  private static List<Object> cells(Labels.Label label, String unit) {
    return List.of(
        label.mark(),
        label.number(),
        label.of(),
        label.name(),
        label.hand(),
        Csv.size(label.size().length()),
        Csv.size(label.size().width()),
        Csv.size(label.size().thickness()),
        label.stock(),
        label.grain(),
        label.showFace(),
        label.step(),
        unit);
  }

  static byte[] steps(PlanSet set, StepPages pages) {
    Csv csv =
        new Csv(
            "number",
            "stage",
            "title",
            "parts",
            "hardware",
            "minutes",
            "waits",
            "start",
            "finish",
            "float",
            "critical");
    Schedule schedule = set.schedule();
    for (StepPages.StageGroup stage : pages.stages()) {
      for (StepEntry entry : stage.steps()) {
        Step step = set.build().steps().get(entry.number() - 1);
        Row row = schedule.step(entry.number());
        csv.row(
            List.of(
                entry.number(),
                stage.title(),
                entry.text().title(),
                String.join(" ", marks(set.piece(), step, entry)),
                step.hardware().isEmpty() ? "" : hardware(entry),
                step.minutes(),
                step.waitMinutes(),
                row.start(),
                row.finish(),
                row.free().floatMinutes(),
                row.free().critical()));
      }
    }
    return csv.spreadsheet();
  }

  /** The parts of a step, and those that stand already and that its hardware goes into. */
  private static Set<String> marks(Piece piece, Step step, StepEntry entry) {
    Set<String> marks = new LinkedHashSet<>();
    entry.parts().forEach(part -> marks.add(part.mark()));
    step.operations().stream()
        .flatMap(operation -> operation.joints().stream())
        .filter(joint -> !joint.fasteners().isEmpty())
        .flatMap(joint -> Stream.of(joint.first(), joint.second()))
        .forEach(part -> marks.add(piece.part(part).mark()));
    return marks;
  }

  private static String hardware(StepEntry entry) {
    return entry.hardware().stream()
        .map(item -> item.count() + " " + item.item())
        .collect(Collectors.joining("; "));
  }
}
