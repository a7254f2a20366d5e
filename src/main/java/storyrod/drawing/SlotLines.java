package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Tone;
import storyrod.geometry.Contour;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.geometry.Segment;
import storyrod.measure.Length;
import storyrod.piece.Slots;

/** Draws slots in the view from which they are cut: their mouths, and a cross in their middle. */
final class SlotLines {
  private static final double SAGITTA_MM = 0.02;

  private SlotLines() {}

  static void add(PlacedView view, Slots slots, List<Element> elements) {
    boolean isHidden = slots.from() == Face.BACK && !slots.through();
    for (Point centre : slots.centres()) {
      List<At> ring = ring(view, slots.mouth(centre), centre);
      if (!isHidden) {
        elements.add(new Area(Tone.WHITE, List.of(ring)));
      }
      elements.add(new Line(isHidden ? Role.HIDDEN : Role.THIN, ring));
      Bores.addCentre(view.at(centre), slots.width().toMm() * view.ruler().factor() / 2, elements);
    }
  }

  /** The mouth as a closed line of chords too short to be seen. */
  private static List<At> ring(PlacedView view, Contour mouth, Point centre) {
    List<At> ring = new ArrayList<>();
    for (Segment segment : mouth.segments()) {
      for (Vector2D at : mouth.points(segment, SAGITTA_MM)) {
        ring.add(
            view.at(
                centre
                    .with(mouth.across(), Length.nearest(at.getX()))
                    .with(mouth.up(), Length.nearest(at.getY()))));
      }
    }
    ring.add(ring.getFirst());
    return ring;
  }
}
