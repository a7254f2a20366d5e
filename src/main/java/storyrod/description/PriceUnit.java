package storyrod.description;

/** By what a price counts. */
public enum PriceUnit {
  BOARD_FOOT,
  SHEET
}
