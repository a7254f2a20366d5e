package storyrod.description;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import storyrod.description.Description.ItemKind;
import storyrod.description.Description.StockKind;
import storyrod.description.ValueType.Allowance;
import storyrod.description.ValueType.Amount;
import storyrod.description.ValueType.AngleValue;
import storyrod.description.ValueType.Assemblies;
import storyrod.description.ValueType.AxisName;
import storyrod.description.ValueType.Choice;
import storyrod.description.ValueType.Condition;
import storyrod.description.ValueType.Count;
import storyrod.description.ValueType.Cuts;
import storyrod.description.ValueType.DateValue;
import storyrod.description.ValueType.Fraction;
import storyrod.description.ValueType.Gifts;
import storyrod.description.ValueType.ItemName;
import storyrod.description.ValueType.Joints;
import storyrod.description.ValueType.Kinds;
import storyrod.description.ValueType.LengthValue;
import storyrod.description.ValueType.Lengths;
import storyrod.description.ValueType.Listed;
import storyrod.description.ValueType.Named;
import storyrod.description.ValueType.Notes;
import storyrod.description.ValueType.Numbers;
import storyrod.description.ValueType.OneOrMore;
import storyrod.description.ValueType.Orders;
import storyrod.description.ValueType.Others;
import storyrod.description.ValueType.PartLists;
import storyrod.description.ValueType.PartName;
import storyrod.description.ValueType.Place;
import storyrod.description.ValueType.PriceValue;
import storyrod.description.ValueType.RangeValue;
import storyrod.description.ValueType.Section;
import storyrod.description.ValueType.SharedSection;
import storyrod.description.ValueType.SheetSizeValue;
import storyrod.description.ValueType.StockName;
import storyrod.description.ValueType.Text;
import storyrod.description.ValueType.Words;
import storyrod.description.ValueType.YesNo;

/** All sections of a description with their keys; the reader and the reference read these lists. */
public final class Sections {
  private static final Text TEXT = new Text();
  private static final LengthValue LENGTH = new LengthValue(false);
  private static final Allowance ALLOWANCE = new Allowance();
  private static final RangeValue RANGE = new RangeValue();
  private static final String ASSEMBLY_SUMMARY =
      "Parts that are built as a unit before they are fitted: written here, or by `use` a"
          + " description of their own.";

  /** Every part, assembly, joint, cut, item of hardware and limit may have it. */
  public static final Key WHEN =
      Key.optional("when", new Condition(), "The condition under which it is there.");

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
              Key.optional(
                  "diameter", LENGTH, "A screw's shank, the body of a pin, dowel or plug."),
              Key.optional("side-clearance", LENGTH, "What a slide needs beside the drawer."),
              Key.optional("bottom-clearance", LENGTH, "What it needs under the drawer's sides."),
              Key.optional("notch", LENGTH, "From the lower edge of the sides up to the bottom."),
              Key.optional("cup-diameter", LENGTH, "How wide a concealed hinge's cup is."),
              Key.optional("cup-depth", LENGTH, "How deep that cup is let in."),
              Key.optional("cup-edge", LENGTH, "From the door's edge to the rim of the cup."),
              Key.optional("leaf-width", LENGTH, "How wide a butt hinge's leaf is."),
              Key.optional("leaf-thickness", LENGTH, "How deep that leaf is let in."),
              Key.optional("centres", LENGTH, "Between the two holes of a pull."),
              Key.optional("width", LENGTH, "How wide a loose tenon, biscuit or button is."),
              Key.optional("thickness", LENGTH, "How thick it is, or how deep it is let in."),
              Key.optional("tongue", LENGTH, "How far a fastener reaches into its slot."),
              Key.optional("tongue-thickness", LENGTH, "How thick that tongue is."),
              Key.optional("slot-depth", LENGTH, "How deep the slot for a biscuit is."),
              Key.optional("travel", LENGTH, "How far in all the top can move on a fastener."),
              Key.optional("pack", new Count(1), "How many come in a pack.").standard("1"),
              Key.optional("price", new Amount(), "The price of a pack.")));

  public static final EntryType REPEAT =
      new EntryType(
          "repeat",
          "How many of something there are, and the share of the space that each has. Inside it"
              + " `each` is that share, with its faces, and `nth` the number of this one.",
          List.of(
              Key.required("count", new Count(0), "How many; none is possible."),
              Key.optional("along", new AxisName(), "The axis along which they follow each other."),
              Key.optional("over", RANGE, "The space that they share."),
              Key.optional("gap", ALLOWANCE, "Between two that share the space, nothing if left"),
              Key.optional("shorter-by", ALLOWANCE, "What each is shorter than the one before."),
              Key.optional("longer-by", ALLOWANCE, "What each is longer than the one before."),
              Key.optional("size", LENGTH, "Their own size, with equal gaps before and after each"),
              Key.optional("first", new LengthValue(true), "Where the first one begins."),
              Key.optional("step", LENGTH, "From where one begins to where the next begins."),
              Key.optional(
                  "beside",
                  new PartLists(),
                  "Names for the part that stands beside each: the first of its list for the first"
                      + " one, and so on; a repeated part in a list stands for all of it.")));
  public static final EntryType TURN =
      new EntryType(
          "turn",
          "How a part stands that is turned about an axis; its ranges are those before the turn.",
          List.of(
              Key.required("about", new AxisName(), "The axis it is turned about."),
              Key.required(
                  "by",
                  new AngleValue(),
                  "How far: above zero, about y its top goes right, about x its back goes up, about z its right side goes back."),
              Key.required("at", new ValueType.Point(), "A point of the axis.")));

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
              WHEN,
              Key.optional("repeat", new Section(REPEAT), "How many of them there are."),
              Key.optional(
                  "turn", new Section(TURN), "How it is turned, if it does not stand straight."),
              Key.optional(
                  "outline", new Kinds("shape", Outlines.ALL), "Where it is no plain rectangle."),
              Key.optional(
                  "staves",
                  new Count(1),
                  "How many boards of equal width it is glued up from, edge to edge."),
              Key.optional("say", TEXT, "The maker's own words about it.")));

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
              WHEN,
              Key.optional("say", TEXT, "The maker's own words about it.")));

  public static final EntryType QUARTER_TURN =
      new EntryType(
          "turn",
          "How a sub-assembly is turned, by quarter turns; seen with the axis pointing at you,"
              + " counterclockwise.",
          List.of(
              Key.required("about", new AxisName(), "The axis about which it is turned."),
              Key.required("by", new Choice(List.of("90", "180", "270")), "Degrees.")));

  public static final EntryType ASSEMBLY = new EntryType("assembly", ASSEMBLY_SUMMARY, assembly());

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

  public static final EntryType LIMIT =
      new EntryType(
          "limit",
          "What must hold, so that the sizes given to a description make sense.",
          List.of(
              Key.required("that", new Condition(), "The condition."),
              Key.required("say", TEXT, "What is wrong where it does not hold."),
              WHEN));

  public static final EntryType OPTION =
      new EntryType(
          "option",
          "Another version of the piece, by other values for what has a name.",
          List.of(
              Key.optional("say", TEXT, "What it is, in a sentence."),
              Key.optional("sizes", new Others("sizes"), "Other lengths."),
              Key.optional("numbers", new Others("numbers"), "Other counts and ratios."),
              Key.optional("choices", new Others("choices"), "Other words."),
              Key.optional("stock", new Others("stock"), "Other stock, whole or by some keys."),
              Key.optional("items", new Others("items"), "Other items, whole or by some keys.")));

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
              Key.optional("choices", new Words(), "Choices between words, the usual one first."),
              Key.optional("meets", new Gifts(), "Names for parts outside that it is joined to."),
              Key.optional("stock", new Named(STOCK), "What its own parts are cut from."),
              Key.optional("items", new Named(ITEM), "Hardware that can be used."),
              Key.optional("items-from", new OneOrMore(TEXT), "Files with further items."),
              Key.optional("limits", new Listed(LIMIT), "What must hold."),
              Key.optional("options", new Named(OPTION), "Other versions of the piece."),
              Key.optional("parts", new Named(PART), "The parts."),
              Key.optional("assemblies", new Assemblies(), "Parts that are built as a unit."),
              Key.optional("joints", new Joints(), "What connects the parts."),
              Key.optional("cuts", new Cuts(), "Machining on the parts."),
              Key.optional("hardware", new Listed(HARDWARE), "Hardware that no joint brings."),
              Key.optional("finish", new Section(FINISH), "What it is finished with."),
              Key.optional("shop", new SharedSection(SHOP), "The shop's machines and habits."),
              Key.optional("build", new Listed(STAGE), "The maker's own order.")));

  /** All of them, the whole before its sections. */
  public static final List<EntryType> ALL =
      List.of(
          PROJECT,
          STOCK,
          ITEM,
          PART,
          TURN,
          REPEAT,
          ASSEMBLY,
          QUARTER_TURN,
          HARDWARE,
          LIMIT,
          OPTION,
          FINISH,
          SHOP,
          STAGE);

  private Sections() {}

  /** A kind of joint or cut with the key that every one of them may have. */
  static EntryType withCondition(EntryType kind) {
    if (kind.keys().contains(WHEN)) {
      return kind;
    }
    return new EntryType(
        kind.name(), kind.summary(), Stream.concat(kind.keys().stream(), Stream.of(WHEN)).toList());
  }

  private static List<Key> assembly() {
    return List.of(
        Key.optional("title", TEXT, "Its name for a reader."),
        Key.optional("use", TEXT, "The description that it is: one of the tool's, or a file."),
        Key.optional("in", new Place(), "Where what is used lies; a range gives it that extent."),
        Key.optional("with", new Gifts(), "Values for what is used: sizes, stock, items and more."),
        Key.optional("turn", new Section(QUARTER_TURN), "How what is used is turned."),
        Key.optional("mirror", new AxisName(), "The axis along which it is a mirror image."),
        Key.optional("unit", new YesNo(), "Whether it is built first and fitted whole; usually."),
        WHEN,
        Key.optional("repeat", new Section(REPEAT), "How many of them there are."),
        Key.optional("sizes", new Lengths(), "Lengths with names that only it knows."),
        Key.optional("numbers", new Numbers(), "Counts and ratios that only it knows."),
        Key.optional("parts", new Named(PART), "Its parts."),
        Key.optional("assemblies", new Assemblies(), "Parts of it that are built as a unit first."),
        Key.optional("joints", new Joints(), "Its joints."),
        Key.optional("cuts", new Cuts(), "Machining on its parts."),
        Key.optional("hardware", new Listed(HARDWARE), "Its hardware."));
  }

  private static List<String> words(Enum<?>[] values) {
    return Arrays.stream(values).map(Sections::word).toList();
  }

  /** How a description writes one of a closed set of words. */
  static String word(Enum<?> value) {
    return value.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }
}
