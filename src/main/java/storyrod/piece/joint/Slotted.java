package storyrod.piece.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.description.Diagnostic;
import storyrod.description.Entry;
import storyrod.description.EntryType;
import storyrod.description.Key;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Range;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Extension;
import storyrod.piece.JointEffect;
import storyrod.piece.JointEffect.CutIn;
import storyrod.piece.JointType;
import storyrod.piece.Meeting;
import storyrod.piece.TrenchRole;

/** A joint in which the end of one part fills a slot right across the other. */
abstract class Slotted implements JointType {
  private final EntryType words;

  Slotted(String name, String summary, Key... more) {
    words =
        new EntryType(
            name,
            summary,
            Stream.concat(
                    Stream.of(JointKeys.END, JointKeys.INTO, JointKeys.DEPTH, JointKeys.GLUE),
                    Stream.of(more))
                .toList());
  }

  /** What else must hold for this kind of slot. */
  abstract List<Diagnostic> placeFaults(Meeting meeting, Box slot);

  /** The trade's word for the slot. */
  String term(Meeting meeting) {
    return words.name();
  }

  /** What the slot is for; that stays, whatever the grain makes of its word. */
  abstract TrenchRole role(Meeting meeting);

  /**
   * A dado runs across the grain, a groove along it (common practice), whichever word the joint was
   * written by; that stays for a slot in an end, which runs neither way.
   */
  String byGrain(Meeting meeting) {
    Axis run = Axis.other(meeting.axis(), meeting.first().thickness());
    Axis grain = meeting.second().length();
    if (meeting.axis() == grain) {
      return words.name();
    }
    return run == grain ? "groove" : "dado";
  }

  /** What the end stays clear of the bottom of the slot. */
  Length room(Entry entry, Pair parts) {
    return Length.ZERO;
  }

  /** What the slot takes away, where both parts are square. */
  Box slot(Meeting meeting) {
    return meeting.slot(meeting.entry().length("depth"));
  }

  /** What is cut in the part that goes in, where both parts are square. */
  List<CutIn> cutsInFirst(Meeting meeting) {
    return List.of();
  }

  @Override
  public EntryType words() {
    return words;
  }

  @Override
  public List<Extension> extensions(Entry entry, Pair parts) {
    Length reach = entry.length("depth").minus(room(entry, parts));
    return List.of(new Extension(entry.face("end"), reach.max(Length.ZERO)));
  }

  @Override
  public JointEffect effect(Meeting meeting) {
    return meeting
        .askew()
        .map(askew -> new LeaningSlot(meeting, askew, words.name()).effect())
        .orElseGet(() -> square(meeting));
  }

  private JointEffect square(Meeting meeting) {
    Entry entry = meeting.entry();
    if (meeting.axis() == meeting.first().thickness()) {
      boolean glued = entry.yes("glue", false);
      return new JointEffect(
          List.of(), JointKeys.plain(meeting, glued), List.of(wideFace(meeting)));
    }
    Box slot = slot(meeting);
    Cut cut =
        role(meeting)
            .given(
                new Cut.Trench(
                    term(meeting),
                    meeting.touched(),
                    slot,
                    entry.length("depth"),
                    Optional.of(meeting.first().name()),
                    entry.at()));
    List<Diagnostic> faults =
        Stream.of(
                meeting.depthFaults("depth", entry.length("depth")),
                JointKeys.roomFaults(meeting),
                placeFaults(meeting, slot))
            .flatMap(List::stream)
            .toList();
    boolean glued = entry.yes("glue", false);
    List<CutIn> cuts = new ArrayList<>(cutsInFirst(meeting));
    cuts.add(new CutIn(meeting.second().name(), cut));
    return new JointEffect(cuts, JointKeys.plain(meeting, glued), faults);
  }

  /** A slot takes an end or an edge; a wide face in it is mostly a joint the wrong way round. */
  static Diagnostic wideFace(Meeting meeting) {
    String way = meeting.second().name() + "." + meeting.touched().word();
    return Diagnostic.error(
            "slot-takes-end",
            meeting.entry().at("end"),
            "a %s takes an end or an edge, but %s is a wide face"
                .formatted(meeting.entry().kind(), meeting.entry().face("end")))
        .also(meeting.first().at(), meeting.first().name() + " is defined here")
        .hint(
            "is it the wrong way round? write `end: %s, into: %s`"
                .formatted(way, meeting.first().name()));
  }

  /** Whether the slot is open at an edge of the part it is cut in, across its own run. */
  static boolean opensAtAnEdge(Meeting meeting, Box slot) {
    var across = meeting.first().thickness();
    return !leavesWood(slot.on(across), meeting.second().box().on(across));
  }

  /** Whether some wood is left on both sides of what is taken. */
  static boolean leavesWood(Range taken, Range have) {
    return taken.from().isLongerThan(have.from()) && taken.to().isShorterThan(have.to());
  }
}
