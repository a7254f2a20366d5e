package storyrod.piece.joint;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.description.EntryType;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.description.Key;
import storyrod.description.ValueType;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.Unit;
import storyrod.piece.Blank;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Joint.ItemCount;
import storyrod.piece.JointEffect;
import storyrod.piece.JointEffect.CutIn;
import storyrod.piece.JointType;
import storyrod.piece.Meeting;

/**
 * A joint in which two parts meet bluntly and a row of equal pieces, dowels or the like, lies half
 * in one and half in the other. The row runs along the contact, in the middle of its thickness.
 */
abstract class Inserted implements JointType {
  static final Key COUNT =
      Key.optional(
          "count", new ValueType.Count(1), "How many, spread evenly if no `spacing` is said.");
  static final Key SPACING =
      Key.optional(
          "spacing",
          new ValueType.LengthValue(false),
          "From middle to middle; without `count` as many as there is room for.");
  static final Key DEPTH_INTO =
      Key.optional(
          "depth-into",
          new ValueType.LengthValue(false),
          "How deep it lies in the part that takes it; half of its length if not said.");
  static final Key ROOM =
      Key.optional(
          "room",
          new ValueType.Allowance(),
          "How much deeper each hole is, for the glue; 1/16 in or 1.5 mm if not said.");

  private final EntryType words;
  private final ItemKind kind;

  Inserted(ItemKind kind, String name, String summary, Key... more) {
    this.kind = kind;
    this.words =
        new EntryType(
            name,
            summary,
            Stream.of(
                    Stream.of(JointKeys.END, JointKeys.INTO),
                    Stream.of(JointKeys.item(key(kind), "The item of hardware.")),
                    Stream.of(COUNT, SPACING),
                    Stream.of(more),
                    Stream.of(JointKeys.GLUE))
                .flatMap(each -> each)
                .toList());
  }

  /** A row of places for one of the two parts: how deep, and from which face. */
  record Row(
      Blank part, Face from, Point first, Axis along, Length step, int count, Length depth) {}

  /** The sizes that the item must have, by their keys. */
  abstract List<Sized> sizes(ItemEntry item);

  /** A size that a kind of item has, by its key. */
  record Sized(String key, Optional<Length> size) {}

  /** How far a hole or a slot reaches along the row. */
  abstract Length alongRow(ItemEntry item);

  /** How far it reaches across the row. */
  abstract Length acrossRow(ItemEntry item);

  /** How deep the hole or slot in one of the two parts is. */
  abstract Length depth(Meeting meeting, ItemEntry item, boolean inSecond);

  /** The holes or slots of one part. */
  abstract Cut cut(Meeting meeting, ItemEntry item, Row row);

  @Override
  public EntryType words() {
    return words;
  }

  static String key(ItemKind kind) {
    return kind == ItemKind.LOOSE_TENON ? "tenon" : word(kind);
  }

  private static String word(ItemKind kind) {
    return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  @Override
  public JointEffect effect(Meeting meeting) {
    ItemEntry item = meeting.item(key(kind)).orElseThrow();
    List<Diagnostic> faults =
        new ArrayList<>(JointKeys.squareOnly(meeting, "write `screws`, or `butt` with glue"));
    faults.addAll(itemFaults(meeting, item));
    faults.addAll(InsertFaults.count(meeting));
    if (faults.isEmpty()) {
      faults.addAll(depthFaults(meeting, item));
      faults.addAll(placeFaults(meeting, item));
    }
    boolean isSound = faults.isEmpty();
    int count = isSound ? count(meeting) : 1;
    Joint joint =
        JointKeys.fastened(
            meeting,
            meeting.entry().yes("glue", false),
            List.of(new ItemCount(item.name(), count)),
            Optional.empty());
    return new JointEffect(isSound ? cuts(meeting, item) : List.of(), joint, faults);
  }

  private List<CutIn> cuts(Meeting meeting, ItemEntry item) {
    Row first = row(meeting, item, false);
    Row second = row(meeting, item, true);
    return List.of(
        new CutIn(first.part().name(), cut(meeting, item, first)),
        new CutIn(second.part().name(), cut(meeting, item, second)));
  }

  private Row row(Meeting meeting, ItemEntry item, boolean inSecond) {
    Axis along = meeting.longerAxis();
    Axis across = Axis.other(along, meeting.axis());
    Range whole = meeting.contact().on(along);
    int count = count(meeting);
    Length step = step(meeting);
    Length half = step.times(count - 1L).dividedBy(2, RoundingMode.FLOOR);
    Point first =
        Point.ORIGIN
            .with(meeting.axis(), meeting.contact().on(meeting.axis()).from())
            .with(across, meeting.contact().on(across).middle())
            .with(along, whole.middle().minus(half));
    return new Row(
        inSecond ? meeting.second() : meeting.first(),
        inSecond ? meeting.touched() : meeting.face(),
        first,
        along,
        step,
        count,
        depth(meeting, item, inSecond));
  }

  /** As said, or as many as there is room for with half of the spacing left at both ends. */
  private static int count(Meeting meeting) {
    Length width = meeting.contact().size(meeting.longerAxis());
    return meeting
        .entry()
        .find("count", Integer.class)
        .orElseGet(
            () -> (int) Math.max(1, width.ticks() / meeting.entry().length("spacing").ticks()));
  }

  private static Length step(Meeting meeting) {
    int count = count(meeting);
    if (count == 1) {
      return Length.ZERO;
    }
    Length width = meeting.contact().size(meeting.longerAxis());
    return meeting
        .entry()
        .findLength("spacing")
        .orElseGet(() -> width.dividedBy(count, RoundingMode.HALF_EVEN));
  }

  /** How deep a piece of some length lies in one of the parts, with its room for glue. */
  static Length share(Meeting meeting, ItemEntry item, boolean inSecond) {
    Length length = item.length().orElseThrow();
    Length into =
        meeting
            .entry()
            .findLength("depth-into")
            .orElseGet(() -> length.dividedBy(2, RoundingMode.HALF_EVEN));
    return (inSecond ? into : length.minus(into)).plus(room(meeting));
  }

  private static Length room(Meeting meeting) {
    boolean isInch = meeting.items().format().unit() == Unit.INCH;
    return meeting
        .entry()
        .findLength("room")
        .orElse(isInch ? Length.inch(1, 16) : Length.micrometres(1500));
  }

  private List<Diagnostic> itemFaults(Meeting meeting, ItemEntry item) {
    if (item.kind() != kind) {
      return List.of(
          Diagnostic.error(
                  "insert-kind",
                  meeting.entry().at(key(kind)),
                  "%s is a %s, not a %s".formatted(item.name(), word(item.kind()), word(kind)))
              .also(item.at(), item.name() + " is defined here")
              .hint("name an item of `kind: %s`".formatted(word(kind))));
    }
    List<String> missing =
        sizes(item).stream()
            .filter(each -> each.size().isEmpty())
            .map(each -> "`" + each.key() + ":`")
            .toList();
    return missing.isEmpty()
        ? List.of()
        : List.of(
            Diagnostic.error(
                    "item-without-size",
                    meeting.entry().at(key(kind)),
                    "%s needs more sizes before room for it can be cut".formatted(item.name()))
                .also(item.at(), item.name() + " is defined here")
                .hint("add %s to the item".formatted(String.join(" and ", missing))));
  }

  private List<Diagnostic> depthFaults(Meeting meeting, ItemEntry item) {
    List<Diagnostic> faults = new ArrayList<>();
    for (boolean inSecond : new boolean[] {false, true}) {
      Blank part = inSecond ? meeting.second() : meeting.first();
      Length depth = depth(meeting, item, inSecond);
      Length have = part.box().size(meeting.axis());
      if (!depth.isPositive()) {
        faults.add(InsertFaults.nothingLeft(meeting, item, part));
      } else if (!depth.isShorterThan(have)) {
        faults.add(
            InsertFaults.breaksOut(meeting, item, part, depth, words.keys().contains(DEPTH_INTO)));
      }
    }
    return faults;
  }

  private List<Diagnostic> placeFaults(Meeting meeting, ItemEntry item) {
    Axis along = meeting.longerAxis();
    Length row = step(meeting).times(count(meeting) - 1L).plus(alongRow(item));
    List<Diagnostic> faults = new ArrayList<>();
    InsertFaults.tooLong(meeting, row, along, "a row").ifPresent(faults::add);
    InsertFaults.tooLong(
            meeting, acrossRow(item), Axis.other(along, meeting.axis()), "a hole or slot")
        .ifPresent(faults::add);
    if (count(meeting) > 1 && step(meeting).isShorterThan(alongRow(item))) {
      faults.add(InsertFaults.crowded(meeting, alongRow(item), step(meeting)));
    }
    return faults;
  }
}
