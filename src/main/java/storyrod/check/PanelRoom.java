package storyrod.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import storyrod.description.Diagnostic;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.piece.Cut;
import storyrod.piece.Joint;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** A loose panel of solid wood that outgrows its grooves or shrinks out of them. */
final class PanelRoom implements Check {
  @Override
  public String code() {
    return "panel-room";
  }

  @Override
  public Explanation explanation() {
    return new Explanation(
        "A solid panel that lies without glue in grooves at both edges has room to swell to its"
            + " width in the damp season, and its edges stay in the grooves in the dry one, even"
            + " pushed to one side.",
        "Movement after the Wood Handbook, eq. 13-2 and 13-3, from the mean moisture of the year in"
            + " the room under `climate`.",
        "It takes the panel to be built at that mean, and looks across its width only.");
  }

  @Override
  public List<Diagnostic> findings(Piece piece) {
    Seasons seasons = new Seasons(piece);
    List<Diagnostic> found = new ArrayList<>();
    for (Part panel : piece.parts()) {
      if (Seasons.moves(panel, panel.width())) {
        grooves(piece, panel).ifPresent(each -> check(piece, seasons, panel, each, found));
      }
    }
    return found;
  }

  /** The room in mm that a panel has in the grooves at its edges; none where it lies in none. */
  static OptionalDouble room(Piece piece, Part panel) {
    return grooves(piece, panel).stream().mapToDouble(Grooves::room).findFirst();
  }

  private static Optional<Grooves> grooves(Piece piece, Part panel) {
    Optional<Edge> low = edge(piece, panel, Face.of(panel.width(), -1));
    Optional<Edge> high = edge(piece, panel, Face.of(panel.width(), 1));
    return low.isPresent() && high.isPresent()
        ? Optional.of(new Grooves(low.get(), high.get()))
        : Optional.empty();
  }

  /**
   * How an edge lies in its groove, in mm.
   *
   * @param room between the edge and the bottom of the groove
   * @param reach how far the edge stands in the groove
   */
  private record Edge(double room, double reach, Joint joint) {}

  private record Grooves(Edge low, Edge high) {
    double room() {
      return low.room + high.room;
    }

    /** What of the less held edge is left in its groove when the panel lies against the other. */
    double leastReach() {
      return Math.min(low.reach - high.room, high.reach - low.room);
    }
  }

  private static Optional<Edge> edge(Piece piece, Part panel, Face face) {
    for (Joint joint : piece.joints()) {
      if (joint.first().equals(panel.name()) && joint.firstFace() == face && !joint.glued()) {
        for (Cut.Trench groove : piece.part(joint.second()).cuts(Cut.Trench.class)) {
          if (groove.isFor(panel.name()) && groove.from() == face.opposite()) {
            return Optional.of(edge(panel, face, groove, joint));
          }
        }
      }
    }
    return Optional.empty();
  }

  private static Edge edge(Part panel, Face face, Cut.Trench groove, Joint joint) {
    Axis axis = face.axis();
    double bottom = groove.removed().at(face).minus(panel.box().at(face)).toMm() * face.sign();
    return new Edge(bottom, groove.removed().size(axis).toMm() - bottom, joint);
  }

  private void check(
      Piece piece, Seasons seasons, Part panel, Grooves grooves, List<Diagnostic> found) {
    OptionalDouble swelling = seasons.swelling(panel, panel.finishedWidth());
    OptionalDouble shrinking = seasons.shrinking(panel, panel.finishedWidth());
    if (swelling.isEmpty() || shrinking.isEmpty()) {
      return;
    }
    double more = swelling.getAsDouble() - grooves.room();
    if (more > 0) {
      found.add(
          finding(
              panel,
              grooves,
              "%s swells by %s in the damp season, but its grooves leave room for %s: it will push"
                      .formatted(
                          panel.name(),
                          seasons.print(swelling.getAsDouble()),
                          seasons.print(grooves.room()))
                  + " the frame apart",
              "give each groove %s more of `room`".formatted(seasons.print(more / 2))));
    }
    double left = grooves.leastReach() - shrinking.getAsDouble();
    if (left < 0) {
      found.add(
          finding(
              panel,
              grooves,
              "%s shrinks by %s in the dry season: pushed to one side, its other edge comes %s out of"
                      .formatted(
                          panel.name(),
                          seasons.print(shrinking.getAsDouble()),
                          seasons.print(-left))
                  + " its groove",
              "make the grooves deeper, or fix the panel in the middle of its width"));
    }
  }

  private Diagnostic finding(Part panel, Grooves grooves, String message, String hint) {
    return Diagnostic.warning(code(), grooves.low().joint().at(), message)
        .also(panel.at(), panel.name() + " is defined here")
        .hint(hint);
  }
}
