package storyrod.piece.joint;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.Entry;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.description.Key;
import storyrod.description.ValueType;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Meeting;
import storyrod.piece.Slots;
import storyrod.piece.TrenchRole;

/**
 * Slots in a rail in which the tongues of top fasteners slide: a groove right along it, or one slot
 * for each. A slot is as wide as the item's tongue, or one saw kerf of 1/8 in, and a biscuit's 4 mm
 * where it is plunged; 1/2 in deep, if neither the item nor the joint says (common practice).
 */
record TopSlots(Meeting meeting, Face side, ItemEntry fastener) {
  static final Key SLOTS =
      Key.optional(
              "slots",
              new ValueType.Choice(List.of("groove", "mortises", "plunged")),
              "A groove right along the rail, or one slot for each: routed, or by a biscuit joiner.")
          .standard("groove");
  static final Key DEPTH =
      Key.optional(
          "slot-depth",
          new ValueType.LengthValue(false),
          "How deep the slot is; 1/2 in, or a little deeper than the tongue of a button.");
  static final Key LENGTH =
      Key.optional(
          "slot-length",
          new ValueType.LengthValue(false),
          "With `mortises`: how long each is; the fastener's width and its travel if not said.");

  private static final Length KERF = Length.inch(1, 8);
  private static final Length USUAL_DEPTH = Length.inch(1, 2);
  private static final Length BISCUIT = Length.mm(4);
  private static final Length DISC = Length.mm(100);

  /** Room before the end of a button's tongue. */
  private static final Length BEFORE_TONGUE = Length.inch(1, 16);

  /** A button pulls if its tongue lies this much nearer to the top than its slot, or less. */
  private static final Length MOST_PULL = Length.inch(1, 8);

  private boolean isGroove() {
    return how().equals("groove");
  }

  private String how() {
    return meeting.entry().find("slots", String.class).orElse("groove");
  }

  private Length width() {
    Length tongue = fastener.sizes().tongueThickness().orElse(KERF);
    return how().equals("plunged") ? BISCUIT : tongue;
  }

  private Length depth() {
    Optional<Length> tongue =
        fastener.kind() == ItemKind.BUTTON ? fastener.sizes().tongue() : Optional.empty();
    return meeting
        .entry()
        .findLength("slot-depth")
        .orElse(tongue.map(BEFORE_TONGUE::plus).orElse(USUAL_DEPTH));
  }

  private Length length() {
    if (how().equals("plunged")) {
      return Slots.plungedLength(DISC, depth());
    }
    Length item =
        fastener
            .sizes()
            .width()
            .orElse(Length.ZERO)
            .plus(fastener.sizes().travel().orElse(Length.ZERO));
    return meeting.entry().findLength("slot-length").orElse(item);
  }

  private Axis along() {
    return Axis.other(meeting.axis(), side.axis());
  }

  private Box rail() {
    return meeting.second().box();
  }

  /** Where the slot lies in the height of the rail. */
  private Range height() {
    Face up = meeting.touched();
    Length first = rail().at(up).minus(meeting.entry().length("slot-from-top").times(up.sign()));
    Length second = first.minus(width().times(up.sign()));
    return new Range(first.min(second), first.max(second));
  }

  Cut cut() {
    return isGroove() ? groove() : slots();
  }

  private Cut groove() {
    Length surface = rail().at(side);
    Length inside = surface.minus(depth().times(side.sign()));
    Box removed =
        rail()
            .with(meeting.axis(), height())
            .with(side.axis(), new Range(surface.min(inside), surface.max(inside)));
    return TrenchRole.GROOVE.given(
        new Cut.Trench(
            "groove", side, removed, depth(), Optional.of(fastener.name()), meeting.entry().at()));
  }

  private Cut slots() {
    List<Length> places = places();
    return new Slots(
        "fastener slot",
        how().equals("plunged") ? Slots.Form.PLUNGED : Slots.Form.ROUND_ENDS,
        side,
        Point.ORIGIN
            .with(side.axis(), rail().at(side))
            .with(meeting.axis(), height().middle())
            .with(along(), places.getFirst()),
        along(),
        places.size() < 2 ? Length.ZERO : places.get(1).minus(places.get(0)),
        places.size(),
        new Slots.Size(length(), width(), depth()),
        false,
        Optional.of(fastener.name()),
        meeting.entry().at());
  }

  private List<Length> places() {
    return meeting.spread(along(), meeting.entry().count("count"));
  }

  List<Diagnostic> faults() {
    List<Diagnostic> faults = new ArrayList<>();
    Length height = rail().size(meeting.axis());
    Length needed = meeting.entry().length("slot-from-top").plus(width());
    if (!needed.isShorterThan(height) || !depth().isShorterThan(rail().size(side.axis()))) {
      faults.add(outside(height));
    }
    lengthFault().ifPresent(faults::add);
    buttonFault().ifPresent(faults::add);
    return faults;
  }

  private Diagnostic outside(Length height) {
    return Diagnostic.error(
            "slot-outside",
            meeting.entry().at("slot-from-top"),
            "a slot %s from the top of %s does not fit: the rail is %s high there"
                .formatted(
                    meeting.print(meeting.entry().length("slot-from-top")),
                    meeting.second().name(),
                    meeting.print(height)))
        .hint("move the slot up, or make the rail higher");
  }

  private Optional<Diagnostic> lengthFault() {
    Entry entry = meeting.entry();
    if (isGroove() || how().equals("plunged")) {
      return entry.has("slot-length") ? Optional.of(uselessLength()) : Optional.empty();
    }
    Length share =
        meeting.contact().size(along()).dividedBy(entry.count("count"), RoundingMode.FLOOR);
    if (length().isLongerThan(width()) && length().isShorterThan(share)) {
      return Optional.empty();
    }
    return Optional.of(
        Diagnostic.error(
                "top-slot",
                entry.at(entry.has("slot-length") ? "slot-length" : "slots"),
                "a slot %s wide and %s long does not fit: there are %s of the rail for each"
                    .formatted(
                        meeting.print(width()), meeting.print(length()), meeting.print(share)))
            .hint("say another `slot-length`, or take fewer fasteners"));
  }

  private Diagnostic uselessLength() {
    return Diagnostic.error(
            "top-slot",
            meeting.entry().at("slot-length"),
            "`slot-length` says nothing of a slot that is a %s"
                .formatted(isGroove() ? "groove" : "plunge"))
        .hint("write `slots: mortises`, or leave it out");
  }

  /** The tongue of a button bears on the upper wall of its slot just before the block is home. */
  private Optional<Diagnostic> buttonFault() {
    Optional<Length> below =
        fastener
            .sizes()
            .thickness()
            .flatMap(all -> fastener.sizes().tongueThickness().map(all::minus))
            .filter(each -> fastener.kind() == ItemKind.BUTTON);
    Length slot = meeting.entry().length("slot-from-top");
    if (below.isEmpty()
        || slot.isLongerThan(below.get()) && !slot.minus(below.get()).isLongerThan(MOST_PULL)) {
      return Optional.empty();
    }
    return Optional.of(
        Diagnostic.warning(
                "button-pull",
                meeting.entry().at("slot-from-top"),
                "the slot lies %s below the top and the tongue of %s %s: it would %s"
                    .formatted(
                        meeting.print(slot),
                        fastener.name(),
                        meeting.print(below.get()),
                        slot.isLongerThan(below.get()) ? "stand askew" : "not pull the top down"))
            .also(fastener.at(), fastener.name() + " is defined here")
            .hint(
                "let the slot lie a little lower than the tongue, as 1/32 to 1/16 in (common"
                    + " practice)"));
  }
}
