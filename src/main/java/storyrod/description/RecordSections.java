package storyrod.description;

import java.util.List;
import storyrod.description.ValueType.Amount;
import storyrod.description.ValueType.Choice;
import storyrod.description.ValueType.Count;
import storyrod.description.ValueType.DateValue;
import storyrod.description.ValueType.LengthValue;
import storyrod.description.ValueType.Listed;
import storyrod.description.ValueType.PartName;
import storyrod.description.ValueType.StockName;
import storyrod.description.ValueType.Text;

/** The keys of what is written down while a piece is made, and afterwards. */
final class RecordSections {
  private static final Text TEXT = new Text();
  private static final LengthValue LENGTH = new LengthValue(false);
  private static final Count NUMBER = new Count(1);
  private static final DateValue DATE = new DateValue();

  public static final EntryType REVISION =
      new EntryType(
          "revision",
          "A change of the plan, with its day.",
          List.of(
              Key.required("date", DATE, "The day of the change."),
              Key.required("change", TEXT, "What is different since then."),
              Key.optional("reason", TEXT, "Why it was changed.")));

  public static final EntryType MADE =
      new EntryType(
          "made",
          "What was really made of a part, or done in a step; it needs a part or a step.",
          List.of(
              Key.optional("part", new PartName(), "The part that was measured."),
              Key.optional("step", NUMBER, "The number of the step that went otherwise."),
              Key.optional("length", LENGTH, "How long the part has become, along its grain."),
              Key.optional("width", LENGTH, "How wide it has become."),
              Key.optional("thickness", LENGTH, "How thick it has become."),
              Key.optional("say", TEXT, "What is otherwise than planned, and why.")));

  public static final EntryType BOARD =
      new EntryType(
          "used-board",
          "A board or sheet that was really used, with its story.",
          List.of(
              Key.required("stock", new StockName(), "What it was used as."),
              Key.optional("count", NUMBER, "How many of them.").standard("1"),
              Key.optional("from", TEXT, "Where it comes from."),
              Key.optional("say", TEXT, "Its story."),
              Key.optional(
                  "moisture", new Amount(), "Its measured moisture, in per cent of the dry wood."),
              Key.optional("date", DATE, "The day on which that was measured."),
              Key.optional("place", TEXT, "Where it was measured.")));

  public static final EntryType TEST_PIECE =
      new EntryType(
          "test-piece",
          "An offcut on which the finish was tried, with the verdict.",
          List.of(
              Key.required("wood", TEXT, "The wood of the offcut."),
              Key.required("product", TEXT, "What was put on."),
              Key.optional("sand-to", NUMBER, "The last grit before it."),
              Key.required("verdict", TEXT, "What was found."),
              Key.optional("date", DATE, "The day of the verdict.")));

  public static final EntryType HOURS =
      new EntryType(
          "spent",
          "The hours that a stage of the work has taken.",
          List.of(
              Key.required("stage", TEXT, "The stage: the maker's own title, or `milling`."),
              Key.required("hours", new Amount(), "How many hours it took."),
              Key.optional("say", TEXT, "What took longer or less, and why.")));

  public static final EntryType PAID =
      new EntryType(
          "paid",
          "What was paid.",
          List.of(
              Key.required("what", new Choice(RecordEntry.GROUPS), "For which group of the list."),
              Key.required("amount", new Amount(), "How much, in the maker's own currency."),
              Key.optional("say", TEXT, "What was bought, and where.")));

  public static final EntryType PHOTO =
      new EntryType(
          "photo",
          "A photo, JPEG or PNG, from the project's folder.",
          List.of(
              Key.required("picture", TEXT, "Where it lies, as seen from the description."),
              Key.required("caption", TEXT, "The line below it."),
              Key.optional(
                  "shows", TEXT, "What can be seen, in words for who cannot; else the caption."),
              Key.optional("part", new PartName(), "The part that it shows."),
              Key.optional("step", NUMBER, "The number of the step that it shows."),
              Key.optional("date", DATE, "The day on which it was taken.")));

  public static final EntryType RECORD =
      new EntryType(
          "record",
          "What was really done, beside what was planned. The edition `record` prints it.",
          List.of(
              Key.optional("revisions", new Listed(REVISION), "How the plan has changed."),
              Key.optional("made", new Listed(MADE), "Sizes measured, and what went otherwise."),
              Key.optional("boards", new Listed(BOARD), "The wood that was really used."),
              Key.optional("test-pieces", new Listed(TEST_PIECE), "How the finish was tried."),
              Key.optional("hours", new Listed(HOURS), "Hours by stage."),
              Key.optional("paid", new Listed(PAID), "What was paid."),
              Key.optional("photos", new Listed(PHOTO), "Photos with captions.")));

  /** All of them, the whole before its sections. */
  static final List<EntryType> ALL =
      List.of(RECORD, REVISION, MADE, BOARD, TEST_PIECE, HOURS, PAID, PHOTO);

  private RecordSections() {}
}
