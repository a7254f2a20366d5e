package storyrod.piece;

import java.util.Optional;
import storyrod.description.Diagnostic;
import storyrod.description.Diagnostics;
import storyrod.description.Entry;
import storyrod.description.PartEntry;
import storyrod.description.PointAt;
import storyrod.geometry.Axis;
import storyrod.geometry.Point;
import storyrod.geometry.Pose;
import storyrod.measure.Angle;
import storyrod.measure.Length;

/** Reads how parts are turned, and says what is wrong with it. */
final class PoseReader {
  private final Diagnostics diagnostics;

  PoseReader(Diagnostics diagnostics) {
    this.diagnostics = diagnostics;
  }

  /** How a part stands; not turned where that cannot be read. */
  Pose read(PartEntry part) {
    return part.turn().flatMap(turn -> read(part, turn)).orElse(Pose.NONE);
  }

  private Optional<Pose> read(PartEntry part, Entry turn) {
    Angle by = turn.expect("by", Angle.class);
    if (by.isZero() || by.abs().compareTo(Angle.RIGHT) >= 0) {
      diagnostics.add(
          Diagnostic.error(
                  "turn-angle",
                  turn.at("by"),
                  "%s is turned by %s; a turn is more than 0° and less than 90° either way"
                      .formatted(part.name(), by))
              .hint(
                  by.isZero()
                      ? "leave `turn` out if it stands straight"
                      : "describe it lying the other way, and turn it by the rest"));
      return Optional.empty();
    }
    return pivot(part, turn).map(at -> new Pose(turn.expect("about", Axis.class), by, at));
  }

  private Optional<Point> pivot(PartEntry part, Entry turn) {
    Axis about = turn.expect("about", Axis.class);
    PointAt at = turn.expect("at", PointAt.class);
    Point pivot = Point.ORIGIN;
    for (Axis axis : Axis.values()) {
      if (axis != about && at.on(axis).isEmpty()) {
        diagnostics.add(
            Diagnostic.error(
                    "turn-place",
                    turn.at("at"),
                    "the axis about which %s is turned needs its place on %s"
                        .formatted(part.name(), axis.word()))
                .hint("add `" + axis.word() + ":` to `at`"));
        return Optional.empty();
      }
      pivot = pivot.with(axis, at.on(axis).orElse(Length.ZERO));
    }
    return Optional.of(pivot);
  }
}
