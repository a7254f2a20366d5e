package storyrod.planset;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import storyrod.drawing.Drawing;
import storyrod.drawing.Drawing.Balloon;
import storyrod.measure.Rational;
import storyrod.measure.Unit;
import storyrod.piece.Joint;
import storyrod.stock.StockPlan;
import storyrod.stock.StockPlan.HardwareNeed;
import storyrod.words.Words;

/**
 * What a reader learns of a plan before buying it: no size of any part.
 *
 * @param picture the exploded view
 * @param parts those whose marks stand in it, by their names alone
 * @param skills the joints by their trade names, the most frequent first
 * @param tools of all steps, each once, in the order of their first use
 */
public record Preview(
    DrawingBox picture,
    List<Named> parts,
    List<String> skills,
    List<String> tools,
    List<Material> materials) {
  /** What the title and the band take of the picture's page. */
  private static final double BESIDE_MM = TableHeights.H1_MM + 14;

  private static final BigDecimal FEET_STEP = BigDecimal.valueOf(5);
  private static final BigDecimal METRES_STEP = new BigDecimal("0.01");

  public Preview {
    parts = List.copyOf(parts);
    skills = List.copyOf(skills);
    tools = List.copyOf(tools);
    materials = List.copyOf(materials);
  }

  /** A part by its mark. */
  public record Named(String mark, String part) {}

  /** A material in words, with a rough amount. */
  public record Material(String name, String amount) {}

  static Preview of(PlanSet set, StepPages steps, Shopping shopping, Print print) {
    Texts texts = print.texts();
    Stream<Material> supplies =
        shopping.supplies().rows().stream().map(row -> new Material(row.product(), row.takes()));
    return new Preview(
        picture(set, print.paper()),
        parts(set),
        skills(set.piece().joints(), texts),
        tools(steps),
        Stream.of(
                boards(set.stock(), texts),
                sheets(set.stock(), texts),
                hardware(set, texts),
                supplies)
            .flatMap(each -> each)
            .toList());
  }

  private static DrawingBox picture(PlanSet set, Paper paper) {
    Drawing whole = set.drawings().exploded().whole();
    List<String> names = parts(set).stream().map(Named::part).toList();
    double list = Pages.listMm(names, Pages.PARTS_LIST_COLUMNS, paper);
    double room = paper.roomMm() - BESIDE_MM - list;
    return DrawingBox.within(whole.name(), whole, paper.textWidthMm(), room);
  }

  private static List<Named> parts(PlanSet set) {
    Set<String> shown =
        set.drawings().exploded().whole().elements().stream()
            .filter(Balloon.class::isInstance)
            .map(each -> ((Balloon) each).mark())
            .collect(Collectors.toSet());
    return set.piece().marks().stream()
        .filter(mark -> shown.contains(mark.mark()))
        .map(mark -> new Named(mark.mark(), mark.title()))
        .toList();
  }

  /** The joints by their trade names, the most frequent first. */
  static List<String> skills(List<Joint> joints, Texts texts) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    joints.forEach(joint -> counts.merge(joint.type(), 1, Integer::sum));
    return counts.entrySet().stream()
        .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
        .map(each -> texts.say("joint." + each.getKey()))
        .toList();
  }

  private static List<String> tools(StepPages steps) {
    return steps.stages().stream()
        .flatMap(stage -> stage.steps().stream())
        .flatMap(step -> step.text().tools().stream())
        .distinct()
        .toList();
  }

  /** Solid wood by its name, whatever its thickness. */
  private static Stream<Material> boards(StockPlan stock, Texts texts) {
    Map<String, Rational> feet = new LinkedHashMap<>();
    stock
        .boards()
        .forEach(need -> feet.merge(texts.species(need.stock()), need.toBuy(), Rational::plus));
    return feet.entrySet().stream()
        .filter(each -> each.getValue().signum() > 0)
        .map(each -> new Material(each.getKey(), volume(each.getValue(), texts)));
  }

  /** Rounded up, to five board feet or a hundredth of a cubic metre, which is about as much. */
  private static String volume(Rational feet, Texts texts) {
    BigDecimal exact = new BigDecimal(texts.plainBoardVolume(feet));
    BigDecimal step = texts.format().unit() == Unit.INCH ? FEET_STEP : METRES_STEP;
    BigDecimal rough = exact.divide(step, 0, RoundingMode.CEILING).multiply(step);
    return texts.say(
        "preview.boards." + texts.format().unit().word(),
        texts.words().figures(rough.toPlainString()));
  }

  private static Stream<Material> sheets(StockPlan stock, Texts texts) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    Shopping.sheets(stock)
        .filter(plan -> plan.bought() > 0)
        .forEach(plan -> counts.merge(texts.species(plan.stock()), plan.bought(), Integer::sum));
    return counted(counts, "preview.sheets", texts);
  }

  /** Hardware by its kind: the titles of items tell their sizes. */
  private static Stream<Material> hardware(PlanSet set, Texts texts) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    set.stock()
        .hardware()
        .forEach(need -> counts.merge(kind(set, need, texts), need.count(), Integer::sum));
    return counted(counts, "preview.items", texts);
  }

  private static String kind(PlanSet set, HardwareNeed need, Texts texts) {
    return Texts.capital(texts.say("kind." + Words.hyphenated(set.piece().kind(need.item()))));
  }

  private static Stream<Material> counted(Map<String, Integer> counts, String key, Texts texts) {
    return counts.entrySet().stream()
        .map(
            each ->
                new Material(
                    each.getKey(),
                    texts.say(each.getValue() == 1 ? key + ".one" : key, each.getValue())));
  }
}
