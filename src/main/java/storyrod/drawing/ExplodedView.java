package storyrod.drawing;

import java.util.List;
import java.util.stream.Stream;
import storyrod.build.BuildPlan;
import storyrod.drawing.Contacts.Path;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** Parts moved apart along the ways in which they go together, looked at in the usual view. */
record ExplodedView(List<Part> parts, List<Path> paths, Picture picture) {
  static ExplodedView of(Explosion explosion, List<Part> parts, List<Hardware> hardware) {
    Stream<Scene.Item> items =
        parts.stream()
            .map(
                part ->
                    new Scene.Item(
                        part.name(), part.placed(), explosion.offsets().get(part.name())));
    Scene scene = new Scene(items.toList());
    List<Fitting> fittings =
        HardwareOut.of(
            hardware,
            HiddenLines.of(scene, View.USUAL),
            explosion.offsets(),
            Extent.diagonalMm(Extent.around(parts)));
    Picture picture =
        Picture.of(scene, fittings, parts, parts.size(), View.USUAL, List.of());
    return new ExplodedView(parts, explosion.paths(), picture);
  }

  /** The whole piece with all sub-assemblies open and every mark in a balloon, filling a page. */
  static Drawing draw(Piece piece, BuildPlan plan, Size page) {
    return draw(piece, plan, Hardware.of(piece), page);
  }

  static Drawing draw(Piece piece, BuildPlan plan, List<Hardware> hardware, Size page) {
    return of(Explosion.of(piece, plan, View.USUAL), piece.parts(), hardware)
        .drawn("exploded", page);
  }

  /** The view with balloons for all its marks. */
  Drawing drawn(String name, Size room) {
    return drawn(name, names(), room);
  }

  /** The height in mm that it fills where only its width is given, all its marks in balloons. */
  double heightMm(double widthMm) {
    return picture.heightMm(notes(names()), widthMm);
  }

  private List<String> names() {
    return parts.stream().map(Part::name).toList();
  }

  /** The view with balloons for some parts, by their names. */
  Drawing drawn(String name, List<String> balloons, Size room) {
    return picture.drawn(name, notes(balloons), room);
  }

  private Picture.Notes notes(List<String> balloons) {
    return new Picture.Notes(paths, List.of(), balloons);
  }
}
