package storyrod.planset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import storyrod.description.StockEntry;
import storyrod.description.StockKind;
import storyrod.drawing.Drawing;
import storyrod.drawing.SawnAlike;
import storyrod.drawing.SawnPiece;
import storyrod.stock.StockPlan.Missing;
import storyrod.stock.StockPlan.SheetLayout;
import storyrod.stock.StockPlan.SheetPlan;

/**
 * What a project saws from one stock: the pieces that are bought, or those of one entry on hand.
 *
 * @param entry the stock
 * @param places where its pieces stand in the layout of the stock
 */
record ProjectStocks(SawnStock stock, StockEntry entry, List<Integer> places) {

  static List<ProjectStocks> of(PlanSet set, Texts texts) {
    List<ProjectStocks> all = new ArrayList<>();
    for (SheetPlan plan : set.stock().layouts()) {
      Map<Optional<String>, List<Integer>> groups = new LinkedHashMap<>();
      for (int i = 0; i < plan.sheets().size(); i++) {
        groups.computeIfAbsent(plan.sheets().get(i).onHand(), name -> new ArrayList<>()).add(i);
      }
      groups.forEach((onHand, places) -> all.add(of(set, plan, onHand, places, texts)));
    }
    return withRoughTold(all, texts);
  }

  /** How rough boards are sawn safely is told once, where the first of them are shown. */
  private static List<ProjectStocks> withRoughTold(List<ProjectStocks> all, Texts texts) {
    Optional<ProjectStocks> first = all.stream().filter(ProjectStocks::isBoards).findFirst();
    String told = " " + texts.say("layout.rough-boards");
    return all.stream()
        .map(each -> first.filter(each::equals).isPresent() ? each.telling(told) : each)
        .toList();
  }

  private boolean isBoards() {
    return entry.kind() != StockKind.SHEET;
  }

  private ProjectStocks telling(String more) {
    return new ProjectStocks(stock.telling(more), entry, places);
  }

  private static ProjectStocks of(
      PlanSet set, SheetPlan plan, Optional<String> onHand, List<Integer> places, Texts texts) {
    StockEntry entry = plan.stock();
    SheetLayout first = plan.sheets().get(places.getFirst());
    String noun = entry.kind() == StockKind.SHEET ? "sheet" : "board";
    List<SawnPiece> pieces =
        places.stream().map(place -> SawnPiece.of(plan.sheets().get(place), set.piece())).toList();
    String title = texts.stock(entry);
    SawnStock stock =
        new SawnStock(
            entry.name() + onHand.map(name -> "-" + name).orElse(""),
            noun,
            onHand
                .map(name -> texts.say("layout.on-hand", title, texts.words().name(name)))
                .orElse(title),
            size(entry, first, texts),
            onHand.isPresent()
                ? texts.say("layout.from-hand." + noun, pieces.size())
                : bound(plan, noun, texts) + missing(plan, texts),
            SawnAlike.of(pieces));
    return new ProjectStocks(stock, entry, places);
  }

  /** Its length and width, and the thickness in which boards are bought, where it is known. */
  private static String size(StockEntry entry, SheetLayout first, Texts texts) {
    return texts.inUnits(in -> inOne(entry, first, in));
  }

  private static String inOne(StockEntry entry, SheetLayout first, Texts texts) {
    String length = texts.length(first.length());
    return entry
        .boughtAs()
        .map(
            thick ->
                texts.say(
                    "size.three", length, texts.length(first.width()), texts.lengthWithUnit(thick)))
        .orElseGet(() -> texts.say("size.two", length, texts.lengthWithUnit(first.width())));
  }

  private static String bound(SheetPlan plan, String noun, Texts texts) {
    int count = plan.bought();
    if (count == plan.lowerBound()) {
      return texts.say((count == 1 ? "layout.one-is-fewest." : "layout.fewest.") + noun, count);
    }
    return texts.say("layout.at-least." + noun, count, plan.lowerBound());
  }

  /** What no piece gives, which the checks have warned of. */
  private static String missing(SheetPlan plan, Texts texts) {
    return plan.missing().isEmpty()
        ? ""
        : " "
            + texts.say(
                "layout.missing",
                plan.missing().stream()
                    .map(Missing::mark)
                    .distinct()
                    .collect(Collectors.joining(", ")));
  }

  /** The drawing of the first of some pieces that are alike. */
  Drawing drawing(PlanSet set, SawnAlike sheet) {
    List<Drawing> all = set.drawings().layouts().getOrDefault(entry.name(), List.of());
    int place = places.get(sheet.first() - 1);
    if (place >= all.size()) {
      throw new IllegalStateException("bug: no drawing for each sheet of " + entry.name());
    }
    return all.get(place);
  }
}
