package storyrod.description;

import java.util.List;
import java.util.stream.Stream;
import storyrod.description.ValueType.Assemblies;
import storyrod.description.ValueType.Choice;
import storyrod.description.ValueType.Condition;
import storyrod.description.ValueType.CurrencyValue;
import storyrod.description.ValueType.Cuts;
import storyrod.description.ValueType.DateValue;
import storyrod.description.ValueType.Fraction;
import storyrod.description.ValueType.Gifts;
import storyrod.description.ValueType.Joints;
import storyrod.description.ValueType.Lengths;
import storyrod.description.ValueType.Listed;
import storyrod.description.ValueType.Named;
import storyrod.description.ValueType.Notes;
import storyrod.description.ValueType.Numbers;
import storyrod.description.ValueType.OneOrMore;
import storyrod.description.ValueType.Orders;
import storyrod.description.ValueType.Others;
import storyrod.description.ValueType.Section;
import storyrod.description.ValueType.SharedSection;
import storyrod.description.ValueType.Text;
import storyrod.description.ValueType.Words;

/** All sections of a description with their keys; the reader and the reference read these lists. */
public final class Sections {
  private static final Text TEXT = new Text();

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
              PartSections.WHEN));

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
              Key.optional(
                  "licence", TEXT, "What a buyer may do with the plan; lines with `licence: |`."),
              Key.optional(
                  "currency",
                  new CurrencyValue(),
                  "What prices are in: a code of ISO 4217 such as `EUR`, or a symbol."),
              Key.required("units", new Choice(List.of("inch", "mm")), "The unit of bare numbers."),
              Key.optional("fraction", new Fraction(), "The finest fraction of an inch in print.")
                  .standard("1/32"),
              Key.optional("sizes", new Lengths(), "Lengths with names."),
              Key.optional("numbers", new Numbers(), "Counts and ratios with names."),
              Key.optional("choices", new Words(), "Choices between words, the usual one first."),
              Key.optional("meets", new Gifts(), "Names for parts outside that it is joined to."),
              Key.optional(
                  "stock", new Named(SupplySections.STOCK), "What its own parts are cut from."),
              Key.optional(
                  "on-hand",
                  new Named(SupplySections.ON_HAND),
                  "Boards and pieces of sheet that are there already."),
              Key.optional("items", new Named(SupplySections.ITEM), "Hardware that can be used."),
              Key.optional("items-from", new OneOrMore(TEXT), "Files with further items."),
              Key.optional("limits", new Listed(LIMIT), "What must hold."),
              Key.optional("options", new Named(OPTION), "Other versions of the piece."),
              Key.optional("parts", new Named(PartSections.PART), "The parts."),
              Key.optional("assemblies", new Assemblies(), "Parts that are built as a unit."),
              Key.optional("joints", new Joints(), "What connects the parts."),
              Key.optional("cuts", new Cuts(), "Machining on the parts."),
              Key.optional(
                  "matches",
                  new Listed(PartSections.MATCH),
                  "Over which parts of its sub-assemblies the grain runs on."),
              Key.optional(
                  "hardware", new Listed(PartSections.HARDWARE), "Hardware that no joint brings."),
              Key.optional(
                  "finish", new Section(SupplySections.FINISH), "What it is finished with."),
              Key.optional(
                  "glue", new Section(SupplySections.GLUE), "What its joints are glued with."),
              Key.optional(
                  "shop",
                  new SharedSection(SupplySections.SHOP),
                  "The shop's machines and habits."),
              Key.optional(
                  "climate",
                  new Section(SupplySections.CLIMATE),
                  "The air of the room it will stand in."),
              Key.optional("build", new Listed(STAGE), "The maker's own order."),
              Key.optional(
                  "record",
                  new Section(RecordSections.RECORD),
                  "What was really done, beside what was planned.")));

  /** All of them, the whole before its sections. */
  public static final List<EntryType> ALL =
      Stream.concat(ofThePlan(), RecordSections.ALL.stream()).toList();

  private static Stream<EntryType> ofThePlan() {
    return Stream.of(
        PROJECT,
        SupplySections.STOCK,
        SupplySections.ON_HAND,
        SupplySections.DEFECT,
        SupplySections.ITEM,
        PartSections.PART,
        PartSections.TURN,
        PartSections.REPEAT,
        PartSections.ASSEMBLY,
        PartSections.QUARTER_TURN,
        PartSections.HARDWARE,
        PartSections.MATCH,
        LIMIT,
        OPTION,
        SupplySections.FINISH,
        SupplySections.LAST_COAT,
        SupplySections.SANDPAPER,
        SupplySections.GLUE,
        SupplySections.SHOP,
        SupplySections.CLIMATE,
        STAGE);
  }

  private Sections() {}
}
