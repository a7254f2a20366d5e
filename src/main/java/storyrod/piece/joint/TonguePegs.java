package storyrod.piece.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.Entry;
import storyrod.description.ItemEntry;
import storyrod.description.Key;
import storyrod.description.ValueType;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.measure.Unit;
import storyrod.piece.Blank;
import storyrod.piece.Cut;
import storyrod.piece.JointEffect.CutIn;
import storyrod.piece.Meeting;
import storyrod.piece.Slots;

/**
 * The holes for the pegs of a tongue: round ones in the part that takes it and, in the tongue, a
 * round one in the middle and slots along the end for the outer pegs, so that a wide slab can get
 * wider and narrower. A slot is longer than its peg is thick by 3/8 in or 10 mm if not said (common
 * practice).
 */
record TonguePegs(Meeting meeting, Box tongue) {
  static final Key FROM =
      Key.optional(
          "peg-from",
          new ValueType.FaceWord(),
          "The face from which the pegs go in; then the joint bores their holes, slots in the"
              + " tongue for all but the middle one.");
  static final Key EDGE =
      Key.optional(
          "peg-edge",
          new ValueType.LengthValue(false),
          "From the edges to the outer pegs; spread evenly if not said.");
  static final Key PLAY =
      Key.optional(
          "peg-play",
          new ValueType.Allowance(),
          "How much longer a slot is than its peg; 3/8 in or 10 mm if not said, 0 for holes.");
  static final Key DEPTH =
      Key.optional(
          "peg-depth",
          new ValueType.LengthValue(false),
          "How deep the holes in the other part are; right through if not said.");

  private static final int USUAL = 3;

  /** How many pegs a tongue has that names them. */
  static int count(Entry entry) {
    return entry.find("pegs", Integer.class).orElse(USUAL);
  }

  private Entry entry() {
    return meeting.entry();
  }

  private Face from() {
    return entry().expect("peg-from", Face.class);
  }

  private Length diameter() {
    return meeting.item("peg").flatMap(ItemEntry::diameter).orElseThrow();
  }

  private Axis run() {
    return Axis.other(meeting.axis(), meeting.first().thickness());
  }

  private Length play() {
    boolean isInch = meeting.items().format().unit() == Unit.INCH;
    return entry().findLength("peg-play").orElse(isInch ? Length.inch(3, 8) : Length.mm(10));
  }

  /** From the edge of the first part to the outer pegs. */
  private Length edge() {
    Length width = tongue.size(run());
    return entry().findLength("peg-edge").orElse(new Length(width.ticks() / (2L * count(entry()))));
  }

  /** From peg to peg; the first and the last lie in equal distance from the edges. */
  private Length step() {
    int count = count(entry());
    Length between = tongue.size(run()).minus(edge().times(2));
    return count == 1 ? Length.ZERO : new Length(between.ticks() / (count - 1));
  }

  /** What is wrong with the pegs; nothing where their holes are not asked for. */
  static List<Diagnostic> faults(Meeting meeting) {
    Entry entry = meeting.entry();
    for (String key : List.of("peg-edge", "peg-play", "peg-depth")) {
      if (entry.has(key) && !entry.has("peg-from")) {
        return List.of(
            Diagnostic.error(
                    "tongue-pegs",
                    entry.at(key),
                    "`%s` says nothing without `peg-from`".formatted(key))
                .hint("name the face from which the pegs go in, as in `peg-from: bottom`"));
      }
    }
    return entry.has("peg-from") ? holeFaults(meeting) : List.of();
  }

  private static List<Diagnostic> holeFaults(Meeting meeting) {
    Entry entry = meeting.entry();
    if (meeting.item("peg").flatMap(ItemEntry::diameter).isEmpty()) {
      return List.of(
          Diagnostic.error(
                  "tongue-pegs",
                  entry.at("peg-from"),
                  "the pegs need a diameter before holes can be bored")
              .hint("name under `peg` an item that has a `diameter:`"));
    }
    if (entry.expect("peg-from", Face.class).axis() != meeting.first().thickness()) {
      return List.of(
          Diagnostic.error(
                  "tongue-pegs",
                  entry.at("peg-from"),
                  "pegs go through the thickness of the tongue, and %s has no broad face there"
                      .formatted(meeting.first().name()))
              .hint("name one of its broad faces"));
    }
    if (count(entry) % 2 == 0) {
      return List.of(
          Diagnostic.error(
                  "tongue-pegs",
                  entry.at(entry.has("pegs") ? "pegs" : "peg"),
                  "%d pegs have none in the middle, where the tongue is held"
                      .formatted(count(entry)))
              .hint("take an odd number"));
    }
    return List.of();
  }

  /** What is wrong with where the pegs come to lie. */
  List<Diagnostic> placeFaults() {
    List<Diagnostic> faults = new ArrayList<>();
    Length needed = diameter().plus(play());
    if (count(entry()) > 1
        && (step().isShorterThan(needed) || edge().times(2).isShorterThan(needed))) {
      faults.add(
          Diagnostic.error(
                  "tongue-pegs",
                  entry().at(entry().has("peg-edge") ? "peg-edge" : "peg"),
                  "slots %s long do not fit: the pegs are %s from the edge and %s apart"
                      .formatted(
                          meeting.print(needed), meeting.print(edge()), meeting.print(step())))
              .hint("take fewer pegs, another `peg-edge` or less `peg-play`"));
    }
    if (!diameter().isShorterThan(tongue.size(meeting.axis()))) {
      faults.add(
          Diagnostic.error(
                  "tongue-pegs",
                  entry().at("peg"),
                  "pegs of %s leave nothing of a tongue %s long"
                      .formatted(
                          meeting.print(diameter()), meeting.print(tongue.size(meeting.axis()))))
              .hint("take thinner pegs, or a longer tongue"));
    }
    Length have = meeting.second().box().size(from().axis());
    if (entry().findLength("peg-depth").filter(d -> !d.isShorterThan(have)).isPresent()) {
      faults.add(
          Diagnostic.error(
                  "tongue-pegs",
                  entry().at("peg-depth"),
                  "%s is only %s thick".formatted(meeting.second().name(), meeting.print(have)))
              .hint("make the holes less deep, or leave `peg-depth` out: then they go through"));
    }
    return faults;
  }

  List<CutIn> cuts() {
    int count = count(entry());
    List<CutIn> cuts = new ArrayList<>();
    Blank second = meeting.second();
    Optional<Length> depth = entry().findLength("peg-depth");
    cuts.add(
        new CutIn(
            second.name(),
            holes(
                second,
                0,
                count,
                depth.orElse(second.box().size(from().axis())),
                depth.isEmpty())));
    int side = (count - 1) / 2;
    boolean isSlotted = side > 0 && play().isPositive();
    Length thick = meeting.first().box().size(from().axis());
    cuts.add(
        new CutIn(
            meeting.first().name(),
            isSlotted
                ? holes(meeting.first(), side, 1, thick, true)
                : holes(meeting.first(), 0, count, thick, true)));
    if (isSlotted) {
      cuts.add(new CutIn(meeting.first().name(), slots(0, side)));
      cuts.add(new CutIn(meeting.first().name(), slots(side + 1, side)));
    }
    return cuts;
  }

  /** The middle of one peg, on a part's face. */
  private Point place(Blank part, int number) {
    Range reach = tongue.on(meeting.axis());
    return Point.ORIGIN
        .with(from().axis(), part.box().at(from()))
        .with(meeting.axis(), reach.middle())
        .with(run(), tongue.on(run()).from().plus(edge()).plus(step().times(number)));
  }

  private Cut.Holes holes(Blank part, int number, int count, Length depth, boolean through) {
    return new Cut.Holes(
        "peg hole",
        from(),
        place(part, number),
        run(),
        count == 1 ? Length.ZERO : step(),
        count,
        diameter(),
        depth,
        through,
        Optional.of(entry().text("peg")),
        entry().at());
  }

  private Slots slots(int number, int count) {
    Blank part = meeting.first();
    return new Slots(
        "peg slot",
        Slots.Form.ROUND_ENDS,
        from(),
        place(part, number),
        run(),
        count == 1 ? Length.ZERO : step(),
        count,
        new Slots.Size(diameter().plus(play()), diameter(), part.box().size(from().axis())),
        true,
        Optional.of(entry().text("peg")),
        entry().at());
  }
}
