package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Ellipse;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Tone;
import storyrod.geometry.Axis;
import storyrod.geometry.Face;
import storyrod.geometry.Point;
import storyrod.measure.Length;
import storyrod.piece.Comb;
import storyrod.piece.Cut;
import storyrod.piece.Dovetails;
import storyrod.piece.InPlace;
import storyrod.piece.PocketHoles;
import storyrod.piece.Slanted;
import storyrod.piece.Slots;
import storyrod.piece.SplineSlot;

/** Draws round holes and pocket holes in the view from which they are drilled. */
final class Bores {
  private static final double SMALL = 4;

  /** Below this radius on paper a circle would be a blot; the note gives the true diameter. */
  private static final double LEAST_RADIUS = 0.5;

  /** Nearer than this two circles would run into one; the note gives the true diameters. */
  private static final double LEAST_RING = 0.4;

  private static final double WIDE_ENOUGH = 0.9;

  private Bores() {}

  static void add(PlacedView view, Cut cut, List<Element> elements) {
    if (PlacedView.home(view.flat(), cut) != view.face()) {
      return;
    }
    switch (cut) {
      case Cut.Trench trench -> {}
      case Cut.Shaped shaped -> {}
      case Cut.Roundover roundover -> {}
      case Cut.Tenon tenon -> {}
      case Comb comb -> {}
      case Cut.Holes holes -> addHoles(view, holes, elements);
      case PocketHoles pockets -> addPockets(view, pockets, elements);
      case Slanted.Slope slope -> {}
      case Dovetails dovetails -> {}
      case SplineSlot slot -> {}
      case Slanted.Housing housing -> {}
      case Slots slots -> SlotLines.add(view, slots, elements);
      case InPlace inPlace ->
          inPlace.bores().forEach(bore -> addCentre(view.at(bore.mouth()), 0, elements));
    }
  }

  private static void addHoles(PlacedView view, Cut.Holes holes, List<Element> elements) {
    double factor = view.ruler().factor();
    double drawn = Math.max(holes.diameter().toMm() * factor / 2, LEAST_RADIUS);
    double sunk = holes.countersink().toMm() * factor / 2;
    double mouth = sunk > 0 ? Math.max(sunk, drawn + LEAST_RING) : drawn;
    boolean farFace = holes.from() == Face.BACK;
    for (Point centre : holes.centres()) {
      At at = view.at(centre);
      if (sunk > 0) {
        elements.add(circle(at, mouth, farFace));
      }
      elements.add(circle(at, drawn, farFace && !holes.through()));
      addCentre(at, mouth, elements);
    }
  }

  private static Ellipse circle(At at, double radius, boolean hidden) {
    Role role = hidden ? Role.HIDDEN : 2 * radius < SMALL ? Role.THIN : Role.VISIBLE;
    Optional<Tone> fill = hidden ? Optional.empty() : Optional.of(Tone.WHITE);
    return new Ellipse(role, at, radius, radius, 0, fill);
  }

  static void addCentre(At at, double radius, List<Element> elements) {
    elements.addAll(centre(at, radius));
  }

  /** A cross, of which a small hole shows only the ends so that it reads as a hole. */
  static List<Line> centre(At at, double radius) {
    double inner = radius < WIDE_ENOUGH ? radius + 0.15 : 0;
    double outer = radius + 0.75;
    List<Line> arms = new ArrayList<>();
    for (int sign : new int[] {-1, 1}) {
      double from = sign * inner;
      double to = sign * outer;
      arms.add(new Line(Role.CENTRE, List.of(at.plus(from, 0), at.plus(to, 0))));
      arms.add(new Line(Role.CENTRE, List.of(at.plus(0, from), at.plus(0, to))));
    }
    return arms;
  }

  private static void addPockets(PlacedView view, PocketHoles cut, List<Element> elements) {
    double factor = view.ruler().factor();
    boolean level = cut.end().axis() == view.across();
    double wide = cut.diameter().toMm() * factor / 2;
    double tall = wide / StrictMath.sin(StrictMath.toRadians(cut.angleDegrees()));
    Role role = cut.from() == Face.BACK ? Role.HIDDEN : Role.THIN;
    Optional<Tone> fill = role == Role.THIN ? Optional.of(Tone.SIDE) : Optional.empty();
    for (Point leaves : cut.centres()) {
      At mouth = view.at(mouth(view.flat(), cut, leaves));
      elements.add(new Ellipse(role, mouth, level ? tall : wide, level ? wide : tall, 0, fill));
      addPilot(view.at(leaves), mouth, new Pilot(cut.pilot().toMm() * factor / 2, tall), elements);
    }
  }

  private record Pilot(double radius, double fromMouth) {}

  private static void addPilot(At end, At mouth, Pilot pilot, List<Element> elements) {
    double length = end.distance(mouth);
    double part = Math.max(0, (length - pilot.fromMouth) / length);
    double dx = mouth.x() - end.x();
    double dy = mouth.y() - end.y();
    for (double side : new double[] {-pilot.radius / length, pilot.radius / length}) {
      At from = end.plus(-dy * side, dx * side);
      elements.add(new Line(Role.HIDDEN, List.of(from, from.plus(dx * part, dy * part))));
    }
  }

  /** Where the axis of a pocket hole meets the face it is drilled from. */
  static Point mouth(FlatPart flat, PocketHoles cut, Point leaves) {
    Axis axis = cut.end().axis();
    Length in = fromEnd(flat, cut.angleDegrees());
    return leaves.with(axis, flat.box().at(cut.end()).minus(in.times(cut.end().sign())));
  }

  /** How far from the end a pocket hole's axis meets the face. */
  static Length fromEnd(FlatPart flat, int angleDegrees) {
    double half = flat.size(Axis.Y).toMm() / 2;
    return Length.nearest(half / StrictMath.tan(StrictMath.toRadians(angleDegrees)));
  }
}
