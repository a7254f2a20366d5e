package storyrod.planset;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import storyrod.measure.Rational;
import storyrod.measure.Unit;
import storyrod.measure.Volume;
import storyrod.stock.SupplyNeed;
import storyrod.stock.SupplyNeed.Abrasive;
import storyrod.stock.SupplyNeed.Abrasive.Packs;
import storyrod.stock.SupplyPlan;

/**
 * The glue, the finish and the sandpaper of a shopping list.
 *
 * @param ranges whether an amount is a range of common practice
 */
public record Supplies(List<Row> rows, boolean ranges) {
  /** The international foot is 304.8 mm exactly. */
  private static final Rational SQUARE_FEET = Rational.of(100_000_000, 9_290_304);

  private static final Rational FLUID_OUNCES = Rational.of(128_000_000_000L, 3_785_411_784L);
  private static final Rational TEN = Rational.of(10, 1);
  private static final Rational OUNCES_PER_QUART = Rational.of(32, 1);
  private static final Rational MILLILITRES = Rational.of(1000, 1);

  public Supplies {
    rows = List.copyOf(rows);
  }

  /**
   * A product.
   *
   * @param area what it goes on, and how often
   * @param takes how much of it that takes
   * @param soldIn what one can holds; empty if not known
   * @param cans how many to buy; empty if not known
   */
  public record Row(
      String product, String area, String takes, String soldIn, String cans, String cost) {}

  static Supplies of(SupplyPlan plan, Texts texts) {
    List<Row> rows = new ArrayList<>(plan.needs().stream().map(need -> row(need, texts)).toList());
    if (!plan.abrasives().isEmpty()) {
      rows.add(sandpaper(plan, texts));
    }
    return new Supplies(rows, plan.needs().stream().anyMatch(Supplies::isRange));
  }

  private static boolean isRange(SupplyNeed need) {
    return need.litres().filter(litres -> !litres.byLabel()).isPresent();
  }

  private static Row row(SupplyNeed need, Texts texts) {
    String area = area(need.squareMetres(), texts);
    return new Row(
        Texts.capital(texts.words().name(need.product())),
        switch (need.use()) {
          case GLUE -> texts.say("supply.on-joints", area);
          case FINISH ->
              texts.say(
                  need.coats() == 1 ? "supply.coats.one" : "supply.coats", area, need.coats());
        },
        amount(need, texts),
        need.soldIn().map(can -> canSize(can, texts)).orElse(""),
        need.cans().map(String::valueOf).orElse(""),
        need.cost().map(texts::money).orElse(""));
  }

  /** How much of a product is needed, as printed. */
  static String amount(SupplyNeed need, Texts texts) {
    return need.litres()
        .map(litres -> texts.inUnits(in -> takes(litres, in)))
        .orElse(texts.say("supply.by-label"));
  }

  /** An area as printed, in whole square feet or tenths of a square metre. */
  static String area(Rational squareMetres, Texts texts) {
    return texts.inUnits(in -> areaIn(squareMetres, in));
  }

  private static String areaIn(Rational squareMetres, Texts texts) {
    boolean inch = texts.format().unit() == Unit.INCH;
    Rational value = inch ? squareMetres.times(SQUARE_FEET) : squareMetres;
    return texts.say("finish.area." + texts.format().unit().word(), figure(value, texts));
  }

  private static String takes(SupplyNeed.Litres litres, Texts texts) {
    Scale scale = Scale.of(litres.most(), texts.format().unit());
    String most = scale.figure(litres.most(), texts);
    String amount =
        litres.byLabel()
            ? texts.say("supply.about", most)
            : texts.say("supply.range", scale.figure(litres.least(), texts), most);
    return texts.say("volume." + scale.unit, amount);
  }

  /** A unit of volume that fits an amount. */
  private record Scale(String unit, Rational perLitre) {
    static Scale of(Rational litres, Unit unit) {
      if (unit == Unit.INCH) {
        return litres.times(FLUID_OUNCES).compareTo(OUNCES_PER_QUART) < 0
            ? new Scale("fl-oz", FLUID_OUNCES)
            : new Scale("qt", FLUID_OUNCES.dividedBy(OUNCES_PER_QUART));
      }
      return litres.compareTo(Rational.ONE) < 0
          ? new Scale("ml", MILLILITRES)
          : new Scale("l", Rational.ONE);
    }

    String figure(Rational litres, Texts texts) {
      return Supplies.figure(litres.times(perLitre), texts);
    }
  }

  private static String figure(Rational value, Texts texts) {
    return texts.figures(value, value.compareTo(TEN) < 0 ? 1 : 0);
  }

  private static String canSize(Volume can, Texts texts) {
    return texts.say("volume." + can.unit(), can.amount().toString());
  }

  private static Row sandpaper(SupplyPlan plan, Texts texts) {
    List<Abrasive> abrasives = plan.abrasives();
    Abrasive first = abrasives.getFirst();
    return new Row(
        texts.say("supply.sandpaper"),
        grits(abrasives, texts),
        texts.say(first.sheets() == 1 ? "supply.sheets.one" : "supply.sheets", first.sheets()),
        first.packs().map(each -> texts.say("supply.pack", each.sheets())).orElse(""),
        packs(abrasives),
        plan.sandpaperCost().map(texts::money).orElse(""));
  }

  /** A pack holds one grit, so the sum that is bought is told by grits too. */
  private static String grits(List<Abrasive> abrasives, Texts texts) {
    String grits =
        abrasives.stream()
            .map(each -> String.valueOf(each.grit()))
            .collect(Collectors.joining(", "));
    return abrasives
        .getFirst()
        .packs()
        .map(each -> texts.say(packsOfEach(each.count()), grits, each.count()))
        .orElse(texts.say("supply.grits", grits));
  }

  private static String packsOfEach(int count) {
    return count == 1 ? "supply.grits-packs.one" : "supply.grits-packs";
  }

  private static String packs(List<Abrasive> abrasives) {
    int packs = abrasives.stream().mapToInt(each -> each.packs().map(Packs::count).orElse(0)).sum();
    return packs == 0 ? "" : Integer.toString(packs);
  }
}
