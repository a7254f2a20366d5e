package storyrod.planset;

import java.util.List;
import java.util.stream.Collectors;
import storyrod.build.BuildPlan.Step;
import storyrod.build.Schedule;
import storyrod.build.Schedule.Row;

/** The lists that come as CSV, from the same rows as the pages. */
final class Lists {
  private Lists() {}

  static byte[] cutList(CutList list) {
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
            "note");
    list.rows().forEach(row -> csv.row(cells(row)));
    return csv.bytes();
  }

  private static List<Object> cells(CutList.Row row) {
    return List.of(
        row.mark(),
        row.part(),
        row.all(),
        row.handed(),
        row.stock(),
        row.finished().length(),
        row.finished().width(),
        row.finished().thickness(),
        row.rough().length(),
        row.rough().width(),
        row.rough().thickness(),
        row.grain(),
        row.blankOf(),
        row.note());
  }

  static byte[] hardware(Shopping shopping) {
    Csv csv = new Csv("item", "count", "packs", "pack_size");
    shopping
        .items()
        .forEach(
            item -> csv.row(List.of(item.item(), item.count(), item.packs(), item.packSize())));
    return csv.bytes();
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
      for (StepPages.Entry entry : stage.steps()) {
        Step step = set.build().steps().get(entry.number() - 1);
        Row row = schedule.step(entry.number());
        csv.row(
            List.of(
                entry.number(),
                stage.title(),
                entry.text().title(),
                marks(entry),
                step.hardware().isEmpty() ? "" : hardware(entry),
                step.minutes(),
                step.waitMinutes(),
                row.start(),
                row.finish(),
                row.free().floatMinutes(),
                row.free().critical()));
      }
    }
    return csv.bytes();
  }

  private static String marks(StepPages.Entry entry) {
    return entry.parts().stream().map(StepPages.PartRow::mark).collect(Collectors.joining(" "));
  }

  private static String hardware(StepPages.Entry entry) {
    return entry.hardware().stream()
        .map(item -> item.count() + " " + item.item())
        .collect(Collectors.joining("; "));
  }
}
