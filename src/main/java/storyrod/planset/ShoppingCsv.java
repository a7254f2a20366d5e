package storyrod.planset;

import java.util.List;

/**
 * The shopping list as CSV: boards, sheets, hardware and supplies in one table. {@code to_buy} and
 * {@code unit} say what to ask for; the currency stands in the head of the costs, if it is known; a
 * cell that a thing has no value for is empty.
 */
final class ShoppingCsv {
  private final Texts texts;
  private final Csv csv;

  private ShoppingCsv(String currency, Texts texts) {
    this.texts = texts;
    this.csv =
        new Csv(
            "list",
            "item",
            "size",
            "pack_size",
            "needed",
            "for",
            "on_hand",
            "waste_percent",
            "to_buy",
            "unit",
            currency.isEmpty() ? "cost" : "cost_" + currency);
  }

  static byte[] write(Shopping shopping, Texts texts) {
    ShoppingCsv list = new ShoppingCsv(shopping.currency(), texts);
    shopping.boards().forEach(list::board);
    shopping.sheets().forEach(list::sheet);
    shopping.items().forEach(list::item);
    shopping.supplies().rows().forEach(list::supply);
    shopping.besides().things().forEach(list::used);
    return list.csv.spreadsheet();
  }

  /** Its thickness in quarters comes with a word, or 5/4 would be a day in May. */
  private void board(Shopping.Board board) {
    csv.row(
        List.of(
            texts.say("shopping.boards"),
            board.stock(),
            board.boughtAs(),
            "",
            board.net(),
            "",
            board.onHand(),
            board.wastePercent(),
            board.toBuy(),
            texts.say("shopping.unit.boards." + texts.format().unit().word()),
            board.cost()));
  }

  private void sheet(Shopping.Sheet sheet) {
    csv.row(
        List.of(
            texts.say("shopping.sheets"),
            sheet.stock(),
            sheet.size(),
            "",
            "",
            "",
            "",
            "",
            sheet.count(),
            texts.say("shopping.unit.sheets"),
            sheet.cost()));
  }

  private void item(Shopping.Item item) {
    csv.row(
        List.of(
            texts.say("shopping.hardware"),
            item.item() + item.note(),
            "",
            item.packSize(),
            item.count(),
            "",
            "",
            "",
            item.packs(),
            texts.say("shopping.unit.packs"),
            item.cost()));
  }

  private void supply(Supplies.Row row) {
    csv.row(
        List.of(
            texts.say("shopping.supplies"),
            row.product(),
            row.soldIn(),
            "",
            row.takes(),
            row.area(),
            "",
            "",
            row.cans(),
            row.cans().isEmpty() ? "" : texts.say("shopping.unit.cans"),
            row.cost()));
  }

  private void used(UsedUp.Thing each) {
    csv.row(
        List.of(
            texts.say("used-up.list"), each.item(), "", "", "", each.where(), "", "", "", "", ""));
  }
}
