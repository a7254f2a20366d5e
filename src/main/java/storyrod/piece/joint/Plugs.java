package storyrod.piece.joint;

import java.util.List;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.description.Key;
import storyrod.description.ValueType;
import storyrod.measure.Length;
import storyrod.measure.Unit;
import storyrod.piece.Meeting;

/**
 * Counterbores over screws that plugs of wood close. They are 1/4 in or 6 mm deep if not said
 * (common practice).
 */
final class Plugs {
  static final Key PLUG =
      Key.optional(
          "plug",
          new ValueType.ItemName(),
          "The plugs over their heads, which lie in counterbores.");
  static final Key DEPTH =
      Key.optional(
          "plug-depth",
          new ValueType.LengthValue(false),
          "How deep the counterbores are; 1/4 in or 6 mm if not said.");

  private Plugs() {}

  static Optional<ItemEntry> item(Meeting meeting) {
    return meeting.item("plug");
  }

  /** How deep the heads are sunk; nothing without plugs. */
  static Length depth(Meeting meeting) {
    if (item(meeting).isEmpty()) {
      return Length.ZERO;
    }
    boolean isInch = meeting.items().format().unit() == Unit.INCH;
    return meeting
        .entry()
        .findLength("plug-depth")
        .orElse(isInch ? Length.inch(1, 4) : Length.mm(6));
  }

  /** What keeps plugs from closing over a screw. */
  static List<Diagnostic> faults(Meeting meeting, ItemEntry screw) {
    if (item(meeting).isEmpty()) {
      return meeting.entry().has("plug-depth") ? List.of(noPlug(meeting)) : List.of();
    }
    ItemEntry plug = item(meeting).get();
    if (plug.kind() != ItemKind.PLUG || plug.diameter().isEmpty()) {
      return List.of(noSize(meeting, plug));
    }
    if (meeting.askew().isPresent() || meeting.entry().yes("countersink", false)) {
      return List.of(notBoth(meeting));
    }
    if (plug.diameter().get().isShorterThan(Screws.head(screw))) {
      return List.of(tooNarrow(meeting, plug, screw));
    }
    Length have = Screws.passed(meeting, Screws.housed(meeting, meeting.touched()));
    return depth(meeting).isShorterThan(have) ? List.of() : List.of(tooDeep(meeting, have));
  }

  private static Diagnostic noPlug(Meeting meeting) {
    return Diagnostic.error(
            "screw-plug",
            meeting.entry().at("plug-depth"),
            "`plug-depth` says nothing without `plug`")
        .hint("name the plugs, as in `plug: plug-3-8`");
  }

  private static Diagnostic noSize(Meeting meeting, ItemEntry plug) {
    return Diagnostic.error(
            "screw-plug",
            meeting.entry().at("plug"),
            "%s is no plug with a diameter".formatted(plug.name()))
        .also(plug.at(), plug.name() + " is defined here")
        .hint("name an item with `kind: plug` and a `diameter:`, such as plug-3-8");
  }

  private static Diagnostic notBoth(Meeting meeting) {
    return Diagnostic.error(
            "screw-plug",
            meeting.entry().at("plug"),
            meeting.askew().isPresent()
                ? "plugs are known only over screws between parts that stand square to each other"
                : "a head under a plug lies on the bottom of its counterbore and has no countersink")
        .hint("leave one of the two out");
  }

  private static Diagnostic tooNarrow(Meeting meeting, ItemEntry plug, ItemEntry screw) {
    return Diagnostic.error(
            "screw-plug",
            meeting.entry().at("plug"),
            "the head of %s is %s wide and does not go into a counterbore of %s"
                .formatted(
                    screw.name(),
                    meeting.print(Screws.head(screw)),
                    meeting.print(plug.diameter().orElseThrow())))
        .also(plug.at(), plug.name() + " is defined here")
        .hint("take a wider plug, or a thinner screw");
  }

  private static Diagnostic tooDeep(Meeting meeting, Length have) {
    return Diagnostic.error(
            "screw-plug",
            meeting.entry().at("plug"),
            "a counterbore %s deep goes right through %s, which is %s thick there"
                .formatted(
                    meeting.print(depth(meeting)), meeting.first().name(), meeting.print(have)))
        .hint("make it less deep with `plug-depth`");
  }
}
