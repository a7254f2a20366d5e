package storyrod.piece.joint;

import java.util.List;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.Entry;
import storyrod.description.ItemEntry;
import storyrod.description.ItemKind;
import storyrod.geometry.Axis;
import storyrod.measure.Length;
import storyrod.piece.Blank;
import storyrod.piece.Meeting;

/** What can be wrong with dowels, biscuits and loose tenons where they are to lie. */
final class InsertFaults {
  private InsertFaults() {}

  static List<Diagnostic> count(Meeting meeting) {
    Entry entry = meeting.entry();
    if (entry.has("count") || entry.has("spacing")) {
      return List.of();
    }
    return List.of(
        Diagnostic.error(
                "insert-count", entry.at(), "these %s have no number".formatted(entry.kind()))
            .hint("say `count`, or `spacing`, or both"));
  }

  static Diagnostic nothingLeft(Meeting meeting, ItemEntry item, Blank part) {
    return Diagnostic.error(
            "insert-breaks-out",
            meeting.entry().at("depth-into"),
            "nothing of %s is left to lie in %s".formatted(item.name(), part.name()))
        .hint("let it go less deep into the other part, or give it more room");
  }

  static Diagnostic breaksOut(
      Meeting meeting, ItemEntry item, Blank part, Length depth, boolean canSay) {
    return Diagnostic.error(
            "insert-breaks-out",
            meeting.entry().at(Inserted.key(item.kind())),
            "the %s for %s would be %s deep in %s, which is only %s there"
                .formatted(
                    item.kind() == ItemKind.DOWEL ? "hole" : "slot",
                    item.name(),
                    meeting.print(depth),
                    part.name(),
                    meeting.print(part.box().size(meeting.axis()))))
        .also(part.at(), part.name() + " is defined here")
        .hint(
            canSay
                ? "take a shorter one, or say with `depth-into` how deep it lies in each"
                : "take a smaller one");
  }

  static Diagnostic crowded(Meeting meeting, Length each, Length spacing) {
    return Diagnostic.error(
            "insert-outside",
            meeting.entry().at(),
            "%s, each %s long with its room, run into each other at a spacing of %s"
                .formatted(meeting.entry().kind(), meeting.print(each), meeting.print(spacing)))
        .hint("take fewer, or a wider spacing");
  }

  static Optional<Diagnostic> tooLong(Meeting meeting, Length needed, Axis axis, String what) {
    Length have = meeting.contact().size(axis);
    if (!needed.isLongerThan(have)) {
      return Optional.empty();
    }
    return Optional.of(
        Diagnostic.error(
                "insert-outside",
                meeting.entry().at(),
                "%s of %s needs %s on %s, but %s and %s meet only over %s"
                    .formatted(
                        what,
                        meeting.entry().kind(),
                        meeting.print(needed),
                        axis.word(),
                        meeting.first().name(),
                        meeting.second().name(),
                        meeting.print(have)))
            .also(meeting.first().at(), meeting.first().name() + " is defined here")
            .hint("take a smaller size, fewer of them or a closer spacing"));
  }
}
