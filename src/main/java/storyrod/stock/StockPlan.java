package storyrod.stock;

import java.util.List;
import java.util.Optional;
import storyrod.description.StockEntry;
import storyrod.layout.LayoutJob.Area;
import storyrod.layout.LayoutPlan.SawCut;
import storyrod.measure.Length;
import storyrod.measure.Rational;

/**
 * What the parts are sawn from and what has to be bought.
 *
 * @param rough one row for each mark, in the order of the marks; none for a part that is cut out of
 *     another part's blank
 * @param gluedUp one row for each mark whose blanks are glued up first
 * @param boards one row for each solid stock in use
 * @param layouts one for each sheet stock in use
 * @param hardware one row for each item in use, joints and mounted hardware together
 */
public record StockPlan(
    List<RoughPart> rough,
    List<GluedBlank> gluedUp,
    List<BoardNeed> boards,
    List<SheetPlan> layouts,
    List<HardwareNeed> hardware,
    SupplyPlan supplies) {
  public StockPlan {
    rough = List.copyOf(rough);
    gluedUp = List.copyOf(gluedUp);
    boards = List.copyOf(boards);
    layouts = List.copyOf(layouts);
    hardware = List.copyOf(hardware);
  }

  /**
   * The size to which a mark's parts are sawn before they are milled; sheet parts get none extra.
   */
  public record RoughPart(String mark, int count, Length length, Length width, Length thickness) {}

  /**
   * The boards of one solid stock.
   *
   * @param net board feet of the rough parts
   * @param onHand board feet of the boards on hand that the layout takes
   * @param toBuy board feet to buy: of the boards that the layout takes, where boards have a size;
   *     else of what the boards on hand do not give, with the waste that the shop allows for,
   *     rounded up to a tenth
   * @param wastePercent what the layout wastes in truth, or the allowance
   * @param boards how many usual boards that is, where they have a size
   */
  public record BoardNeed(
      StockEntry stock,
      Rational net,
      Rational onHand,
      Rational toBuy,
      int wastePercent,
      Optional<Integer> boards,
      Optional<Rational> cost) {
    BoardNeed with(Rational feetOnHand) {
      return new BoardNeed(stock, net, feetOnHand, toBuy, wastePercent, boards, cost);
    }
  }

  /**
   * The layout of one stock: sheets, or boards where their sizes are known.
   *
   * @param sheets in the order in which they are cut
   * @param missing what neither the pieces on hand nor those that can be bought give
   * @param lowerBound the fewest pieces that have to be bought for any layout
   * @param cost of what is bought
   */
  public record SheetPlan(
      StockEntry stock,
      List<SheetLayout> sheets,
      List<Missing> missing,
      int lowerBound,
      Optional<Rational> cost) {
    public SheetPlan {
      sheets = List.copyOf(sheets);
      missing = List.copyOf(missing);
    }

    /** How many pieces have to be bought. */
    public int bought() {
      return (int) sheets.stream().filter(each -> each.onHand().isEmpty()).count();
    }
  }

  /**
   * A blank that no piece gives.
   *
   * @param fits whether some piece is large enough, were there more of it
   */
  public record Missing(String mark, String part, Length length, Length width, boolean fits) {}

  /**
   * One sheet or board: x runs along its length (the face grain), y across, both from one corner of
   * the whole of it.
   *
   * @param onHand the name of what it is, if it is there already
   * @param cuts in the order in which they are made
   */
  public record SheetLayout(
      Optional<String> onHand,
      Length length,
      Length width,
      List<Placed> placed,
      List<SawCut> cuts,
      List<Area> offcuts) {
    public SheetLayout {
      placed = List.copyOf(placed);
      cuts = List.copyOf(cuts);
      offcuts = List.copyOf(offcuts);
    }

    /** What lies where on it, whatever part it is for and in whatever order it is sawn. */
    SheetLayout places() {
      List<Placed> nameless = placed.stream().map(Placed::nameless).toList();
      return new SheetLayout(onHand, length, width, nameless, List.of(), List.of());
    }

    SheetLayout sawnAs(SheetLayout other) {
      return new SheetLayout(onHand, length, width, placed, other.cuts, other.offcuts);
    }
  }

  /**
   * A part's blank on a sheet or board.
   *
   * @param number which of its blanks it is, where it is glued up from several: the staves of the
   *     first layer, then those of the next
   * @param turned if its own length runs across the sheet's
   */
  public record Placed(
      String mark, String part, Optional<Integer> number, Area area, boolean turned) {
    private Placed nameless() {
      return new Placed(mark, "", Optional.empty(), area, turned);
    }
  }

  /**
   * An item of hardware.
   *
   * @param packs packs to buy
   */
  public record HardwareNeed(
      String item, String title, int count, int packs, int packSize, Optional<Rational> cost) {}
}
