package storyrod.planset;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.ItemEntry;
import storyrod.description.SheetSize;
import storyrod.description.StockEntry;
import storyrod.description.StockKind;
import storyrod.measure.Length;
import storyrod.measure.LengthFormat;
import storyrod.measure.Rational;
import storyrod.piece.Piece;
import storyrod.stock.StockPlan;
import storyrod.stock.StockPlan.BoardNeed;
import storyrod.stock.StockPlan.HardwareNeed;
import storyrod.stock.StockPlan.SheetPlan;
import storyrod.stock.SupplyNeed;
import storyrod.stock.SupplyPlan;

/**
 * What to buy; a cost that is not known is an empty text.
 *
 * @param total of all known costs; empty if none is known
 * @param complete whether every cost is known
 * @param currency of all costs; empty if the maker does not tell it
 * @param besides small things that the steps use up, with neither amount nor cost
 */
public record Shopping(
    List<Board> boards,
    List<Sheet> sheets,
    List<Item> items,
    Supplies supplies,
    String total,
    boolean complete,
    String currency,
    UsedUp besides) {
  /** Nothing to buy. */
  static final Shopping NONE =
      new Shopping(List.of(), List.of(), List.of(), new Supplies(List.of(), false), "", true, "");

  /** What to buy, before anything is known of the steps. */
  Shopping(
      List<Board> boards,
      List<Sheet> sheets,
      List<Item> items,
      Supplies supplies,
      String total,
      boolean complete,
      String currency) {
    this(boards, sheets, items, supplies, total, complete, currency, UsedUp.NOTHING);
  }

  /** The same with what the steps use up besides. */
  Shopping with(UsedUp used) {
    return new Shopping(boards, sheets, items, supplies, total, complete, currency, used);
  }

  public Shopping {
    boards = List.copyOf(boards);
    sheets = List.copyOf(sheets);
    items = List.copyOf(items);
  }

  /** A solid stock, in board feet or, in a metric project, in cubic metres. */
  public record Board(
      String stock,
      String boughtAs,
      String net,
      String onHand,
      int wastePercent,
      String toBuy,
      String cost) {}

  /** A sheet stock. */
  public record Sheet(String stock, String size, int count, String cost) {}

  /** An item of hardware, by packs; {@code note} goes on where its name ends, or is empty. */
  public record Item(String item, String note, int count, int packSize, int packs, String cost) {}

  /**
   * The keys of what stands below all of it: of taxes, of costs that are not known, of what boards
   * leave.
   *
   * @param prices whether costs are printed
   */
  public List<String> below(boolean prices) {
    List<String> said = new ArrayList<>();
    if (prices && !total.isEmpty()) {
      said.add("shopping.tax");
    }
    if (prices && !total.isEmpty() && !complete) {
      said.add("shopping.incomplete");
    }
    if (!boards.isEmpty()) {
      said.add("shopping.allowance");
    }
    return said;
  }

  static Shopping of(PlanSet set, Texts texts) {
    StockPlan stock = set.stock();
    List<Optional<Rational>> costs = costs(stock);
    List<Rational> known = costs.stream().flatMap(Optional::stream).toList();
    return new Shopping(
        stock.boards().stream().map(need -> board(set.piece(), need, texts)).toList(),
        sheets(stock).filter(plan -> plan.bought() > 0).map(plan -> sheet(plan, texts)).toList(),
        stock.hardware().stream().map(need -> item(set, need, texts)).toList(),
        Supplies.of(stock.supplies(), texts),
        known.isEmpty() ? "" : texts.money(sum(known)),
        known.size() == costs.size(),
        set.piece().description().about().currency().orElse(""));
  }

  /** The sum of the costs as printed, so that a reader who adds them up finds it. */
  private static Rational sum(List<Rational> costs) {
    return costs.stream().map(Texts::cents).reduce(Rational.ZERO, Rational::plus);
  }

  private static List<Optional<Rational>> costs(StockPlan stock) {
    return Stream.of(
            stock.boards().stream().map(BoardNeed::cost),
            sheets(stock).map(SheetPlan::cost),
            stock.hardware().stream().map(HardwareNeed::cost),
            stock.supplies().needs().stream().map(SupplyNeed::cost),
            sandpaper(stock.supplies()))
        .flatMap(costs -> costs)
        .toList();
  }

  /** What sandpaper costs, if any is wanted. */
  private static Stream<Optional<Rational>> sandpaper(SupplyPlan supplies) {
    return supplies.abrasives().isEmpty() ? Stream.empty() : Stream.of(supplies.sandpaperCost());
  }

  /** The layouts of sheets; what boards cost stands with the boards. */
  static Stream<SheetPlan> sheets(StockPlan stock) {
    return stock.layouts().stream().filter(plan -> plan.stock().kind() == StockKind.SHEET);
  }

  private static Board board(Piece piece, BoardNeed need, Texts texts) {
    return new Board(
        planed(piece, need.stock(), texts),
        bought(need.stock(), texts),
        texts.boardVolume(need.net()),
        need.onHand().signum() == 0 ? "" : texts.boardVolume(need.onHand()),
        need.wastePercent(),
        texts.boardVolume(need.toBuy()),
        cost(need.cost(), texts));
  }

  /** A stock that is bought rough with the thickness that it comes to, or else by its name. */
  private static String planed(Piece piece, StockEntry stock, Texts texts) {
    if (stock.boughtAs().isEmpty()) {
      return texts.stock(stock);
    }
    String wood = texts.species(stock);
    boolean inLayers =
        piece.wood().stream()
            .anyMatch(part -> part.stock().equals(stock) && piece.layers(part) > 1);
    return texts.say(
        inLayers ? "shopping.planed.layers" : "shopping.planed",
        stock.figures().quarterSawn() ? texts.say("stock.quarter", wood) : wood,
        texts.lengthWithUnit(stock.thickness().value()));
  }

  /** As a board is asked for: in the rough, or as thick as it is used. */
  private static String bought(StockEntry stock, Texts texts) {
    return stock
        .boughtAs()
        .map(rough -> texts.say("shopping.rough", boughtAs(rough, texts.format())))
        .orElseGet(() -> texts.lengthWithUnit(stock.thickness().value()));
  }

  /**
   * A thickness in the rough: by quarters from an inch on, as the trade counts them (4/4, 5/4),
   * thinner boards and all others as a length (grading rules of the hardwood trade, from memory).
   */
  static String boughtAs(Length rough, LengthFormat format) {
    long quarter = Length.TICKS_PER_INCH / 4;
    return rough.ticks() % quarter == 0 && rough.ticks() >= Length.TICKS_PER_INCH
        ? rough.ticks() / quarter + "/4"
        : format.formatWithUnit(rough);
  }

  private static Sheet sheet(SheetPlan plan, Texts texts) {
    return new Sheet(
        texts.stock(plan.stock()),
        size(plan.stock(), texts),
        plan.bought(),
        cost(plan.cost(), texts));
  }

  static String size(StockEntry stock, Texts texts) {
    SheetSize size =
        stock
            .sheet()
            .orElseThrow(() -> new IllegalStateException("bug: no sheet size: " + stock.name()));
    return texts.inUnits(
        in -> in.say("size.two", in.length(size.length()), in.lengthWithUnit(size.width())));
  }

  private static Item item(PlanSet set, HardwareNeed need, Texts texts) {
    return new Item(
        need.title(),
        note(set, need, texts),
        need.count(),
        need.packSize(),
        need.packs(),
        cost(need.cost(), texts));
  }

  /** What has to be looked at when it is bought: a length of screws, the room for slides. */
  private static String note(PlanSet set, HardwareNeed need, Texts texts) {
    return screwLength(set, need, texts) + clearance(set, need, texts);
  }

  /** What the drawers leave a slide beside them, on each side; empty for what is no slide. */
  private static String clearance(PlanSet set, HardwareNeed need, Texts texts) {
    return set.piece()
        .item(need.item())
        .flatMap(ItemEntry::sideClearance)
        .map(room -> texts.say("shopping.side-clearance", texts.lengthWithUnit(room)))
        .orElse("");
  }

  /** The length that screws of pulls and knobs have to have; empty for others. */
  private static String screwLength(PlanSet set, HardwareNeed need, Texts texts) {
    Grip grip = new Grip(set.piece());
    return grip.wood(need.item()).stream()
        .map(wood -> texts.lengthWithUnit(wood.plus(grip.held())))
        .reduce((one, other) -> texts.say("shopping.or", one, other))
        .map(lengths -> texts.say("shopping.screw-length", lengths))
        .orElse("");
  }

  private static String cost(Optional<Rational> cost, Texts texts) {
    return cost.map(texts::money).orElse("");
  }
}
