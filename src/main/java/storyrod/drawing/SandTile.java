package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import storyrod.drawing.Drawing.Area;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Group;
import storyrod.drawing.Drawing.Line;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Drawing.Tone;
import storyrod.geometry.Face;

/**
 * The face of a part that is sanded, toned, with the joints in it that are left as they are white.
 *
 * @param flat the part as it is cut by then
 * @param face the flat part's front or back
 * @param name the face as it lies in the part's drawing
 * @param whole all that is seen of the part from there, in mm on the axes of the flat part
 * @param sanded of the face, in mm on the axes of the flat part
 */
record SandTile(
    FlatPart flat, Face face, Face name, Geometry whole, Geometry sanded, List<String> captions)
    implements PartTile {
  @Override
  public List<Element> in(Bounds room) {
    ShortFace drawn = ShortFace.in(room, lengthMm(), widthMm());
    List<Element> elements = new ArrayList<>();
    for (ShortFace.Window window : drawn.windows()) {
      areas(whole, drawn, window, Tone.WHITE).forEach(elements::add);
      areas(sanded, drawn, window, Tone.FRONT).forEach(elements::add);
    }
    drawn.breakLine().ifPresent(elements::add);
    return List.of(
        new Group(
            Ink.id(flat.part()) + "-" + name.word(),
            flat.part().mark(),
            flat.part().title(),
            elements));
  }

  /** A stretch of an area and its outline; what is seen from behind lies the other way. */
  private Stream<Element> areas(
      Geometry area, ShortFace drawn, ShortFace.Window window, Tone tone) {
    boolean isBehind = face == Face.BACK;
    double from = isBehind ? lengthMm() - window.to() : window.from();
    double to = isBehind ? lengthMm() - window.from() : window.to();
    return SolidView.rings(area, from, to).stream()
        .map(
            rings ->
                rings.stream()
                    .map(
                        ring ->
                            ring.stream()
                                .map(at -> drawn.on(window, along(at.x(), isBehind), at.y()))
                                .toList())
                    .toList())
        .flatMap(rings -> inked(rings, tone));
  }

  private double along(double x, boolean isBehind) {
    return isBehind ? lengthMm() - x : x;
  }

  private static Stream<Element> inked(List<List<At>> rings, Tone tone) {
    Stream<Element> lines =
        rings.stream()
            .map(
                ring ->
                    new Line(
                        Role.THIN,
                        Stream.concat(ring.stream(), Stream.of(ring.getFirst())).toList()));
    return Stream.concat(Stream.of(new Area(tone, rings)), lines);
  }
}
