package storyrod.description;

/** Where a stock comes from. */
public enum StockKind {
  SOLID,
  SHEET
}
