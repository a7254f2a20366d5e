package storyrod.drawing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import storyrod.build.BuildPlan;
import storyrod.drawing.Contacts.Path;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** Parts moved apart along the ways in which they go together, looked at in the usual view. */
record ExplodedView(List<Part> parts, List<Path> paths, Picture picture) {
  /**
   * How far parts may stand apart, as multiples of what shows the parts, until hardware is seen.
   */
  private static final List<Double> STRETCHES = List.of(1.0, 1.2, 1.4, 1.6);

  private static final double ENOUGH_SEEN = 0.95;

  /** Parts as far apart as needed to see the hardware between them. */
  static ExplodedView of(Explosion explosion, List<Part> parts, List<Hardware> hardware) {
    ExplodedView best = stretched(explosion, parts, hardware);
    for (double stretch : STRETCHES.subList(1, STRETCHES.size())) {
      if (best.seenHardware() >= ENOUGH_SEEN) {
        break;
      }
      ExplodedView next = stretched(explosion.stretched(stretch), parts, hardware);
      best = next.seenHardware() > best.seenHardware() ? next : best;
    }
    return best;
  }

  private double seenHardware() {
    return Fitted.share(picture);
  }

  private static ExplodedView stretched(
      Explosion explosion, List<Part> parts, List<Hardware> hardware) {
    Stream<Scene.Item> items =
        parts.stream()
            .map(
                part ->
                    new Scene.Item(
                        part.name(), part.placed(), explosion.offsets().get(part.name())));
    Fitted fitted =
        new Fitted(new Scene(items.toList()), parts, parts.size(), View.USUAL, List.of());
    return new ExplodedView(parts, explosion.paths(), fitted.whole(hardware));
  }

  /** The whole piece with all sub-assemblies open and every mark in a balloon, filling a page. */
  static Drawing draw(Piece piece, BuildPlan plan, Size page) {
    return open(piece, plan, Hardware.of(piece)).drawn("exploded", page);
  }

  /** The whole piece with all sub-assemblies open. */
  static ExplodedView open(Piece piece, BuildPlan plan, List<Hardware> hardware) {
    return of(Explosion.of(piece, plan, View.USUAL), piece.parts(), hardware);
  }

  /**
   * The view of the piece with balloons for some parts and for its hardware, or, if those are too
   * many for one drawing, for the parts, and the same view with balloons for the hardware.
   */
  Exploded piece(List<String> balloons, Rooms rooms, List<GeneralSheet> opened) {
    Drawing both = drawn("exploded", balloons, rooms.exploded());
    boolean hasHardware = !picture.fittings().isEmpty();
    if (!hasHardware || balloons(both) <= Picture.MOST_BALLOONS) {
      return new Exploded(both, Optional.empty(), opened);
    }
    Drawing parts = marked("exploded", balloons, rooms.exploded());
    Drawing hardware = drawn("exploded-hardware", List.of(), rooms.explodedHardware());
    return new Exploded(parts, Optional.of(hardware), opened);
  }

  private static long balloons(Drawing drawing) {
    return drawing.elements().stream().filter(Drawing.Balloon.class::isInstance).count();
  }

  /** The view with balloons for all its marks. */
  Drawing drawn(String name, Size room) {
    return drawn(name, names(), room);
  }

  /** The height in mm that it fills where only its width is given, all its marks in balloons. */
  double heightMm(double widthMm) {
    return picture.heightMm(notes(names()), widthMm);
  }

  List<String> names() {
    return parts.stream().map(Part::name).toList();
  }

  /** The view with balloons for some parts, by their names. */
  Drawing drawn(String name, List<String> balloons, Size room) {
    return picture.drawn(name, notes(balloons), room);
  }

  /** The view with balloons for some parts, by their names, and none for hardware. */
  Drawing marked(String name, List<String> balloons, Size room) {
    return picture.drawn(name, notes(balloons).untagged(), room);
  }

  private Picture.Notes notes(List<String> balloons) {
    return new Picture.Notes(paths, List.of(), balloons);
  }
}
