package storyrod.drawing;

import java.util.List;
import java.util.Optional;
import storyrod.drawing.Drawing.Anchor;
import storyrod.drawing.Drawing.At;

/** A direction of leaders from a point, with what such leaders may meet. */
final class NoteBeam {
  /** So much of a line beside a leader is not seen, in mm: the tip on its edge. */
  private static final double LEAST_SHARED = 1;

  /** What to run along a line counts, as a share of what it counts to cross a dimension line. */
  private static final double ALONG = 0.6;

  private final NoteGround ground;
  private final Lead lead;
  private final List<PlacedText> texts;
  private final DrawnDimensions dimensions;
  private Optional<List<Paper.Stretch>> lines = Optional.empty();
  private Optional<List<Paper.Stretch>> alongside = Optional.empty();

  NoteBeam(NoteGround ground, Lead lead) {
    this.ground = ground;
    this.lead = lead;
    this.texts = ground.paper().textsOn(lead.way);
    this.dimensions = ground.dimensions().on(lead.way);
  }

  /**
   * Where leaders come from and go to.
   *
   * @param rim how far from the point they end, in mm
   * @param number of the direction among all of a note
   */
  record Lead(HalfLine way, double rim, int number) {}

  NoteGround ground() {
    return ground;
  }

  Lead lead() {
    return lead;
  }

  /** The leader to a place at a distance from the point, in mm. */
  Paper.Stretch leader(At elbow, double distance) {
    double part = lead.rim / distance;
    At from = lead.way.from();
    At tip = from.plus((elbow.x() - from.x()) * part, (elbow.y() - from.y()) * part);
    return new Paper.Stretch(tip, elbow);
  }

  boolean missesTexts(Paper.Stretch leader) {
    return texts.stream().noneMatch(text -> text.meets(leader));
  }

  /**
   * To run along a line, as if it were that, counts a share of what it counts to cross a dimension
   * line,.
   */
  double dimensionsCrossed(Paper.Stretch leader) {
    return dimensions.crossed(leader) + (runsAlong(leader) ? ALONG : 0);
  }

  private boolean runsAlong(Paper.Stretch leader) {
    if (alongside.isEmpty()) {
      alongside = Optional.of(ground.paper().linesAlong(lead.way));
    }
    double near = lead.way.along(leader.from());
    double far = lead.way.along(leader.to());
    return alongside.get().stream()
        .anyMatch(line -> shared(line, Math.min(near, far), Math.max(near, far)) > LEAST_SHARED);
  }

  /** How much of a line lies between two distances from the start. */
  private double shared(Paper.Stretch line, double near, double far) {
    double one = lead.way.along(line.from());
    double other = lead.way.along(line.to());
    return Math.min(far, Math.max(one, other)) - Math.max(near, Math.min(one, other));
  }

  int linesCrossed(Paper.Stretch leader) {
    if (lines.isEmpty()) {
      lines = Optional.of(ground.paper().linesOn(lead.way));
    }
    return DrawnDimensions.count(leader, lines.get());
  }

  /** The text stands on the side to which the leader leans. */
  List<Anchor> anchors() {
    double x = lead.way.to().x();
    if (Math.abs(x) < 1e-9) {
      return List.of(Anchor.START, Anchor.END);
    }
    return List.of(x > 0 ? Anchor.START : Anchor.END);
  }
}
