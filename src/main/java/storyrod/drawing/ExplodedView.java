package storyrod.drawing;

import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import storyrod.build.BuildPlan;
import storyrod.piece.Part;
import storyrod.piece.Piece;

/**
 * The whole piece taken apart along the ways in which it goes together, every mark in a balloon.
 */
final class ExplodedView {
  private ExplodedView() {}

  /** An isometric exploded view that fills a page, at a scale of its own. */
  public static Drawing draw(Piece piece, BuildPlan plan, Size page) {
    Explosion explosion = Explosion.of(piece, plan, View.USUAL);
    Scene scene = scene(piece, explosion.offsets());
    List<String> all = piece.parts().stream().map(Part::name).toList();
    Picture.Notes notes = new Picture.Notes(explosion.paths(), List.of(), all);
    return Picture.of(scene, piece.parts(), all.size(), View.USUAL).drawn("exploded", notes, page);
  }

  private static Scene scene(Piece piece, Map<String, Vector3D> offsets) {
    return new Scene(
        piece.parts().stream()
            .map(part -> new Scene.Item(part.name(), part.placed(), offsets.get(part.name())))
            .toList());
  }
}
