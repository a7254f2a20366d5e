package storyrod.planset;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import storyrod.build.BuildPlan.Need;
import storyrod.build.BuildPlan.Step;
import storyrod.build.FirstMove;
import storyrod.build.Schedule;
import storyrod.description.About;
import storyrod.description.Diagnostic;
import storyrod.layout.LayoutJob.Area;
import storyrod.layout.LayoutPlan.SawCut;
import storyrod.measure.Length;
import storyrod.measure.Rational;
import storyrod.piece.HardwareUse;
import storyrod.piece.Joint;
import storyrod.piece.Joint.ItemCount;
import storyrod.piece.Mark;
import storyrod.piece.Part;
import storyrod.stock.StockPlan.HardwareNeed;
import storyrod.stock.StockPlan.Placed;
import storyrod.stock.StockPlan.SheetLayout;
import storyrod.stock.StockPlan.SheetPlan;
import storyrod.stock.SupplyNeed;

/**
 * {@code plan.json}: everything that was computed. Lengths are whole micrometres, and as printed
 * where a reader sees them; keys and lists keep one order. {@link PlanSchema} says what may stand
 * in it.
 */
final class PlanJson {
  /** The version of the schema; it rises whenever a key comes, goes or changes its meaning. */
  private static final int FORMAT_VERSION = 1;

  private final PlanSet set;
  private final Texts texts;
  private final Schedule schedule;

  private PlanJson(PlanSet set, Texts texts) {
    this.set = set;
    this.texts = texts;
    this.schedule = set.schedule();
  }

  static byte[] write(PlanSet set, StepPages steps, Texts texts) {
    return Json.text(new PlanJson(set, texts).all(steps))
        .getBytes(java.nio.charset.StandardCharsets.UTF_8);
  }

  private Map<String, Object> all(StepPages steps) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("format", FORMAT_VERSION);
    json.put("project", project());
    json.put("units", texts.format().unit().word());
    json.put("parts", set.piece().marks().stream().map(this::part).toList());
    json.put("glue_ups", set.stock().gluedUp().stream().map(GlueUpList::json).toList());
    json.put("kept_cutouts", KeptJson.of(set.piece()));
    json.put("joints", set.piece().joints().stream().map(PlanJson::joint).toList());
    json.put("supplies", set.stock().supplies().needs().stream().map(PlanJson::supply).toList());
    json.put("hardware", set.stock().hardware().stream().map(this::hardware).toList());
    json.put("findings", set.findings().stream().map(PlanJson::finding).toList());
    json.put("steps", steps(steps));
    json.put("schedule", ScheduleJson.of(schedule));
    json.put("needs", set.build().needs().stream().map(PlanJson::need).toList());
    json.put("layouts", set.stock().layouts().stream().map(PlanJson::layout).toList());
    return json;
  }

  private Map<String, Object> project() {
    About about = set.piece().description().about();
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("title", about.project().value());
    about.maker().ifPresent(maker -> json.put("maker", maker));
    about.summary().ifPresent(summary -> json.put("summary", summary));
    about.edition().ifPresent(edition -> json.put("edition", edition));
    about.date().ifPresent(date -> json.put("date", date.toString()));
    return json;
  }

  private Map<String, Object> part(Mark mark) {
    Part shown = mark.shown();
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("name", shown.name());
    json.put("title", mark.title());
    json.put("mark", mark.mark());
    json.put("count", mark.count());
    json.put("same", mark.same());
    json.put("mirrored", mark.mirrored());
    json.put("names", mark.parts());
    json.put("stock", shown.stock().name());
    json.put("length", length(shown.finishedLength()));
    json.put("width", length(shown.finishedWidth()));
    json.put("thickness", length(shown.finishedThickness()));
    json.put("length_axis", shown.length().word());
    json.put("thickness_axis", shown.thickness().word());
    json.put("box_um", CutJson.box(shown.box()));
    json.put("volume_mm3", Math.round(shown.solid().volumeMm3() * 1000) / 1000.0);
    json.put("cuts", shown.cuts().stream().map(CutJson::of).toList());
    if (mark.parts().stream().map(set.piece()::part).anyMatch(part -> part.pose().isTurned())) {
      json.put("turned", mark.parts().stream().map(set.piece()::part).map(PlanJson::pose).toList());
    }
    return json;
  }

  private static Map<String, Object> pose(Part part) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("name", part.name());
    json.put("about", part.pose().about().word());
    json.put("by_microdegrees", part.pose().by().microdegrees());
    json.put("at_um", CutJson.points(List.of(part.pose().at())).getFirst());
    json.put("bounds_um", CutJson.box(part.bounds()));
    return json;
  }

  private Map<String, Object> length(Length length) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("um", length.toMicrometres());
    json.put("printed", texts.length(length));
    return json;
  }

  private static Map<String, Object> joint(Joint joint) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("type", joint.type());
    json.put("first", joint.first());
    json.put("first_face", joint.firstFace().word());
    json.put("second", joint.second());
    json.put("entry", joint.entry().word());
    json.put("contact_um", CutJson.box(joint.contact()));
    json.put("glued", joint.glued());
    json.put("holding", joint.holding());
    json.put("fasteners", joint.fasteners().stream().map(PlanJson::item).toList());
    return json;
  }

  private static Map<String, Object> item(ItemCount item) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("item", item.item());
    json.put("count", item.count());
    return json;
  }

  private static Map<String, Object> supply(SupplyNeed need) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("use", need.use().name().toLowerCase(Locale.ROOT));
    json.put("product", need.product());
    json.put("square_metres", number(need.squareMetres()));
    json.put("coats", need.coats());
    json.put("least_litres", need.litres().map(each -> number(each.least())).orElse(null));
    json.put("most_litres", need.litres().map(each -> number(each.most())).orElse(null));
    json.put("cans", need.cans().orElse(null));
    return json;
  }

  private static BigDecimal number(Rational value) {
    return new BigDecimal(Texts.decimal(value, 3));
  }

  private Map<String, Object> hardware(HardwareNeed need) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("mark", HardwareUse.of(set.piece()).mark(need.item()));
    json.put("item", need.item());
    json.put("title", need.title());
    json.put("count", need.count());
    json.put("packs", need.packs());
    json.put("pack_size", need.packSize());
    return json;
  }

  /** Without its folders: where a project lies on a machine is no part of its plan. */
  private static String fileName(String path) {
    return path.substring(Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1);
  }

  private static Map<String, Object> finding(Diagnostic finding) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("code", finding.code());
    json.put("severity", finding.severity().word());
    json.put("file", fileName(finding.at().source().file()));
    json.put("line", finding.at().line());
    json.put("column", finding.at().column());
    json.put("message", finding.message());
    json.put("hints", finding.hints());
    return json;
  }

  private List<Map<String, Object>> steps(StepPages pages) {
    return pages.stages().stream()
        .flatMap(stage -> stage.steps().stream().map(entry -> step(stage, entry)))
        .toList();
  }

  private Map<String, Object> step(StepPages.StageGroup stage, StepEntry entry) {
    Step step = set.build().steps().get(entry.number() - 1);
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("number", step.number());
    json.put("stage", stage.title());
    json.put("title", entry.text().title());
    json.put("operations", step.operations().stream().map(each -> each.name()).toList());
    json.put("parts", StepEntries.partNames(step));
    json.put("new_parts", step.newParts());
    json.put("standing", step.standing());
    step.firstMove().ifPresent(first -> json.put("moves", moves(step, first)));
    json.put("hardware", step.hardware().stream().map(PlanJson::item).toList());
    json.put("minutes", step.minutes());
    json.put("waits", step.waitMinutes());
    json.putAll(ScheduleJson.step(schedule.step(step.number())));
    return json;
  }

  /** The two moves on which the new parts come in, by the faces from which they come. */
  private List<Map<String, Object>> moves(Step step, FirstMove first) {
    Map<String, Object> beside = new LinkedHashMap<>();
    beside.put("from", first.enters().opposite().word());
    Map<String, Object> home = new LinkedHashMap<>();
    home.put("from", step.enters().orElseThrow().opposite().word());
    home.put("length", length(first.beside()));
    return List.of(beside, home);
  }

  private static Map<String, Object> need(Need need) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("before", need.before());
    json.put("after", need.after());
    json.put("rule", need.rule());
    return json;
  }

  private static Map<String, Object> layout(SheetPlan plan) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("stock", plan.stock().name());
    json.put("parts", plan.sheets().stream().mapToInt(sheet -> sheet.placed().size()).sum());
    json.put("pieces_used", plan.sheets().size());
    json.put("lower_bound", plan.lowerBound());
    json.put("sheets", plan.sheets().stream().map(PlanJson::sheet).toList());
    return json;
  }

  private static Map<String, Object> sheet(SheetLayout sheet) {
    Map<String, Object> json = new LinkedHashMap<>();
    sheet.onHand().ifPresent(name -> json.put("on_hand", name));
    json.put("length_um", sheet.length().toMicrometres());
    json.put("width_um", sheet.width().toMicrometres());
    json.put("placed", sheet.placed().stream().map(PlanJson::placed).toList());
    json.put("cuts", sheet.cuts().stream().map(PlanJson::sawCut).toList());
    json.put("offcuts", sheet.offcuts().stream().map(PlanJson::area).toList());
    return json;
  }

  private static Map<String, Object> placed(Placed placed) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("mark", placed.mark());
    json.put("part", placed.part());
    json.putAll(area(placed.area()));
    json.put("turned", placed.turned());
    return json;
  }

  private static Map<String, Object> sawCut(SawCut cut) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("number", cut.number());
    json.put("along_length", cut.alongLength());
    json.put("at_um", cut.at().toMicrometres());
    json.put("from_um", cut.from().toMicrometres());
    json.put("to_um", cut.to().toMicrometres());
    json.put("fence_um", cut.fence().toMicrometres());
    return json;
  }

  private static Map<String, Object> area(Area area) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("x_um", area.x().toMicrometres());
    json.put("y_um", area.y().toMicrometres());
    json.put("length_um", area.length().toMicrometres());
    json.put("width_um", area.width().toMicrometres());
    return json;
  }
}
