package storyrod.description;

/** Says in a few words what a key wants; what is written as it stands is between backticks. */
public final class Meaning {
  private Meaning() {}

  static String of(Key key) {
    return of(key.type());
  }

  /** Words such as {@code a length, such as `3/4 in`}. */
  public static String of(ValueType type) {
    return switch (type) {
      case ValueType.Text text -> "a few words";
      case ValueType.LengthValue length -> "a length, such as `3/4 in` or `19 mm`";
      case ValueType.Allowance allowance -> "a length, such as `1/4 in`";
      case ValueType.AngleValue angle -> "an angle in degrees, such as `8` or `7 1/2`";
      case ValueType.Number number -> "a number";
      case ValueType.Amount amount -> "a number above zero";
      case ValueType.Count count -> "a whole number";
      case ValueType.YesNo yesNo -> "`yes` or `no`";
      case ValueType.Choice choice -> "one of " + String.join(", ", choice.words());
      case ValueType.RangeValue range -> "where it starts and ends, such as `0 to 12`";
      case ValueType.AxisName axis -> "x, y or z";
      case ValueType.FaceName face -> "a part and its face, such as `left-side.right`";
      case ValueType.PartName part -> "the name of a part";
      case ValueType.ItemName item -> "the name of an item";
      case ValueType.StockName stock -> "the name of a stock";
      case ValueType.EdgeName edge -> "two faces that meet, such as `front-top`";
      case ValueType.Point point -> "coordinates, such as `{x: 2, z: 10}`";
      case ValueType.OneOrMore some -> of(some.each()) + ", or a list";
      case ValueType.MassValue mass -> "a weight, such as `25 kg` or `50 lb`";
      case ValueType.PriceValue price -> "a price, such as `7.80 per board-foot`";
      case ValueType.VolumeValue volume -> "a volume, such as `500 ml` or `1 qt`";
      case ValueType.CoverageValue coverage -> "a coverage, such as `12 m2/l` or `500 ft2/gal`";
      case ValueType.SheetSizeValue size -> "a size, such as `96 x 48`";
      case ValueType.DateValue date -> "a day, such as `2026-11-25`";
      case ValueType.CurrencyValue currency -> "a currency, such as `EUR` or `€`";
      case ValueType.Fraction fraction -> "a fraction, such as `1/32`";
      case ValueType.Lengths lengths -> "names and their lengths";
      case ValueType.Numbers numbers -> "names and their numbers";
      case ValueType.Section section -> "its keys";
      case ValueType.SharedSection section ->
          "its keys, or a file that has them, such as `shop.yaml`";
      case ValueType.Named named -> "names, each with its keys";
      case ValueType.Assemblies assemblies -> "names, each with its keys";
      case ValueType.Listed listed -> "a list";
      case ValueType.Joints joints -> "a list of joints";
      case ValueType.Cuts cuts -> "a list of cuts";
      case ValueType.Kinds kinds -> "a list, each line one kind of " + kinds.what();
      case ValueType.Orders orders -> "a list, such as `[cut left-side, fit left-side]`";
      case ValueType.Condition condition -> "a condition, such as `shelves > 0`";
      case ValueType.FaceWord face -> "left, right, front, back, bottom or top";
      case ValueType.Words words -> "names and their words, such as `front: [inset, overlay]`";
      case ValueType.Gifts gifts -> "names and their values";
      case ValueType.Place place -> "where it lies, such as `{x: 0 to 20, z: 5}`";
      case ValueType.PartLists lists ->
          "names and lists of parts, such as `wall: [left-side, partition]`";
      case ValueType.Others others -> "names of " + others.section() + " and their other values";
      case ValueType.Notes notes -> "names and words about them";
    };
  }
}
