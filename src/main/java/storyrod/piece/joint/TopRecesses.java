package storyrod.piece.joint;

import java.util.List;
import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.ItemEntry;
import storyrod.geometry.Axis;
import storyrod.geometry.Box;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.measure.Length;
import storyrod.piece.Cut;
import storyrod.piece.Meeting;

/**
 * Recesses for rotating fasteners in the upper edge of a rail, as deep as the fastener is thick. A
 * recess lies with its centre three quarters of its radius from the face to which the fastener
 * swings, so that it is open there by about two thirds of its width (common practice).
 */
record TopRecesses(Meeting meeting, Face side, ItemEntry fastener) {
  /** What has to stay of the rail behind a recess. */
  private static final Length WALL = Length.inch(1, 16);

  Cut cut() {
    Box rail = meeting.second().box();
    Axis along = Axis.other(meeting.axis(), side.axis());
    List<Length> places = meeting.spread(along, meeting.entry().count("count"));
    Length step = places.size() < 2 ? Length.ZERO : places.get(1).minus(places.get(0));
    Point first =
        Point.ORIGIN
            .with(meeting.axis(), rail.at(meeting.touched()))
            .with(side.axis(), rail.at(side).minus(inset().times(side.sign())))
            .with(along, places.getFirst());
    return new Cut.Holes(
        Cut.Holes.OPEN_RECESS,
        meeting.touched(),
        first,
        along,
        step,
        places.size(),
        diameter(),
        fastener.sizes().thickness().orElseThrow(),
        false,
        Optional.of(fastener.name()),
        meeting.entry().at());
  }

  private Length diameter() {
    return fastener.diameter().orElseThrow();
  }

  private Length inset() {
    return new Length(diameter().ticks() * 3 / 8);
  }

  List<Diagnostic> faults() {
    if (fastener.diameter().isEmpty() || fastener.sizes().thickness().isEmpty()) {
      return List.of(
          Diagnostic.error(
                  "item-without-size",
                  meeting.entry().at("fastener"),
                  "%s needs more sizes before a recess for it can be cut"
                      .formatted(fastener.name()))
              .also(fastener.at(), fastener.name() + " is defined here")
              .hint("add `diameter:` and `thickness:` to the item"));
    }
    Length needed = inset().plus(new Length(diameter().ticks() / 2)).plus(WALL);
    Length have = meeting.second().box().size(side.axis());
    if (!needed.isLongerThan(have)) {
      return List.of();
    }
    return List.of(
        Diagnostic.error(
                "slot-outside",
                meeting.entry().at("rail"),
                "a recess for %s needs a rail %s thick, but %s is only %s"
                    .formatted(
                        fastener.name(),
                        meeting.print(needed),
                        meeting.second().name(),
                        meeting.print(have)))
            .also(meeting.second().at(), meeting.second().name() + " is defined here")
            .hint("take smaller fasteners, or ones in a slot"));
  }
}
