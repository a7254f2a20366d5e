package storyrod.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.build.BuildPlan;
import storyrod.drawing.Balloons.Tip;
import storyrod.drawing.Drawing.At;
import storyrod.drawing.Drawing.Element;
import storyrod.drawing.Drawing.Role;
import storyrod.drawing.Seen.Stroke;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/** The whole piece taken apart along the ways in which it goes together, every mark in a balloon. */
public final class ExplodedView {
  /** From the edge of the page to the middle of a balloon's ring, in mm. */
  private static final double EDGE_MM = Balloons.RADIUS_MM + 1;

  /** From the middle of a balloon's ring to the drawing, in mm. */
  private static final double BESIDE_MM = Balloons.RADIUS_MM + 7;

  private ExplodedView() {}

  /** An isometric exploded view that fills a page, at a scale of its own. */
  public static Drawing draw(Piece piece, BuildPlan plan, Size page) {
    Explosion explosion = Explosion.of(piece, plan, View.USUAL);
    HiddenLines lines = HiddenLines.of(scene(piece, explosion.offsets()), View.USUAL);
    List<Seen> seen = lines.seen();
    List<Stroke> trails =
        explosion.paths().stream().flatMap(p -> lines.visible(p.from(), p.to()).stream()).toList();
    List<At> points = points(seen, trails);
    Fit fit = Fit.into(points, corner(), room(page));
    List<Element> elements = new ArrayList<>();
    Ink ink = new Ink(fit);
    for (int i = 0; i < seen.size(); i++) {
      elements.add(ink.strong(piece.parts().get(i), seen.get(i)));
    }
    trails.forEach(trail -> elements.add(ink.line(Role.TRAIL, trail)));
    elements.addAll(balloons(new Tips(fit).of(piece.parts(), seen), fit.on(points), page));
    return new Drawing("exploded", page.widthMm(), page.heightMm(), Optional.empty(), elements);
  }

  private static Scene scene(Piece piece, Map<String, Vector3D> offsets) {
    return new Scene(
        piece.parts().stream()
            .map(part -> new Scene.Item(part.name(), part.solid(), offsets.get(part.name())))
            .toList());
  }

  private static List<At> points(List<Seen> seen, List<Stroke> trails) {
    return Stream.concat(seen.stream().flatMap(s -> s.lines().visible().stream()), trails.stream())
        .flatMap(Fit::ends)
        .toList();
  }

  private static At corner() {
    return new At(EDGE_MM + BESIDE_MM, EDGE_MM);
  }

  private static Size room(Size page) {
    return new Size(
        page.widthMm() - 2 * (EDGE_MM + BESIDE_MM), page.heightMm() - 2 * EDGE_MM);
  }

  private static List<Drawing.Balloon> balloons(List<Tip> tips, List<At> drawn, Size page) {
    double left = drawn.stream().mapToDouble(At::x).min().orElse(0) - BESIDE_MM;
    double right = drawn.stream().mapToDouble(At::x).max().orElse(0) + BESIDE_MM;
    return new Balloons(left, right, EDGE_MM, page.heightMm() - EDGE_MM).placed(tips);
  }
}
