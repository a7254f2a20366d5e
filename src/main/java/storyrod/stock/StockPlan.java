package storyrod.stock;

import java.util.List;
import java.util.Optional;
import storyrod.description.Description.StockEntry;
import storyrod.layout.LayoutJob.Area;
import storyrod.layout.LayoutPlan.SawCut;
import storyrod.measure.Length;
import storyrod.measure.Rational;

/**
 * What the parts are sawn from and what has to be bought.
 *
 * @param rough one row for each mark, in the order of the marks; none for a part that is cut out of
 *     another part's blank
 * @param boards one row for each solid stock in use
 * @param layouts one for each sheet stock in use
 * @param hardware one row for each item in use, joints and mounted hardware together
 */
public record StockPlan(
    List<RoughPart> rough,
    List<BoardNeed> boards,
    List<SheetPlan> layouts,
    List<HardwareNeed> hardware) {
  public StockPlan {
    rough = List.copyOf(rough);
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
   * @param toBuy board feet with the waste that the shop allows for, rounded up to a tenth
   * @param wastePercent the allowance
   */
  public record BoardNeed(
      StockEntry stock, Rational net, Rational toBuy, int wastePercent, Optional<Rational> cost) {}

  /**
   * The layout of one sheet stock.
   *
   * @param sheets in the order in which they are cut
   * @param lowerBound the fewest sheets that any layout can use
   */
  public record SheetPlan(
      StockEntry stock, List<SheetLayout> sheets, int lowerBound, Optional<Rational> cost) {
    public SheetPlan {
      sheets = List.copyOf(sheets);
    }
  }

  /**
   * One sheet: x runs along its length (the face grain), y across, both from one corner of the
   * whole sheet.
   *
   * @param cuts in the order in which they are made
   */
  public record SheetLayout(
      Length length, Length width, List<Placed> placed, List<SawCut> cuts, List<Area> offcuts) {
    public SheetLayout {
      placed = List.copyOf(placed);
      cuts = List.copyOf(cuts);
      offcuts = List.copyOf(offcuts);
    }
  }

  /** A part's blank on a sheet; {@code turned} if its own length runs across the sheet's. */
  public record Placed(String mark, String part, Area area, boolean turned) {}

  /**
   * An item of hardware.
   *
   * @param packs packs to buy
   */
  public record HardwareNeed(
      String item, String title, int count, int packs, int packSize, Optional<Rational> cost) {}
}
