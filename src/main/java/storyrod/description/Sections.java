package storyrod.description;

import java.util.Arrays;
import java.util.List;
import storyrod.description.Description.ItemKind;
import storyrod.description.Description.StockKind;
import storyrod.description.ValueType.Allowance;
import storyrod.description.ValueType.Amount;
import storyrod.description.ValueType.AxisName;
import storyrod.description.ValueType.Choice;
import storyrod.description.ValueType.Count;
import storyrod.description.ValueType.Cuts;
import storyrod.description.ValueType.DateValue;
import storyrod.description.ValueType.Fraction;
import storyrod.description.ValueType.ItemName;
import storyrod.description.ValueType.Joints;
import storyrod.description.ValueType.LengthValue;
import storyrod.description.ValueType.Lengths;
import storyrod.description.ValueType.Listed;
import storyrod.description.ValueType.Named;
import storyrod.description.ValueType.Notes;
import storyrod.description.ValueType.Numbers;
import storyrod.description.ValueType.OneOrMore;
import storyrod.description.ValueType.Orders;
import storyrod.description.ValueType.PartName;
import storyrod.description.ValueType.PriceValue;
import storyrod.description.ValueType.RangeValue;
import storyrod.description.ValueType.Section;
import storyrod.description.ValueType.SheetSizeValue;
import storyrod.description.ValueType.StockName;
import storyrod.description.ValueType.Text;
import storyrod.description.ValueType.YesNo;

/** All sections of a description with their keys; the reader and the reference read these lists. */
public final class Sections {
  private static final Text TEXT = new Text();
  private static final LengthValue LENGTH = new LengthValue(false);
  private static final Allowance ALLOWANCE = new Allowance();
  private static final RangeValue RANGE = new RangeValue();

  public static final EntryType STOCK =
      new EntryType(
          "stock",
          "A wood or sheet that parts are cut from.",
          List.of(
              Key.required("kind", new Choice(words(StockKind.values())), "Boards or sheets."),
              Key.required("species", TEXT, "The wood, or what the sheet is made of."),
              Key.required("thickness", LENGTH, "How thick the finished parts are."),
              Key.optional("bought-as", LENGTH, "How thick boards are when bought."),
              Key.optional("sheet", new SheetSizeValue(), "Along the face grain x across it."),
              Key.optional("price", new PriceValue(), "An amount per board-foot or per sheet."),
              Key.optional("density", new Amount(), "In kg/m³, if it is not the usual one."),
              Key.optional("grained", new YesNo(), "Whether parts must follow its grain.")
                  .standard("yes")));

  public static final EntryType ITEM =
      new EntryType(
          "item",
          "An item of hardware with the sizes that matter.",
          List.of(
              Key.required("kind", new Choice(words(ItemKind.values())), "What it is."),
              Key.optional("title", TEXT, "Its name for a reader."),
              Key.optional("length", LENGTH, "How long it is."),
              Key.optional("diameter", LENGTH, "A screw's shank or a pin's body."),
              Key.optional("side-clearance", LENGTH, "What a slide needs beside the drawer."),
              Key.optional("pack", new Count(1), "How many come in a pack.").standard("1"),
              Key.optional("price", new Amount(), "The price of a pack.")));

  public static final EntryType PART =
      new EntryType(
          "part",
          "A part, by where it runs from and to on each axis before joints lengthen it.",
          List.of(
              Key.optional("title", TEXT, "Its name for a reader."),
              Key.required("stock", new StockName(), "What it is cut from."),
              Key.required("x", RANGE, "From where to where it runs, left to right."),
              Key.required("y", RANGE, "From where to where it runs, front to back."),
              Key.required("z", RANGE, "From where to where it runs, upwards."),
              Key.required("grain", new AxisName(), "The axis of its length."),
              Key.optional("say", TEXT, "The maker's own words about it.")));

  public static final EntryType ASSEMBLY =
      new EntryType(
          "assembly",
          "Parts that are built as a unit before they are fitted.",
          List.of(
              Key.optional("title", TEXT, "Its name for a reader."),
              Key.required("parts", new Named(PART), "Its parts."),
              Key.optional("joints", new Joints(), "Its joints."),
              Key.optional("cuts", new Cuts(), "Machining on its parts.")));

  public static final EntryType HARDWARE =
      new EntryType(
          "hardware",
          "Hardware that no joint brings.",
          List.of(
              Key.required("item", new ItemName(), "Which item."),
              Key.optional("count", new Count(1), "How many.").standard("1"),
              Key.optional("parts", new OneOrMore(new PartName()), "What it is fastened to."),
              Key.optional("screw", new ItemName(), "The item that holds it."),
              Key.optional("screws-each", new Count(1), "How many of those hold one."),
              Key.optional("say", TEXT, "The maker's own words about it.")));

  public static final EntryType FINISH =
      new EntryType(
          "finish",
          "What the piece is finished with.",
          List.of(
              Key.required("product", TEXT, "What is put on."),
              Key.optional("coats", new Count(1), "How many coats.").standard("3"),
              Key.optional("dry-hours", new Count(0), "Hours between coats.").standard("24"),
              Key.optional("sand-to", new Count(1), "The last grit before it.").standard("180"),
              Key.optional("tried-on", TEXT, "The wood it was tried on.")));

  public static final EntryType SHOP =
      new EntryType(
          "shop",
          "What the shop's machines and habits are.",
          List.of(
              Key.optional("kerf", ALLOWANCE, "The saw blade's cut.").standard("1/8 in"),
              Key.optional("edge-trim", ALLOWANCE, "Cut off each edge of a sheet first.")
                  .standard("1/4 in", "6 mm"),
              Key.optional("extra-length", ALLOWANCE, "What a rough part is longer.")
                  .standard("1 in"),
              Key.optional("extra-width", ALLOWANCE, "What a rough part is wider.")
                  .standard("1/4 in"),
              Key.optional("planer-width", LENGTH, "The widest board that the planer takes.")
                  .standard("13 in"),
              Key.optional(
                      "waste-percent",
                      new Count(0),
                      "What is bought beyond the rough parts, in per cent.")
                  .standard("20"),
              Key.optional("clamps", new Count(0), "How many clamps there are.").standard("6")));

  public static final EntryType STAGE =
      new EntryType(
          "stage",
          "A stage of the maker's own order.",
          List.of(
              Key.required("stage", TEXT, "The stage's title."),
              Key.optional("order", new Orders(), "What is done to what, in order."),
              Key.optional("say", new Notes(), "The maker's own words, by what they are about.")));

  public static final EntryType PROJECT =
      new EntryType(
          "project",
          "A piece of furniture.",
          List.of(
              Key.required("project", TEXT, "The piece's name."),
              Key.optional("maker", TEXT, "Who designed it."),
              Key.optional("summary", TEXT, "What it is, in a sentence."),
              Key.optional("edition", TEXT, "Which state of the plan this is."),
              Key.optional("date", new DateValue(), "The day of this edition."),
              Key.required("units", new Choice(List.of("inch", "mm")), "The unit of bare numbers."),
              Key.optional("fraction", new Fraction(), "The finest fraction of an inch in print.")
                  .standard("1/32"),
              Key.optional("sizes", new Lengths(), "Lengths with names."),
              Key.optional("numbers", new Numbers(), "Counts and ratios with names."),
              Key.required("stock", new Named(STOCK), "What parts are cut from."),
              Key.optional("items", new Named(ITEM), "Hardware that can be used."),
              Key.optional("parts", new Named(PART), "The parts."),
              Key.optional("assemblies", new Named(ASSEMBLY), "Parts that are built as a unit."),
              Key.optional("joints", new Joints(), "What connects the parts."),
              Key.optional("cuts", new Cuts(), "Machining on the parts."),
              Key.optional("hardware", new Listed(HARDWARE), "Hardware that no joint brings."),
              Key.optional("finish", new Section(FINISH), "What it is finished with."),
              Key.optional("shop", new Section(SHOP), "The shop's machines and habits."),
              Key.optional("build", new Listed(STAGE), "The maker's own order.")));

  /** All of them, the whole before its sections. */
  public static final List<EntryType> ALL =
      List.of(PROJECT, STOCK, ITEM, PART, ASSEMBLY, HARDWARE, FINISH, SHOP, STAGE);

  private Sections() {}

  private static List<String> words(Enum<?>[] values) {
    return Arrays.stream(values).map(Sections::word).toList();
  }

  /** How a description writes one of a closed set of words. */
  static String word(Enum<?> value) {
    return value.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }
}
