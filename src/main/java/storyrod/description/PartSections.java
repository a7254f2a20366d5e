package storyrod.description;

import java.util.List;
import java.util.stream.Stream;
import storyrod.description.ValueType.Allowance;
import storyrod.description.ValueType.AngleValue;
import storyrod.description.ValueType.Assemblies;
import storyrod.description.ValueType.AxisName;
import storyrod.description.ValueType.Choice;
import storyrod.description.ValueType.Condition;
import storyrod.description.ValueType.Count;
import storyrod.description.ValueType.Cuts;
import storyrod.description.ValueType.Gifts;
import storyrod.description.ValueType.ItemName;
import storyrod.description.ValueType.Joints;
import storyrod.description.ValueType.Kinds;
import storyrod.description.ValueType.LengthValue;
import storyrod.description.ValueType.Lengths;
import storyrod.description.ValueType.Listed;
import storyrod.description.ValueType.MassValue;
import storyrod.description.ValueType.Named;
import storyrod.description.ValueType.Numbers;
import storyrod.description.ValueType.OneOrMore;
import storyrod.description.ValueType.PartLists;
import storyrod.description.ValueType.PartName;
import storyrod.description.ValueType.Place;
import storyrod.description.ValueType.RangeValue;
import storyrod.description.ValueType.Section;
import storyrod.description.ValueType.StockName;
import storyrod.description.ValueType.Text;
import storyrod.description.ValueType.YesNo;

/** The keys of what a piece is put together from: parts, hardware and sub-assemblies. */
final class PartSections {
  private static final Text TEXT = new Text();
  private static final LengthValue LENGTH = new LengthValue(false);
  private static final Allowance ALLOWANCE = new Allowance();
  private static final RangeValue RANGE = new RangeValue();

  /** Every part, assembly, joint, cut, item of hardware and limit may have it. */
  public static final Key WHEN =
      Key.optional("when", new Condition(), "The condition under which it is there.");

  public static final EntryType REPEAT =
      new EntryType(
          "repeat",
          "How many of something there are, and the share of the space that each has. Inside it"
              + " `each` is that share, with its faces, and `nth` the number of this one.",
          List.of(
              Key.required("count", new Count(0), "How many; none is possible."),
              Key.optional("along", new AxisName(), "The axis along which they follow each other."),
              Key.optional("over", RANGE, "The space that they share."),
              Key.optional("gap", ALLOWANCE, "What is left free between two that share the space."),
              Key.optional("shorter-by", ALLOWANCE, "What each is shorter than the one before."),
              Key.optional("longer-by", ALLOWANCE, "What each is longer than the one before."),
              Key.optional(
                  "size", LENGTH, "Their own size, with equal gaps before and after each."),
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
              Key.optional(
                  "staves-laid",
                  new Choice(List.of(Makeup.ALTERNATED, Makeup.MATCHED)),
                  "How its staves are turned: their annual rings up and down in turn, or by their"
                      + " looks; in turn if not said, by their looks where the boards are"
                      + " quarter-sawn."),
              Key.optional(
                      "layers",
                      new Count(1),
                      "How many boards, as thick as its stock is bought, it is glued up from, face to"
                          + " face.")
                  .standard("1"),
              Key.optional(
                  "match",
                  TEXT,
                  "A word of your own: parts with the same one are cut from one board or sheet side"
                      + " by side or end to end, as they lie in the piece, so that the grain runs"
                      + " on over them."),
              Key.optional("load", new MassValue(), "What it has to carry, spread over it."),
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

  public static final EntryType MATCH =
      new EntryType(
          "match",
          "Parts that are cut from one board or sheet side by side or end to end, so that the grain"
              + " runs on over them; for parts of sub-assemblies, which have no `match` of their own.",
          List.of(Key.required("parts", new OneOrMore(new PartName()), "Which parts."), WHEN));

  public static final EntryType QUARTER_TURN =
      new EntryType(
          "turn",
          "How a sub-assembly is turned, by quarter turns; seen with the axis pointing at you,"
              + " counterclockwise.",
          List.of(
              Key.required("about", new AxisName(), "The axis about which it is turned."),
              Key.required("by", new Choice(List.of("90", "180", "270")), "Degrees.")));

  private static final String ASSEMBLY_SUMMARY =
      "Parts that are built as a unit before they are fitted: written here, or by `use` a"
          + " description of their own.";

  public static final EntryType ASSEMBLY = new EntryType("assembly", ASSEMBLY_SUMMARY, assembly());

  private PartSections() {}

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
        Key.optional(
                "loose",
                new YesNo(),
                "Whether it lies in or on the rest, held by nothing, to lift off.")
            .standard("no"),
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
}
